import { desk } from '../../bridge/desk';
import type { Unit } from '../../bridge/protocol';
import { words } from '../words';

/** What a typed measure says in base units, or why it cannot be read. An empty text says nothing. */
export async function typed(text: string, unit: Unit): Promise<{ amount?: number; error?: string }> {
  if (!text.trim()) return {};
  const view = await desk.ask({ ask: 'typed', text, unit });
  if (view.view !== 'typed') return {};
  if (view.amount !== undefined) return { amount: view.amount };
  const say = words().measures;
  return { error: `${say.unreadable[view.why ?? 'not-a-number']} ${say.form.accepted}` };
}
