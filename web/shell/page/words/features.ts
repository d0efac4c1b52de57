import type { FeatureCode } from '../../bridge/protocol';

/** What is measured, and where. */
export interface FeatureWords {
  name: string;
  /** Where, and how the place is found; empty when the name says it. */
  where: string;
}

/** All that is measured in parts (common practice, no source). */
export const features = {
  'bore-size': { name: 'Bore', where: 'size to note' },
  'outside-size': { name: 'Outside diameter', where: 'size to note' },
  'width-size': { name: 'Width', where: 'size to note' },
  'length-size': { name: 'Length', where: 'size to note; of a bolt, under the head' },
  'thread-size': { name: 'Thread, outside diameter', where: 'over the crests; note the pitch, too' },
  'plain-shank': { name: 'Plain shank', where: 'length without thread, under the head' },
  'pattern-size': { name: 'Size', where: 'overall, for the pattern' },
  'bush-bore': { name: 'Bore of the bush', where: 'in two planes, at both ends; the largest counts' },
  'pin-diameter': { name: 'Diameter of the pin', where: 'where it is worn, in two planes; the smallest counts' },
  clearance: { name: 'Clearance', where: 'bore less shaft, where both are worn most' },
  'run-out': { name: 'Run-out', where: 'turned between centres, whole swing of the dial' },
  'shaft-diameter': { name: 'Diameter', where: 'at the bearing seat, in two planes; the smallest counts' },
  'free-length': { name: 'Free length', where: 'off the vehicle, unloaded' },
  'free-length-sides': { name: 'Free length, left against right', where: 'the difference between the two' },
  'fitted-load': { name: 'Load', where: 'pressed to its fitted length' },
  'disc-thickness': { name: 'Thickness', where: 'at the thinnest place, inside any lip' },
  'disc-run-out': { name: 'Run-out', where: 'on its hub, near the rim; end float taken up' },
  'drum-bore': { name: 'Inside diameter', where: 'at the widest place, inside any lip' },
  'drum-ovality': { name: 'Ovality', where: 'largest diameter less smallest, at one depth' },
  'lining-thickness': { name: 'Lining', where: 'at the thinnest place: above the rivet heads, or above the shoe if bonded' },
  'cylinder-bore': { name: 'Bore', where: 'where the seal runs, in two planes; the largest counts' },
  backlash: { name: 'Backlash', where: 'at the tooth edge, in several places round' },
  'end-float': { name: 'End float', where: 'pushed hard both ways' },
  'seal-track-diameter': { name: 'Seal track', where: 'in the bottom of the groove' },
  flatness: { name: 'Out of flat', where: 'thickest feeler that goes under a straight edge' },
  journal: { name: 'Journal', where: 'in two planes, at both ends; the smallest counts' },
  'cylinder-wear': { name: 'Cylinder bore', where: 'below the ridge, in two planes, three depths; the largest counts' },
  'spindle-clearance': { name: 'Spindle clearance', where: 'rocked against a dial' },
  'brush-length': { name: 'Brush length', where: 'the shortest one' },
  'metal-left': { name: 'Metal left', where: 'at the thinnest place, cleaned bright' },
} satisfies Record<FeatureCode, FeatureWords>;
