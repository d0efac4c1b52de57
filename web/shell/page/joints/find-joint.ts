import { desk } from '../../bridge/desk';
import type { JointView } from '../../bridge/protocol';
import * as journal from '../journal';
import { isId } from '../names-nothing';

/** A joint with its pieces: by way of what is in hand, else of the assembly or part that it belongs to. */
export async function findJoint(id: string): Promise<{ joint: JointView | null; inch: boolean }> {
  const head = await desk.ask({ ask: 'head' });
  const inch = head.view === 'head' && head.settings.units === 'inch';
  if (!isId(id)) return { joint: null, inch };
  const hand = journal.inHand(desk.current() ?? '');
  const here = await within(id, hand.assembly ?? undefined, hand.part ?? undefined);
  if (here) return { joint: here, inch };
  const history = await desk.ask({ ask: 'history', id });
  const changes = history.view === 'history' ? history.lines.flatMap((line) => line.changes) : [];
  const assembly = changes.flatMap((change) => ('assembly' in change ? [change.assembly] : [])).at(-1);
  const part = changes.flatMap((change) => ('of' in change ? [change.of] : [])).at(-1);
  return { joint: await within(id, assembly, part), inch };
}

async function within(id: string, assembly: string | undefined, part: string | undefined): Promise<JointView | null> {
  const view = await desk.ask({ ask: 'teardown', assembly, part });
  if (view.view !== 'teardown') return null;
  return [...view.joints, ...view.part?.joints ?? []].find(({ record }) => record.id === id) ?? null;
}
