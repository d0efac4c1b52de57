import { locale } from './speech';

/** Between a figure and its unit, which stay together. */
export const KEEP = '\u00a0';

export interface Money {
  minor: number;
  currency: string;
}

/** Digits after the point of a currency: 2 for GBP, 0 for JPY. */
export function minorDigits(currency: string): number {
  return new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2;
}

/** "£1,980", and "£19.80" only where there are pence. */
export function money({ minor, currency }: Money): string {
  const digits = minorDigits(currency);
  const unit = 10 ** digits;
  const whole = Math.round(minor) % unit === 0;
  return keep(new Intl.NumberFormat(locale(), {
    style: 'currency', currency, currencyDisplay: 'narrowSymbol',
    minimumFractionDigits: whole ? 0 : digits, maximumFractionDigits: whole ? 0 : digits,
  }).format(Math.round(minor) / unit)).replace(/^-/, '\u2212');
}

/** For reckoned sums that rest on guesses: no pence. */
export function moneyRound({ minor, currency }: Money): string {
  const unit = 10 ** minorDigits(currency);
  return money({ minor: Math.round(minor / unit) * unit, currency });
}

export function currencySign(currency: string): string {
  const part = new Intl.NumberFormat(locale(), { style: 'currency', currency, currencyDisplay: 'narrowSymbol' })
    .formatToParts(0).find(({ type }) => type === 'currency');
  return part?.value ?? currency;
}

/** "2 h 15 min", "45 min", "3 h". */
export function hours(minutes: number): string {
  const whole = Math.max(0, Math.round(minutes));
  const [h, min] = [Math.floor(whole / 60), whole % 60];
  if (h === 0) return `${min}${KEEP}min`;
  return min === 0 ? `${number(h)}${KEEP}h` : `${number(h)}${KEEP}h ${min}${KEEP}min`;
}

/** "2.7 h", for figures that are compared. */
export function hoursDecimal(minutes: number): string {
  return `${number(minutes / 60, 1)}${KEEP}h`;
}

export function number(value: number, digits = 0): string {
  return keep(new Intl.NumberFormat(locale(), { maximumFractionDigits: digits }).format(value)).replace(/^-/, '\u2212');
}

/** "16 Nov"; "Nov 16" in America. */
export function day(at: Date): string {
  return keep(new Intl.DateTimeFormat(locale(), { day: 'numeric', month: 'short' }).format(at));
}

export function dayOfYear(at: Date): string {
  return keep(new Intl.DateTimeFormat(locale(), { day: 'numeric', month: 'short', year: 'numeric' }).format(at));
}

/** "16 Nov, 20:14". */
export function moment(at: Date): string {
  return `${day(at)}, ${clock(at)}`;
}

export function clock(at: Date): string {
  return keep(new Intl.DateTimeFormat(locale(), { hour: 'numeric', minute: '2-digit' }).format(at));
}

/** "0:11", "12:05": how long a spoken note is. */
export function length(seconds: number): string {
  const whole = Math.max(0, Math.round(seconds));
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

/** "1.4 GB", in thousands as disks are sold. */
export function bytes(count: number): string {
  const units = ['B', 'kB', 'MB', 'GB', 'TB'];
  let [value, unit] = [Math.max(0, count), 0];
  while (value >= 999.5 && unit < units.length - 1) { value /= 1000; unit += 1; }
  return `${number(value, value < 10 || unit > 2 ? 1 : 0)}${KEEP}${units[unit]}`;
}

/** "1.4 of 11.2 GB": the unit once when it is the same. */
export function bytesOf(part: number, whole: number): string {
  const [a, b] = [bytes(part), bytes(whole)];
  const [figure, unit] = a.split(KEEP);
  return b.endsWith(`${KEEP}${unit}`) ? `${figure} of ${b}` : `${a} of ${b}`;
}

/** A chance from 0 to 1 as "81 of 100". */
export function ofHundred(chance: number): string {
  return `${Math.round(chance * 100)} of${KEEP}100`;
}

/** "3 photos", "1 photo". */
export function count(n: number, one: string, many = `${one}s`): string {
  return `${number(n)}${KEEP}${n === 1 ? one : many}`;
}

/** "a, b and c". */
export function listed(things: readonly string[]): string {
  return new Intl.ListFormat(locale(), { type: 'conjunction' }).format(things);
}

function keep(text: string): string {
  return text.replace(/ /g, KEEP);
}

/** With a capital first. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
