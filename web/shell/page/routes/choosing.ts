import { desk, newId } from '../../bridge/desk';
import type { Change, Command, CostView, Id, QuoteCost, Values } from '../../bridge/protocol';
import { today } from '../today';

/** What of a quote is the other side's own. */
const ITS_OWN = new Set<string>(['kind', 'struck', 'done', 'of', 'fallback', 'fetched'] satisfies (keyof Values)[]);

/**
 * The decision for a quote, and with it for the parts that are decided together: each for its own quote on the same route, else
 * for the same figures, which are put down for it with the same stroke, so that one undo takes all of it back. Who is decided
 * already stays so. `parts` are those that are decided.
 */
export async function choosing(view: CostView, quote: QuoteCost, who: string): Promise<{ command: Command; parts: Id[] }> {
  const commands: Command[] = [choose(quote.id, view.part, who)];
  const parts = [view.part];
  for (const part of await openTogether(view.part)) {
    const cost = await desk.ask({ ask: 'cost', part, today: today() });
    const too = cost.view === 'cost' ? quoteToo(cost, quote) : undefined;
    if (!too) continue;
    commands.push(...too.first, choose(too.id, part, who));
    parts.push(part);
  }
  return { command: commands.length === 1 && commands[0] ? commands[0] : { do: 'all', commands }, parts };
}

/** What is decided together with a part and waits for a decision. */
export async function openTogether(part: Id): Promise<Id[]> {
  const view = await desk.ask({ ask: 'inspect', part });
  if (view.view !== 'inspect') return [];
  return view.together.filter(({ standing }) => standing !== 'decided').map(({ id }) => id);
}

/** The quote of the other side on the same route, with what puts it down where there is none; nothing where it may not be chosen. */
function quoteToo(cost: CostView, quote: QuoteCost): { id: Id; first: Command[] } | undefined {
  const same = cost.quotes.filter(({ route, allowed }) => allowed && route === quote.route);
  const own = same.find(({ id }) => id === quote.id) ?? same.find(({ from }) => from === quote.from) ?? same[0];
  if (own) return { id: own.id, first: [] };
  // A kit covers what it covers: the other side is not put into it.
  if (quote.route === 'kit' || !cost.left.includes(quote.route) || cost.quotes.some(({ route }) => route === quote.route)) return undefined;
  const id = newId();
  const figures = Object.entries(quote.record.values).filter(([field]) => !ITS_OWN.has(field)).map(([field, value]) => ({ [field]: value } as Change));
  return { id, first: [{ do: 'create', id, kind: 'quote', changes: [{ of: cost.part }, ...figures] }] };
}

function choose(quote: Id, part: Id, who: string): Command {
  return { do: 'choose', id: newId(), quote, part, ...(who && { who }) };
}
