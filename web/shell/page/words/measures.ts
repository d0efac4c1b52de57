import type { LimitKind, LimitSource, Rule, Unreadable, Use, UsualInstrument } from '../../bridge/protocol';
import { count, KEEP } from './format';

/** Readings, limits and what they prove. */
export const measures = {
  title: 'Measured', none: 'not measured yet', noLimit: 'no limit yet', noLimitMore: 'No limit yet: it proves nothing.', read: 'Put a reading down', limit: 'Say the limit', limitChange: 'Change the limit', other: 'Measure something else', undone: 'Taken back',
  form: {
    title: 'A reading', value: 'Read off', accepted: 'As 31.76, 1.2505 in, 1 1/4, 31.76 mm or -2 thou.', spot: 'Where', spotHint: 'Place and plane, like: bottom, upright. The same words again: a repeat of the same place.',
    instrument: 'Measured with', noInstrument: 'not said: proves nothing', usual: (name: string) => `${name}, usual figures`, ownInstrument: 'One of my own', zero: 'Zero error', zeroHint: 'What it shows when closed; it is taken off first.',
    put: 'Put it down', done: (what: string, value: string) => `${what}: ${value}`,
  },
  ownInstrument: { name: 'What is it?', resolution: 'Smallest step', uncertainty: 'Stated uncertainty', uncertaintyHint: 'From its paper; leave it out when none is stated.', negative: 'It cannot be less than nothing.' },
  limitForm: {
    title: 'The limit', kind: 'It may be', least: 'No less than', most: 'No more than', differ: 'Sides may differ by', machining: 'After machining', machiningHint: 'Only where metal may be cut off it: stricter than the discard limit above. Else leave it empty.',
    new: 'Size when new', source: 'From', page: 'Page', pageHint: 'So that you find it again.', put: 'Put it down', done: 'Limit put down', needed: 'Give the figure first.', crossed: 'The least is more than the most.', negative: 'Sides cannot differ by less than nothing.',
  },
  own: { title: 'Measure something else', name: 'What is measured?', go: 'Go on', needed: 'Say what is measured.' },
  kinds: { minimum: 'no less than', maximum: 'no more than', range: 'between two figures', difference: 'the same on both sides', size: 'any size: only noted' } satisfies Record<LimitKind, string>,
  sources: { manual: 'manual', usual: 'usual figure, not confirmed', own: 'your own' } satisfies Record<LimitSource, string>,
  instruments: {
    'steel-rule': 'Steel rule', 'feeler-gauge': 'Feeler gauge', 'plastic-gauge': 'Plastic gauge', 'vernier-caliper': 'Vernier caliper', 'dial-indicator': 'Dial indicator', 'bore-gauge': 'Bore gauge', micrometer: 'Micrometer',
  } satisfies Record<UsualInstrument, string>,
  unreadable: {
    empty: 'Nothing is there.', 'not-a-number': 'That is not a figure.', fraction: 'That is not a fraction as on a rule.', 'unknown-unit': 'That unit is not known here.', 'ambiguous-unit': 'That unit means different things: write mm, in or thou.',
    'other-dimension': 'That unit measures something else.', 'thousands-or-decimals': 'The comma may mean two things: write a point.', 'not-whole': 'A count is a whole number.', 'too-many-figures': 'That has too many figures.', 'out-of-bounds': 'That is beyond what can be measured here.',
  } satisfies Record<Unreadable, string>,
  proved: { good: 'proved good', bad: 'proved bad', nothing: 'not proved' },
  sentence: {
    'may-be-cut': 'Proved good, and it may still be cut.', 'as-it-is': 'Proved good as it is.', 'not-to-be-cut': 'Proved good as it is, but nothing may be cut off it.', 'not-proved': 'Not proved: treat it as bad, or measure better.', scrap: 'Proved bad.',
  } satisfies Record<Use, string>,
  chance: (n: string) => `Within the limit in ${n} cases.`, worst: (n: number, half: string) => (n === 1 ? `One place, ±${KEEP}${half}.` : `Worst of ${n} places, ±${KEEP}${half}.`), repeats: (n: number) => (n > 1 ? `Mean of ${n} repeats.` : ''),
  rule: { 'iso-14253-1-1998': 'Rule: ISO 14253-1:1998, the whole interval inside.', 'iso-14253-1-2017': 'Rule: ISO 14253-1:2017, 95 of 100 by the guard band.' } satisfies Record<Rule, string>,
  limitFrom: (source: string, page: string) => `Limit: ${source}${page ? `, ${page}` : ''}.`, wear: (share: string) => `Worn by ${share} of what may be.`, unworn: 'Not worn, or the size when new is wrong.', cut: (most: string) => `Up to ${most} may be cut off.`,
  unknownInstrument: 'Say what it was measured with: without that nothing is proved.',
  settle: { more: (n: number) => (n === 1 ? 'Measure once more' : `Measure ${spelt(n)} times more`), instrument: (name: string) => `Measure with a ${name.toLowerCase()}`, none: 'No usual instrument settles this: treat it as bad.', why: 'at this scatter that settles it' },
  line: (value: string, limit: string, verdict: string) => `Reading ${value}, limit ${limit}: ${verdict}.`, reading: 'reading', limitWord: 'limit', readings: (n: number) => count(n, 'reading'), otherSide: (side: string, value: string) => `${side}: ${value}`,
  nextSize: (step: string, size: string) => `Cleans up at ${step}: to ${size}.`,
};

/** Small counts as words, as they stand on a button. */
function spelt(n: number): string {
  return ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'][n] ?? String(n);
}
