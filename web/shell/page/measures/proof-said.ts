import type { MeasureView, PlaceMeasured, Units } from '../../bridge/protocol';
import { words } from '../words';
import { ofHundred } from '../words/format';
import { said } from './amount';

/** The place that governs, with what it proves. */
export function governing(measure: MeasureView): PlaceMeasured | undefined {
  return measure.governs === undefined ? undefined : measure.places[measure.governs];
}

/** What a measure proves, in sentences: verdict first. */
export function proofSaid(measure: MeasureView, units: Units): { verdict: string; rest: string } | null {
  const say = words().measures;
  const place = governing(measure);
  const against = place?.against;
  if (!place || !against) return null;
  const proof = against.discard ?? against.machining;
  const amount = (value: number): string => said(value, measure.dimension, units);
  const chance = proof?.chance;
  const wear = against.wear;
  const page = measure.limit?.values.text ?? '';
  const rest = [
    chance === undefined ? say.unknownInstrument : say.chance(ofHundred(chance)), say.worst(measure.places.length, amount(twoFigures(place.measured.expanded))), say.repeats(place.measured.count),
    wear && (wear.stands === 'unworn' ? say.unworn : say.wear(ofHundred(wear.share))), against.most_cut !== undefined && against.allows === 'may-be-cut' && say.cut(amount(Math.floor(against.most_cut / 10_000) * 10_000)),
    measure.next_size && say.nextSize(amount(measure.next_size.step), amount(measure.next_size.size)), proof && say.rule[proof.rule], measure.source && say.limitFrom(say.sources[measure.source], page),
  ];
  return { verdict: say.sentence[against.allows], rest: rest.filter(Boolean).join(' ') };
}

/** An uncertainty is told to two figures (GUM 7.2.6). */
export function twoFigures(amount: number): number {
  return Number(amount.toPrecision(2));
}

/** What would settle a measure that proves nothing: what to do, as on a button; nothing where nothing does. */
export function settlingSaid({ settling, places, governs }: MeasureView): string | null {
  const say = words().measures.settle;
  if (!settling) return null;
  const more = settling.repeats === undefined ? undefined : settling.repeats - (governs === undefined ? 0 : places[governs]?.measured.count ?? 0);
  const [coarsest] = settling.instruments;
  if (more !== undefined && more > 0) return say.more(more);
  return coarsest ? say.instrument(words().measures.instruments[coarsest]) : null;
}
