import type { TagGrid, TagSheet } from '../../bridge/protocol';
import { preference, prefer } from '../journal';
import { readNumber } from '../words/read';

/** What is chosen first; strips are on one of two cards. */
export type PaperKind = 'a4' | 'letter' | 'strips' | 'own';
export type CardKind = 'strips-a4' | 'strips-letter';
export type OwnField = 'pageWidth' | 'pageHeight' | 'labelWidth' | 'labelHeight' | 'across' | 'down' | 'left' | 'top' | 'pitchX' | 'pitchY';

/** The paper of this device, as typed. */
export interface Paper {
  kind: PaperKind;
  card: CardKind;
  own: Record<OwnField, string>;
  right: string;
  down: string;
}

export const OWN_FIELDS: readonly OwnField[] = ['pageWidth', 'pageHeight', 'labelWidth', 'labelHeight', 'across', 'down', 'left', 'top', 'pitchX', 'pitchY'];

const NAME = 'tags-paper';
const WHOLE: readonly OwnField[] = ['across', 'down'];

/** A device keeps its printer, so it keeps its paper. */
export function paperKept(): Paper {
  const letter = navigator.language === 'en-US' || navigator.language === 'en-CA';
  const begin: Paper = {
    kind: letter ? 'letter' : 'a4',
    card: letter ? 'strips-letter' : 'strips-a4',
    own: { pageWidth: '210', pageHeight: '297', labelWidth: '70', labelHeight: '37', across: '3', down: '8', left: '0', top: '0.5', pitchX: '70', pitchY: '37' },
    right: '0',
    down: '0',
  };
  try {
    const kept: unknown = JSON.parse(preference(NAME) ?? 'null');
    return typeof kept === 'object' && kept !== null ? { ...begin, ...kept } : begin;
  } catch {
    return begin;
  }
}

export function keepPaper(paper: Paper): void {
  prefer(NAME, JSON.stringify(paper));
}

/** A figure of the sheet, when it is one. */
export function ownFigure(field: OwnField, text: string): number | null {
  const figure = readNumber(text);
  if (figure === null || figure < 0 || (WHOLE.includes(field) && !(Number.isInteger(figure) && figure > 0))) return null;
  return figure;
}

/** So many millimetres either way that a printer may be off. */
export function nudgeFigure(text: string): number | null {
  const figure = readNumber(text.replace('\u2212', '-'));
  return figure !== null && Math.abs(figure) <= 10 ? figure : null;
}

/** The sheet that is asked for; nothing while a figure of it is none. */
export function sheetOf({ kind, card, own }: Paper): TagSheet | null {
  if (kind === 'strips') return { kind: card };
  if (kind !== 'own') return { kind };
  const figures = OWN_FIELDS.map((field) => ownFigure(field, own[field]));
  if (figures.includes(null)) return null;
  const [pageWidth = 0, pageHeight = 0, labelWidth = 0, labelHeight = 0, across = 0, down = 0, left = 0, top = 0, pitchX = 0, pitchY = 0] = figures.map(Number);
  const grid: TagGrid = { page: [pageWidth, pageHeight], label: [labelWidth, labelHeight], across, down, left, top, pitch: [pitchX, pitchY], strips: false };
  return { kind: 'own', ...grid };
}
