import type { Change, Command, Id, KeptPart, KeptPlan, KeptQuote, Money, PlanChoice, PlanView } from '../../bridge/protocol';

/** What is kept of a plan: quote by quote, that for what a kit has too few of after it. */
export function keptQuotes(choices: readonly PlanChoice[]): KeptQuote[] {
  return choices.flatMap(({ part, quote, cash, rest, rest_cash }) => [{ part, quote, cash }, ...(rest ? [{ part, quote: rest, cash: rest_cash ?? 0 }] : [])]);
}

/** All that is written when a plan is kept. */
export function keptChanges(name: string, { sums, choices }: PlanView, hourValue: Money, taken: number): Change[] {
  if (!sums) return [];
  return [{ name }, { quotes: keptQuotes(choices) }, { cash: sums.cash }, { own_time: sums.own_time }, { expected_then: sums.cost.minor }, { hour_value_then: hourValue }, { taken }];
}

/** Parts that go another way when the plan is adopted. */
export function adopting({ parts }: KeptPlan): KeptPart[] {
  return parts.filter(({ open, chosen }) => open && !chosen);
}

/** The same as commands. */
export function adoptCommands(plan: KeptPlan, newId: () => Id, who: string | null): Command[] {
  return adopting(plan).flatMap(({ part, quote }): Command[] => (quote ? [{ do: 'choose', id: newId(), quote, part, ...(who && { who }) }] : []));
}
