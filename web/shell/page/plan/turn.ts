import type { Aim, Id, PlanQuery, PlanView, Route, Settings } from '../../bridge/protocol';

/** What is tried out: figures slid, another aim, sellers left out. */
export interface Turn {
  /** In minor units. */
  budget?: number;
  minutes?: number;
  /** In minor units. */
  hourValue?: number;
  aim?: Aim;
  without?: readonly Id[];
  noRoutes?: readonly Route[];
  /** By stage, in minor units. */
  stages?: Readonly<Record<number, number>>;
}

/** The question with what is tried out; what is not turned is as the job says. */
export function turnedQuery({ budget, minutes, hourValue, aim, without, noRoutes, stages }: Turn): PlanQuery {
  return {
    ...(budget !== undefined && { budget }),
    ...(minutes !== undefined && { minutes }),
    ...(aim && { aim }),
    ...(without?.length && { forbid: [...without] }),
    ...(noRoutes?.length && { forbid_routes: [...noRoutes] }),
    ...(stages && Object.keys(stages).length > 0 && { stages: Object.entries(stages).map(([stage, budget]) => ({ stage: Number(stage), budget })) }),
    ...(hourValue !== undefined && { set: { quotes: {}, job: { hour_value: hourValue } } }),
  };
}

/** Where a slider stands, how far it goes, and in which steps: as far as half as much again as what is used or allowed. */
export function slid(figure: 'budget' | 'minutes' | 'hourValue', settings: Settings, view: PlanView | undefined): { now: number; most: number; step: number } {
  const used = { budget: view?.sums?.cash.minor ?? 0, minutes: view?.sums?.own_time ?? 0, hourValue: 0 }[figure];
  const set = { budget: settings.budget?.minor, minutes: settings.own_hours, hourValue: settings.hour_value.minor }[figure];
  const now = set ?? used;
  const most = Math.max(now, used, 1) * 1.5;
  const step = figure === 'minutes' ? 30 : round(most / 100);
  return { now, most: Math.ceil(Math.max(most, figure === 'hourValue' ? 40 * round(1) : step) / step) * step, step };
}

/** How far a slider for a sum goes, and in which steps: as far as half as much again. */
export function span(amount: number): { most: number; step: number } {
  const step = round((Math.max(amount, 1) * 1.5) / 100);
  return { most: Math.ceil((amount * 1.5) / step) * step, step };
}

/** The nearest of 1, 2, 5, 10 … that is no less. */
function round(amount: number): number {
  const ten = 10 ** Math.floor(Math.log10(Math.max(amount, 1)));
  return [1, 2, 5, 10].map((unit) => unit * ten).find((unit) => unit >= amount) ?? ten * 10;
}

/** What is paid in each stage to suppliers and specialists whose terms are known; nothing where all is in one. */
export function stagesOf(view: PlanView | undefined): Map<number, number> {
  const paid = new Map<number, number>();
  for (const { stage, value, carriage, short } of view?.orders ?? []) paid.set(stage, (paid.get(stage) ?? 0) + value.minor + carriage.minor + short.minor);
  return paid.size > 1 ? paid : new Map();
}
