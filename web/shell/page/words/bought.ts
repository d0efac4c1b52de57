import { count } from './format';

/** What was bought, with its receipts. */
export const bought = {
  title: 'Bought', second: (n: number) => (n ? count(n, 'purchase') : ''), add: 'I bought something',
  none: { first: 'Nothing is recorded as bought.', then: 'A sum is enough. A photo of the receipt keeps the proof.' },
  form: { title: 'Bought', cash: 'What was paid', what: 'What', part: 'For which part', noPart: 'no part in particular', from: 'Where', receipt: 'Photo of the receipt', another: 'Another photo', put: 'Put it down', wrongMoney: 'Give a sum, like 18 or 18.50.' },
  done: (sum: string) => `${sum} put down`, unnamed: 'not said what', photos: (n: number) => count(n, 'photo'), receiptOf: (what: string) => `Receipt of ${what}`,
  strike: 'Strike out', struck: 'Purchase struck out', sum: 'bought in all', elsewhere: (n: number) => `${count(n, 'purchase')} in another currency, not in the sum`,
  photoLost: 'That picture could not be read. The sum is still here: take the photo again.', holds: (n: number) => `${count(n, 'photo')} with it`,
};
