import { html, type TemplateResult } from 'lit';
import type { Certainty, CostView, Estimate, LineKind, QuoteCost } from '../../bridge/protocol';
import { words } from '../words';
import { money, moneyRound } from '../words/format';
import { confidenceOf } from './route-word';

/** A figure as the user gave it: a guess looks like a guess. Without a word beside it, it counts as sure, as in the core. */
export function said(figure: string, certainty: Certainty | undefined): TemplateResult | string {
  if (!certainty) return figure;
  const how = confidenceOf(certainty);
  const text = certainty === 'starting' ? words().costing.startingSaid(figure) : words().confidence.said(figure, how);
  return how === 'sure' ? text : html`<span class=${how}>${text}</span>`;
}

/** A reckoned sum, rounded here and nowhere before: whole units where it rests on a guess. */
export function sum(estimate: Estimate, guess: boolean): string {
  return guess ? moneyRound(estimate) : money(estimate);
}

/** The line of a quote, in minor units. */
export function lineOf(quote: QuoteCost, kind: LineKind): number {
  return quote.lines.find((line) => line.kind === kind)?.amount.minor ?? 0;
}

const MONEY: readonly LineKind[] = ['cash', 'freight', 'tax', 'duty', 'consumables', 'surcharge', 'shared'];

/** All that is paid in money, in minor units. */
export function paid(quote: QuoteCost): number {
  return MONEY.reduce((sum, kind) => sum + lineOf(quote, kind), 0);
}

/** Quotes as they are listed: allowed ones by what they cost, the others after them. */
export function sorted({ quotes }: CostView): QuoteCost[] {
  return [...quotes].sort((a, b) => Number(b.allowed) - Number(a.allowed) || a.present.minor - b.present.minor || (a.id < b.id ? -1 : 1));
}
