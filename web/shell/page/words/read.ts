import { minorDigits, type Money } from './format';

/** What a person typed, as money: "18", "£18.50", "1,980". Nothing when it cannot be meant as a sum. */
export function readMoney(text: string, currency: string): Money | null {
  const plain = text.replace(/[\s\u00a0]|\p{Sc}/gu, '').replace(/,(?=\d{3}(\D|$))/g, '').replace(',', '.');
  if (!/^\d+(\.\d*)?$/.test(plain)) return null;
  const [whole = '', part = ''] = plain.split('.');
  const digits = minorDigits(currency);
  if (part.length > digits) return null;
  // By digits, never through a fraction: 18.35 must not become 1834.
  const minor = Number(whole + part.padEnd(digits, '0'));
  return Number.isSafeInteger(minor) ? { minor, currency } : null;
}

/** Minutes from "2 h 15", "2:15", "2.5", "2,5 h", "45 min". */
export function readHours(text: string): number | null {
  const plain = text.trim().toLowerCase().replace(/\u00a0/g, ' ').replace(',', '.');
  const parts = /^(\d+)\s*(?:h|:)\s*([0-5]?\d)\s*(?:min|m)?$/.exec(plain);
  if (parts) return Number(parts[1]) * 60 + Number(parts[2]);
  const minutes = /^(\d+)\s*(?:min|m)$/.exec(plain);
  if (minutes) return Number(minutes[1]);
  const decimal = /^(\d+(?:\.\d+)?|\.\d+)\s*(?:h|hours?)?$/.exec(plain);
  return decimal ? Math.round(Number(decimal[1]) * 60) : null;
}

/** A stage of ordering, as the record bounds it. */
export function readStage(text: string): number | null {
  const stage = readNumber(text);
  return stage !== null && Number.isInteger(stage) && stage >= 1 && stage <= 99 ? stage : null;
}

/** A plain figure, with a point or a comma. */
export function readNumber(text: string): number | null {
  const plain = text.trim().replace(',', '.');
  return /^-?(\d+(\.\d*)?|\.\d+)$/.test(plain) ? Number(plain) : null;
}
