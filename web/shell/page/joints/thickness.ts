import { KEEP } from '../words/format';
import { readNumber } from '../words/read';

const MICROMETRES_IN = { mm: 1000, inch: 25400 };

/** Micrometres as the person reads them: "0.25 mm", "0.010 in". */
export function thickness(micrometres: number, inch: boolean, withUnit = true): string {
  // Plain figures, as they are typed: they stand in a field.
  const figure = String(inch ? Number((micrometres / MICROMETRES_IN.inch).toFixed(4)) : micrometres / MICROMETRES_IN.mm);
  return withUnit ? `${figure}${KEEP}${inch ? 'in' : 'mm'}` : figure;
}

/** What was typed, in micrometres; nothing when it is no thickness. */
export function readThickness(text: string, inch: boolean): number | null {
  const value = readNumber(text);
  if (value === null || value < 0) return null;
  const micrometres = Math.round(value * (inch ? MICROMETRES_IN.inch : MICROMETRES_IN.mm));
  return micrometres <= 50_000_000 ? micrometres : null;
}
