import { locale, words } from '../words';

interface Papers {
  page: { language: string; no_specialist: string };
  columns: Record<string, string>;
  prices: { surcharge: string };
}

/** The words of papers that differ from the British ones that papers are written in: the rest is left out. */
export function paperWords(): Papers {
  const { nobody, columns, prices } = words().handOver.papers;
  return { page: { language: locale(), no_specialist: nobody }, columns, prices };
}
