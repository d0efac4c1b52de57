import { locale } from '../words';

/** The words of papers that differ from the British ones that papers are written in: the rest is left out. */
export function paperWords(): { page: { language: string } } {
  return { page: { language: locale() } };
}
