import type { Hazard, Step } from '../../bridge/protocol';
import { byHazard } from './cautions-by-hazard';
import { count, number } from './format';
import type { Vocabulary } from './vocabulary';

/** What can hurt somebody, before the step that carries it. */
export const cautions = (trade: Vocabulary) => ({
  title: 'Cautions', word: 'Caution',
  named: (hazard: Hazard) => byHazard(trade)[hazard].name,
  hazard: byHazard(trade),
  can: 'What can happen', todo: 'What to do', who: 'Who decides', source: 'Source',
  read: 'Read and understood', readSaid: (line: string) => `Read: ${line}`,
  readBy: (who: string, when: string) => (who ? `Read by ${who}, ${when}` : `Read ${when}`),
  /** Before the names of all of them, on one line. */
  few: (n: number, read: number) => [n === 1 ? 'Caution' : count(n, 'caution'), read === 0 ? '' : read === n ? 'read' : `${number(read)} read`].filter(Boolean).join(', '),
  allRead: (n: number) => `${count(n, 'caution')} read`,
  open: (n: number) => count(n, 'caution'), unread: (n: number) => `${count(n, 'caution')} to read`,
  standing: 'This app replaces neither the workshop manual, nor an inspector, nor local codes, nor a licensed shop. They come first.',
  step: { 'take-apart': 'Taking apart', judge: 'Cleaning and judging', route: 'Working on it', refit: 'Putting together' } satisfies Record<Step, string>,
  none: { first: 'No cautions yet.', then: 'They appear as parts, assemblies and ways of working come in that carry a hazard. That nothing stands here does not mean that nothing can happen.' },
  because: 'Because of', others: (n: number) => `and ${n} more`,
  whoAsked: { title: 'Who has read it?', lead: 'That it was read is kept with a name. It is asked once on this device.', go: 'Keep it', without: 'Keep it without a name' },
  order: ['take-apart', 'judge', 'route', 'refit'] as const satisfies readonly Step[],
  lineOf: (hazard: Hazard) => byHazard(trade)[hazard].line,
});
