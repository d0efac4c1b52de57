import type { Vocabulary } from './vocabulary';

/** Settings of the job, and of this device. */
export const settings = (trade: Vocabulary) => ({
  title: 'Settings',
  ofJob: 'Of this job', ofJobCount: 'go with the job file', ofDevice: 'Of this device', ofDeviceCount: 'stay here',
  name: 'Name of the job', currency: 'Currency', otherCurrency: 'Another, by its three letters', wrongCurrency: 'Three capital letters, like GBP.',
  currencyNote: 'Prices entered before keep the currency they were entered in.',
  hour: 'What an hour of yours counts', hourHint: 'It decides between doing it yourself and paying. 0 counts only cash.', wrongMoney: 'Give a sum, like 20 or 12.50.',
  years: 'How long the vehicle will be kept', yearsHint: 'What wears out sooner is reckoned again within these years.', interest: 'Interest a year', interestHint: 'What money could earn elsewhere. 0 counts later costs as today’s.',
  tax: 'Usual tax on what is bought', taxHint: 'Worked out beside the tax of a quote, for prices that come without it.', threshold: 'Tell me when another route is cheaper by', thresholdHint: 'A decision comes back only for more than this.',
  checking: 'Days to compare a new part with the old', checkingHint: 'Counted between the day something is due and the day it can go on.',
  limits: 'Limits of a plan', limitsCount: 'each may stay empty', noLimit: 'no limit', budget: 'Budget', budgetHint: 'The most that may be out at once, surcharges among it.', ownHours: 'Own hours at most', ownHoursHint: 'How many hours of yours there are for all of it.', wrongHours: 'Give hours, like 40, 7.5 or 1:30.',
  latest: 'All in by', latestHint: 'What takes longer to come in is left out.', wrongDay: 'Give a day.',
  percent: (n: string) => `${n} %`, wrongNumber: (least: number, most: number) => `Give a number from ${least} to ${most}.`,
  words: 'Trade words', wordOptions: { british: 'British', american: 'American' }, wordSecond: { british: 'split pin, spanner', american: 'cotter pin, wrench' },
  units: 'Units', unitOptions: { metric: 'mm, kg, km/h', inch: 'in, lb, mph' },
  aim: 'Aim', aims: { 'hard-use': 'hard use', 'regular-road-use': 'regular road use', conserve: trade.conserve, 'show-standard': 'show standard' },
  aimSecond: { 'hard-use': 'stronger or later parts welcome', 'regular-road-use': 'sound, safe, tidy', conserve: 'keep what is original and sound', 'show-standard': 'as it left the factory' },
  driver: 'Driver sits', driverOptions: { left: 'left', right: 'right' }, driverHint: 'Left and right are always from the driver’s seat.',
  theme: 'Light or dark', themes: { system: 'as the device', light: 'light', dark: 'dark' },
  hand: 'Hand', hands: { right: 'right', left: 'left' }, handHint: 'Left puts the shutter under the left thumb.',
  who: 'Your name on decisions', whoHint: 'Kept with each route you choose.',
  saved: (what: string) => `${what} set`, starting: 'starting value',
  put: 'Set',
  links: 'More', selfTest: 'Test this device', safeKeeping: 'Safe keeping', rescue: 'Rescue page', problems: 'What needs you',
});
