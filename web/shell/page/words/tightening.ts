import type { Lubrication } from '../../bridge/protocol';
import { KEEP } from './format';

/** How tight a joint or one of its pieces is to be. */
export const tightening = {
  title: 'How tight', of: (name: string) => `How tight: ${name}`, figure: 'Tightening figure', figureHint: 'With its unit, as 54 N·m, 40 lbf·ft, 5.5 kgf·m. Without one it is in the unit shown.', angle: 'Then turn on by', degrees: '°', angleSaid: (degrees: number) => `then ${degrees}${KEEP}° on`, angleHint: 'Degrees, where the manual says so.', wrongAngle: 'Give whole degrees, from 0 to 1800.',
  sequence: 'Sequence', sequenceHint: 'As 1 to 8 crosswise, or from the middle outwards', stages: 'Stages', stagesHint: 'As 20, 40, 54 N·m', lubrication: 'Thread', lubrications: { dry: 'dry', oiled: 'oiled', '': 'not said' } satisfies Record<Lubrication | '', string>, compound: 'Sealant or locking compound', compoundHint: 'Which, and where it goes', withCompound: (what: string) => `with ${what}`, source: 'Where the figure stands', sourceHint: 'As manual, page 112', remark: 'In words', remarkHint: 'As: turning the hub, then back one flat',
  height: 'When', heights: { now: 'at once', height: 'at ride height' }, atHeight: 'at ride height', renew: 'Goes on', renews: { new: 'new', old: 'the old one', '': 'by its name' }, here: 'Here of the new ones', hereHint: 'How many lie ready', due: 'Due', wrongCount: 'Give a whole number, 0 or more.', unread: 'It was not read. Put it down once more.', notTorque: 'That is no tightening figure: N·m, lbf·ft, lbf·in or kgf·m.',
  put: 'Put it down', done: (name: string) => `${name}: put down`, joint: (name: string) => (name ? `Joint ${name}` : 'Joint'), whole: 'The whole joint',
  states: { tight: 'tight', 'finger-tight': 'finger-tight', '': 'not ticked' }, checked: 'checked a second time', inOrder: (text: string) => `sequence ${text}`, inStages: (text: string) => `in stages: ${text}`,
};
