import type { Change, Currency, Minutes } from '../../bridge/protocol';
import { words } from '../words';
import { readHours, readMoney } from '../words/read';

/** What a plan must keep within. */
export type Limit = 'budget' | 'own_hours' | 'latest';

/** What a field says: the change, or what is wrong with it. Empty sets no limit. */
export function readLimit(limit: Limit, text: string, currency: Currency): Change | string {
  const say = words().settings;
  const typed = text.trim();
  if (!typed) return { clear: limit };
  switch (limit) {
    case 'budget': {
      const budget = readMoney(typed, currency);
      return budget ? { budget } : say.wrongMoney;
    }
    case 'own_hours': {
      const own_hours = readHours(typed);
      return own_hours === null ? say.wrongHours : { own_hours };
    }
    case 'latest': return /^\d{4}-\d{2}-\d{2}$/.test(typed) ? { latest: typed } : say.wrongDay;
  }
}

/** Hours as they are typed again: as a fraction where that is exact. */
export function hoursText(minutes: Minutes): string {
  const fraction = String(Number((minutes / 60).toFixed(2)));
  return readHours(fraction) === minutes ? fraction : `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
}
