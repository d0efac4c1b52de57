import type { FieldName, Fit } from '../../bridge/protocol';
import { count } from './format';

/** What each field is called. */
export const fieldNames: Record<FieldName, string> = {
  kind: 'Kind', name: 'Name', struck: 'Struck out', done: 'Carried out', remark: 'Remark',
  currency: 'Currency', hour_value: 'Value of an hour', vocabulary: 'Trade words', units: 'Units', aim: 'Aim', driver_side: 'Driver sits', handed_out: 'Job file made', held: 'What it held',
  device: 'Device', number: 'Number', donor: 'Donor', year: 'Year', identity_number: 'Identity number',
  vehicle: 'Vehicle', inside: 'Inside', side: 'Side', open: 'Open',
  tag: 'Tag', assembly: 'Assembly', quantity: 'Pieces', makers_number: 'Maker’s number', casting_number: 'Casting number', material: 'Material', mass: 'Mass', family: 'Family',
  place: 'Where it lies', single_use: 'Single use', cannot_be_bought: 'Cannot be bought', missing_from_start: 'Missing from the start', wrong_piece: 'Wrong piece fitted', stuck: 'Stuck', tried: 'What was tried',
  off: 'Off', order: 'Order', from_boxes: 'Came in boxes', triage: 'First word', split_from: 'Split from', chosen: 'Route chosen',
  bag: 'Bag', joint: 'Joint', thickness: 'Thickness', size: 'Size',
  of: 'Of', moment: 'Taken when', shot: 'Taken for', caption: 'Words under the photo', blob: 'Picture or sound', length: 'Bytes', media_type: 'Form', taken: 'When', shape: 'Mark', x: 'Across', y: 'Down', dx: 'Width', dy: 'Height',
  text: 'Text', lasts: 'Lasts', within: 'In', place_kind: 'Kind of place', check: 'Looked at', skipped: 'Left out',
  route: 'Route', cash: 'Cash', own_time: 'Own time', chance: 'Fails', strip_again: 'Strip again', cash_certainty: 'Price is', own_time_certainty: 'Hours are', chance_certainty: 'Chance is', from: 'From',
  quote: 'Quote', who: 'Who decided', hour_value_then: 'Value of an hour then', expected_then: 'Expected cost then',
  interest: 'Interest a year', years_kept: 'Years kept', tax_rate: 'Tax', threshold: 'Worth a second look from', safety_critical: 'Safety-critical',
  freight: 'Freight', tax: 'Tax', duty: 'Duty', consumables: 'Consumables', surcharge: 'Surcharge', withheld: 'Surcharge withheld', exchange_rate: 'Rate of exchange',
  life: 'Lasts', life_certainty: 'Life is', fallback: 'If it fails', fails_at_bench: 'Failure shows at the bench', correctness: 'How original', valid_until: 'Valid until', wait: 'Wait',
  cash_least: 'Price, least', cash_most: 'Price, most', own_time_least: 'Hours, least', own_time_most: 'Hours, most', chance_least: 'Fails, least', chance_most: 'Fails, most', life_least: 'Lasts, least', life_most: 'Lasts, most',
  wait_certainty: 'Wait is', wait_least: 'Wait, least', wait_most: 'Wait, most', part: 'Part', pair: 'Both sides together',
  question: 'Looked at', outcome: 'Seen', finding: 'Shows', feature: 'Measured', spot: 'Measured at', measured: 'Read off', instrument: 'Measured with', zero_error: 'Zero error', resolution: 'Smallest step', uncertainty: 'Uncertainty', coverage: 'Coverage factor',
  limit_kind: 'Kind of limit', least: 'Least', most: 'Most', machining_least: 'Least after machining', machining_most: 'Most after machining', as_new: 'As new', limit_source: 'Limit from', dimension: 'Measured in', hazard: 'Caution',
  shipping: 'Carriage', free_from: 'Carriage free from', minimum_order: 'Least order', minimum_charge: 'Least charge', back_order: 'Has to be waited for', return_window: 'May go back within', restocking: 'Kept when it goes back', surcharge_deadline: 'Old unit back within', warranty: 'Warranty',
  stance: 'In the plan', from_value: 'From a value of', from_mass: 'From a mass of', relation: 'Rule', other: 'The other', stage: 'Stage of ordering', budget: 'Budget', own_hours: 'Own hours at most', latest: 'All in by', sold: 'Surplus sold for', bought: 'Here already',
  swap: 'In the swap', axle_ratio: 'Axle ratio', gear_ratios: 'Gears', overdrive: 'Overdrive', overdrive_on: 'Overdrive works on', tyre: 'Tyre marking', circumference: 'Rolls in one turn', turns_per_mile: 'Turns a mile', diameter: 'Tyre across', highest_turns: 'Highest engine speed',
  rate: 'Price for one', rate_basis: 'One of what', area: 'Surface of one piece', duty_rate: 'Duty on top', fetched: 'Taken off the donor',
  quotes: 'Quotes of the plan',
  oiled: 'Oiled', wrapped: 'Wrapped', fragile: 'Fragile', two_person: 'Lift by two', long: 'Length', wide: 'Width', high: 'Height', build: 'Built',
  out_for: 'Out for', due: 'Due', arrived: 'In on', compared: 'Compared with the old', ended: 'Count ended', in_count: 'Counted in',
  fit: 'On again', finished: 'Work done', paint: 'Before or after paint', painted: 'Painted', reference: 'Kept whole as the reference', fit_time: 'Own time to refit',
  torque: 'Tightening figure', torque_unit: 'Unit of the figure', angle: 'Then turn on by', sequence: 'Sequence', stages: 'Stages', lubrication: 'Thread', compound: 'Sealant or locking compound', torque_source: 'Figure from',
  at_ride_height: 'Tighten at ride height', tightened: 'Tightened', checked_again: 'Checked a second time', renew: 'Renew', in_hand: 'Here',
  drained: 'Drained', filled: 'Filled in', capacity: 'By the manual', commissioning_step: 'Step', found_after: 'Found afterwards', checking_days: 'Days to compare', lowered: 'On its wheels', on_the_road: 'On the road',
};

/** What was ever written, in words. */
export const history = {
  title: 'History', second: (n: number) => count(n, 'entry', 'entries'), field: fieldNames,
  emptied: 'emptied', takenBack: 'taken back', heldOf: (devices: number) => `entries of ${count(devices, 'device')}`, yes: 'yes', no: 'no', ofHundred: (n: string) => `${n} in 100`, percent: (n: string) => `${n} %`, undo: 'Undo this', undone: 'Undone',
  gone: { first: 'Nothing was written about this.', then: 'It is not in this job.', go: 'To the job' },
  certainty: { sure: 'sure', about: 'about', 'wild-guess': 'wild guess', starting: 'starting value' },
  triage: { 'looks-good': 'looks good', doubtful: 'doubtful', scrap: 'scrap' },
  fit: { fitted: 'on', tried: 'on for trial', 'off-again': 'off again for finish' } satisfies Record<Fit, string>,
  other: 'another record', unchanged: 'Latest first. Nothing here is ever deleted.',
};
