import type { Change, RecordView, TorqueUnit } from '../../bridge/protocol';
import { readNumber } from '../words/read';
import { torqueTyped } from './torque';

/** The form as it is typed. */
export interface TighteningDraft extends Record<string, string> {
  torque: string; unit: TorqueUnit; angle: string; sequence: string; stages: string; lubrication: string; compound: string; source: string; remark: string; height: string; renew: string; here: string; due: string;
}

export type TighteningMember = keyof TighteningDraft & string;
export type TighteningErrors = Partial<Record<'torque' | 'angle' | 'here', string>>;

/** What the record says, as it would be typed. */
export function draftOf({ values }: RecordView, unit: TorqueUnit): TighteningDraft {
  const said = values.torque_unit ?? unit;
  return {
    torque: values.torque === undefined ? '' : torqueTyped(values.torque, said), unit: said, angle: text(values.angle), sequence: values.sequence ?? '', stages: values.stages ?? '', lubrication: values.lubrication ?? '', compound: values.compound ?? '', source: values.torque_source ?? '', remark: values.remark ?? '',
    height: values.at_ride_height ? 'height' : 'now', renew: values.renew === undefined ? '' : values.renew ? 'new' : 'old', here: text(values.in_hand), due: values.due ?? '',
  };
}

function text(value: number | undefined): string {
  return value === undefined ? '' : String(value);
}

/** What the core made of the typed figure. */
export interface ReadTorque { amount?: number | undefined; unit?: TorqueUnit | undefined }

/** The changes from what stood there to what is typed; nothing where both are the same. What is not a number is named. */
export function readTightening(draft: TighteningDraft, begun: TighteningDraft, torque: ReadTorque, is: { piece: boolean }): { changes: Change[]; wrong: TighteningMember[] } {
  const changes: Change[] = [];
  const wrong: TighteningMember[] = [];
  const differs = (member: TighteningMember): boolean => (draft[member] ?? '').trim() !== (begun[member] ?? '').trim();
  if (differs('torque') || differs('unit')) {
    if (!draft.torque.trim()) changes.push({ clear: 'torque' }, { clear: 'torque_unit' });
    else if (torque.amount !== undefined && torque.unit) changes.push({ torque: torque.amount }, { torque_unit: torque.unit });
  }
  const words = [['sequence', 'sequence'], ['stages', 'stages'], ['compound', 'compound'], ['source', 'torque_source'], ['remark', 'remark']] as const;
  for (const [member, field] of words) {
    const typed = draft[member].trim();
    if (differs(member)) changes.push(typed ? ({ [field]: typed } as Change) : { clear: field });
  }
  const whole = (member: 'angle' | 'here', most: number, change: (value: number) => Change, clear: Change): void => {
    if (!differs(member)) return;
    const value = readNumber(draft[member]);
    if (!draft[member].trim()) changes.push(clear);
    else if (value === null || !Number.isInteger(value) || value < 0 || value > most) wrong.push(member);
    else changes.push(change(value));
  };
  whole('angle', 1800, (angle) => ({ angle }), { clear: 'angle' });
  if (differs('lubrication')) changes.push(draft.lubrication === 'dry' || draft.lubrication === 'oiled' ? { lubrication: draft.lubrication } : { clear: 'lubrication' });
  if (is.piece) {
    if (differs('renew')) changes.push(draft.renew ? { renew: draft.renew === 'new' } : { clear: 'renew' });
    whole('here', 100_000, (in_hand) => ({ in_hand }), { clear: 'in_hand' });
    if (differs('due')) changes.push(draft.due ? { due: draft.due } : { clear: 'due' });
  } else if (differs('height')) changes.push({ at_ride_height: draft.height === 'height' });
  return { changes, wrong };
}
