import type { Change, FieldName, RecordView, Swap, Units, Values } from '../../bridge/protocol';
import { asTyped } from '../measures/amount';
import { words } from '../words';
import { readNumber } from '../words/read';

/** A gearing as it is typed. */
export type GearingDraft = Record<'name' | 'swap' | 'vehicle' | 'axle' | 'gears' | 'overdrive' | 'overdriveOn' | 'tyre' | 'circumference' | 'turns' | 'diameter' | 'highest' | 'remark', string>;
export type GearingMember = keyof GearingDraft;
export const EMPTY_GEARING: GearingDraft = { name: '', swap: 'before', vehicle: '', axle: '', gears: '', overdrive: '', overdriveOn: '1', tyre: '', circumference: '', turns: '', diameter: '', highest: '', remark: '' };
export const SWAPS: readonly Swap[] = ['before', 'after', 'candidate'];

/** The field that a member of the draft is kept in. */
export const FIELD = {
  name: 'name', swap: 'swap', vehicle: 'vehicle', axle: 'axle_ratio', gears: 'gear_ratios', overdrive: 'overdrive', overdriveOn: 'overdrive_on', tyre: 'tyre',
  circumference: 'circumference', turns: 'turns_per_mile', diameter: 'diameter', highest: 'highest_turns', remark: 'remark',
} as const satisfies Record<GearingMember, FieldName>;

const KM_A_MILE = 1.609344;

/** As it was put down. */
export function draftOf({ values }: RecordView, units: Units): GearingDraft {
  const length = (value: number | undefined): string => (value === undefined ? '' : asTyped(value, 'length', units));
  return {
    ...EMPTY_GEARING, name: values.name ?? '', swap: values.swap ?? '', vehicle: values.vehicle ?? '', axle: ratioText(values.axle_ratio), gears: values.gear_ratios ?? '',
    overdrive: ratioText(values.overdrive), overdriveOn: String(values.overdrive_on ?? 1), tyre: values.tyre ?? '', circumference: length(values.circumference), diameter: length(values.diameter),
    turns: turnsText(values, units), highest: values.highest_turns === undefined ? '' : String(values.highest_turns), remark: values.remark ?? '',
  };
}

export function ratioText(parts: number | undefined): string {
  return parts === undefined ? '' : String(parts / 1e4);
}

function turnsText({ turns_per_mile }: Values, units: Units): string {
  if (turns_per_mile === undefined) return '';
  return String(Number((units === 'inch' ? turns_per_mile / 100 : turns_per_mile / 100 / KM_A_MILE).toFixed(units === 'inch' ? 2 : 1)));
}

/** Parts of ten thousand from `4.22`, `4,22:1`; with `teeth` also from `9/38`, whichever comes first. */
export function readRatio(text: string, teeth: boolean): number | null {
  const [one, other, ...rest] = text.replace(/\s*:\s*1$/, '').split('/').map(readNumber);
  if (one === null || one === undefined || one <= 0 || rest.length) return null;
  if (other === undefined) return Math.round(one * 1e4);
  const whole = Number.isInteger(one) && other !== null && Number.isInteger(other) && other > 0;
  return teeth && whole ? Math.round((Math.max(one, other) / Math.min(one, other)) * 1e4) : null;
}

/** What has changed since `before`, and what is wrong with it. Lengths, marking and gears are read by the core: see the form. */
export function readGearing(draft: GearingDraft, before: GearingDraft, units: Units): { changes: Change[]; errors: Partial<GearingDraft> } {
  const say = words().gearing.form;
  const errors: Partial<GearingDraft> = {};
  const changes: Change[] = [];
  const put = (member: GearingMember, read: (text: string) => Change | string): void => {
    const text = draft[member].trim();
    if (text === before[member].trim()) return;
    const change = text ? read(text) : { clear: FIELD[member] };
    if (typeof change === 'string') errors[member] = change;
    else changes.push(change);
  };
  if (!draft.name.trim()) errors.name = say.needsName;
  put('name', (name) => ({ name }));
  put('swap', (text) => { const swap = SWAPS.find((one) => one === text); return swap ? { swap } : { clear: 'swap' }; });
  put('vehicle', (vehicle) => ({ vehicle }));
  put('axle', (text) => { const axle_ratio = readRatio(text, true); return axle_ratio === null ? say.wrong.ratio : { axle_ratio }; });
  put('gears', (gear_ratios) => ({ gear_ratios }));
  put('overdrive', (text) => { const overdrive = readRatio(text, false); return overdrive === null ? say.wrong.overdrive : { overdrive }; });
  if (draft.overdrive.trim()) put('overdriveOn', (text) => ({ overdrive_on: Number(text) }));
  put('tyre', (tyre) => ({ tyre }));
  put('turns', (text) => { const turns = readNumber(text); return turns === null || turns <= 0 ? say.wrong.turns : { turns_per_mile: Math.round(turns * (units === 'inch' ? 1 : KM_A_MILE) * 100) }; });
  put('highest', (text) => { const highest_turns = readNumber(text); return highest_turns === null || !Number.isInteger(highest_turns) ? say.wrong.whole : { highest_turns }; });
  put('remark', (remark) => ({ remark }));
  return { changes, errors };
}
