import { newId, desk } from '../../bridge/desk';
import type { Change, Command, Lack, RecordView, RefitStepView } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import { carryOut } from '../carry-out';
import { seenOf } from '../sheet/write';
import { today } from '../today';
import { words } from '../words';
import { ticking } from './tick';

/** Whether it is stored; with words where there was nothing to store it on. What was refused is told above the page. */
export type Mended = boolean | { why: string };

/** A way to mend a lack: one tap, or where to go. */
export interface Way {
  word: string;
  href?: string;
  mend?: () => Promise<Mended>;
  icon?: 'check' | 'proved-bad' | 'next' | 'add';
}

/** What can be done about a lack of the part in hand, the likeliest first. `order` opens the form for what is ordered. */
export function waysOf(lack: Lack, view: RefitStepView, order: () => void): Way[] {
  const say = words().refit.lacks;
  const { record } = view;
  const name = view.step.line.name || words().parts.noName;
  const sheet: Way = { word: say.ways.open, href: openedFrom(`#/part/${record.id}`, `refit/${view.assembly ?? 'none'}?step=${record.id}`), icon: 'next' };
  const finished = (word: string, message: string): Way => ({ word, icon: 'check', mend: () => put([[record, [{ finished: true }]]], message) });
  switch (lack.why) {
    case 'undecided': return [{ word: say.ways.useAgain, icon: 'check', mend: () => useAgain(record, say.done.useAgain(name)) }, { word: say.ways.decide, href: `#/routes/${record.id}`, icon: 'next' }];
    case 'to-repair': return [finished(say.ways.workDone, say.done.workDone(name)), { word: say.ways.decide, href: `#/routes/${record.id}`, icon: 'next' }];
    case 'to-finish': return [finished(say.ways.finishDone, say.done.finishDone(name))];
    case 'tried-only': return [{ word: say.ways.offAgain, mend: () => done(ticking(view, 'off-again'), words().refit.onStep.said['off-again'](name)) }];
    case 'to-order': return [{ word: say.ways.order, icon: 'add', mend: () => { order(); return Promise.resolve(false); } }, sheet];
    case 'on-order': return [{ word: say.ways.inNow, icon: 'check', mend: () => put(inToday(lack, view), say.done.inNow(name)) }, sheet];
    case 'to-fetch': return [{ word: say.ways.fetched, icon: 'check', mend: () => fetched(record.id, say.done.fetched(name)) }, { word: say.ways.decide, href: `#/routes/${record.id}`, icon: 'next' }];
    case 'to-compare': return (['right', 'wrong'] as const).map((compared) => ({ word: say.ways[compared], icon: compared === 'right' ? 'check' as const : 'proved-bad' as const, mend: () => put(toCompare(view).map((one) => [one, [{ compared }]]), say.done[compared](name)) }));
    case 'hardware': case 'consumable': return here(lack, view);
    case 'goes-after': case 'circle': return lack.other ? [{ word: say.ways.toOther(lack.other_name || words().refit.noName), href: `#/refit/${lack.other}`, icon: 'next' }] : [];
    case 'paint': return [{ word: say.ways.painted, icon: 'check', mend: painted }];
    case 'wrong': case 'missing': case 'out-for-work': case 'on-loan': case 'to-send': return [sheet];
  }
}

/** What was ordered and is not in. */
export function coming(deliveries: readonly RecordView[]): RecordView[] {
  return deliveries.filter(({ values }) => values.arrived === undefined && values.compared === undefined);
}

/** The delivery that is meant, and no other that is on its way. */
function inToday({ other }: Lack, { deliveries }: RefitStepView): [RecordView, Change[]][] {
  return coming(deliveries).filter(({ id }) => id === other).map((one) => [one, [{ arrived: today() }]]);
}

/** What is in and was not compared: deliveries of a new part, else what came back from the last work on it. */
export function toCompare({ step, deliveries, outings }: Pick<RefitStepView, 'step' | 'deliveries' | 'outings'>): RecordView[] {
  if (step.brings_new) return deliveries.filter(({ values }) => values.arrived !== undefined && values.compared === undefined);
  const back = outings.filter(({ values }) => values.arrived !== undefined && values.out_for !== 'loan').sort((one, other) => (one.values.arrived ?? '').localeCompare(other.values.arrived ?? ''));
  return back.slice(-1).filter(({ values }) => values.compared === undefined);
}

function here(lack: Lack, { joints, consumables }: RefitStepView): Way[] {
  const say = words().refit.lacks;
  const records = [...joints.flatMap(({ pieces }) => pieces.map(({ record }) => record)), ...consumables];
  const record = records.find(({ id }) => id === lack.other);
  if (!record) return [];
  const all = record.values.quantity ?? 1;
  return [{ word: say.ways.here(all), icon: 'check', mend: () => put([[record, [{ in_hand: all }]]], say.done.here(record.values.name ?? lack.name)) }];
}

async function useAgain({ id: part }: RecordView, message: string): Promise<Mended> {
  const quote = newId();
  return done({ do: 'all', commands: [{ do: 'create', id: quote, kind: 'quote', changes: [{ of: part }, { route: 'use-again' }] }, { do: 'choose', id: newId(), quote, part }] }, message);
}

async function fetched(part: string, message: string): Promise<Mended> {
  const cost = await desk.ask({ ask: 'cost', part, today: today() });
  const chosen = cost.view === 'cost' ? cost.quotes.find(({ id }) => id === cost.chosen?.values.quote) : undefined;
  return chosen ? put([[chosen.record, [{ fetched: true }]]], message) : { why: words().refit.lacks.noQuote };
}

/** The vehicle being done is painted. */
export async function painted(): Promise<Mended> {
  const head = await desk.ask({ ask: 'head' });
  const vehicle = head.view === 'head' ? head.vehicles.find(({ values, struck }) => !values.donor && !struck) : undefined;
  return vehicle ? put([[vehicle, [{ painted: true }]]], words().refit.lacks.done.painted(vehicle.values.name ?? words().vehicles.noName)) : { why: words().refit.gates.noVehicle };
}

/** Several records with one stroke, each over what was seen of it. */
export async function put(what: readonly (readonly [RecordView, Change[]])[], message: string): Promise<Mended> {
  if (what.length === 0) return { why: words().refit.lacks.gone };
  return done({ do: 'all', commands: what.map(([record, changes]) => ({ do: 'change', ids: [record.id], changes, seen: seenOf(record, changes) })) }, message);
}

async function done(command: Command, message: string): Promise<boolean> {
  const { ok } = await carryOut(command, message);
  return ok;
}
