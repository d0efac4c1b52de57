import type { ChecksOf } from './checks';

type Brakes = 'rubber' | 'set' | 'bond' | 'boot' | 'pattern' | 'orientation' | 'age' | 'ends' | 'sag' | 'leaf' | 'eye' | 'leaks' | 'stroke' | 'spindle-rock' | 'matches-pair'
  | 'lip' | 'bell-mouth' | 'lining' | 'lining-cracks' | 'cylinder-bore' | 'piston';

/** Rubber and hoses; springs and dampers; brakes. */
export const brakeChecks: ChecksOf<Brakes> = {
  rubber: { name: 'Rubber', ask: 'How is the rubber?', how: 'Bend it: cracks open. Oil makes it swell and go soft.', small: '', outcomes: { sound: 'sound', cracked: 'cracked', swollen: 'swollen, soft' } },
  set: { name: 'Set', ask: 'Has it taken a set?', how: 'Its hole no longer sits in the middle.', small: '', outcomes: { none: 'no', set: 'set' } },
  bond: { name: 'Bond', ask: 'Does the rubber still hold to the metal?', how: 'Pry gently at the edge, all round.', small: '', outcomes: { holds: 'holds', parted: 'parted' } },
  boot: { name: 'Boot', ask: 'Is its boot whole?', how: '', small: '', outcomes: { sound: 'whole', split: 'split' } },
  pattern: { name: 'Pattern', ask: 'Is the old one kept as a pattern?', how: 'Until the new one has been laid beside it.', small: '', outcomes: { kept: 'kept', 'not-yet': 'not yet' } },
  orientation: { name: 'Way round', ask: 'Is there a photo of which way round it sat?', how: '', small: '', outcomes: { photographed: 'yes', 'not-yet': 'not yet' } },
  age: { name: 'Age', ask: 'How old is it?', how: 'Look for a date moulded or printed on it.', small: '', outcomes: { 'known-new': 'known to be new', unknown: 'not known', years: 'years old' } },
  ends: { name: 'Ends', ask: 'How are its ends and unions?', how: '', small: '', outcomes: { sound: 'sound', rusty: 'rusty' } },
  sag: { name: 'Sag', ask: 'Has it sagged?', how: 'Beside the one from the other side, or against the ride height as found.', small: '', outcomes: { level: 'no', sags: 'sags' } },
  leaf: { name: 'Leaves', ask: 'Is every leaf, or coil, whole?', how: '', small: '', outcomes: { whole: 'whole', broken: 'broken' } },
  eye: { name: 'Eyes', ask: 'Are its eyes or ends still true?', how: '', small: '', outcomes: { round: 'true', worn: 'worn' } },
  leaks: { name: 'Leaks', ask: 'Does it leak?', how: '', small: '', outcomes: { dry: 'dry', damp: 'damp', leaks: 'leaks' } },
  stroke: { name: 'Stroke', ask: 'How does it move through its stroke?', how: 'Upright, slowly, full stroke, several times.', small: '', outcomes: { smooth: 'smooth', rough: 'rough', 'dead-spot': 'dead spot' } },
  'spindle-rock': { name: 'Spindle', ask: 'Does its spindle rock?', how: '', small: '', outcomes: { none: 'no', rocks: 'rocks' } },
  'matches-pair': { name: 'Pair', ask: 'Does it move like the one from the other side?', how: '', small: '', outcomes: { matches: 'alike', 'not-tried': 'not tried yet', differs: 'differs' } },
  lip: { name: 'Lip', ask: 'Is there a lip of rust or wear at the edge?', how: '', small: '', outcomes: { none: 'none', lip: 'lip' } },
  'bell-mouth': { name: 'Bell mouth', ask: 'Is the drum wider at its open end?', how: 'Measure at the back and at the mouth.', small: '', outcomes: { none: 'no', 'bell-mouthed': 'wider' } },
  lining: { name: 'Lining', ask: 'Is the lining clean?', how: 'Oil, grease or fluid soaks in and does not come out. No air line, no dry brush.', small: '', outcomes: { clean: 'clean', contaminated: 'oil or fluid' } },
  'lining-cracks': { name: 'Lining cracks', ask: 'Is the lining cracked or coming loose?', how: '', small: '', outcomes: { none: 'none', cracked: 'cracked or loose' } },
  'cylinder-bore': { name: 'Bore', ask: 'How is the bore, after a light polish?', how: 'A mark that catches a nail cuts a new seal.', small: '', outcomes: { unmarked: 'unmarked', light: 'light marks', deep: 'pits or scores' } },
  piston: { name: 'Piston', ask: 'Does the piston move?', how: 'Keep your fingers out of its way; no air line behind it.', small: '', outcomes: { free: 'free', stuck: 'stuck' } },
};
