// An invented garage: parts with names, numbers, notes and places.

import { seeded } from './seeded.js';

const WHERE = ['front', 'rear', 'upper', 'lower', 'inner', 'outer', 'left', 'right', 'main', 'centre', 'near', 'far'];
const OF = [
  'hub', 'brake', 'clutch', 'gearbox', 'axle', 'steering', 'radiator', 'carburettor', 'dynamo', 'starter', 'wiper', 'window', 'bonnet', 'boot', 'door',
  'bumper', 'exhaust', 'manifold', 'camshaft', 'crankshaft', 'piston', 'rocker', 'valve', 'timing', 'oil', 'fuel', 'water', 'heater', 'handbrake',
  'suspension', 'damper', 'spring', 'wishbone', 'kingpin', 'propshaft', 'differential', 'halfshaft', 'wheel', 'pedal', 'throttle', 'choke', 'seat',
  'dashboard', 'instrument', 'headlamp', 'indicator', 'horn', 'battery', 'distributor', 'ignition', 'servo', 'drum', 'calliper', 'master', 'slave',
];
const WHAT = [
  'bearing', 'bracket', 'bush', 'bolt', 'washer', 'nut', 'stud', 'spacer', 'shim', 'seal', 'gasket', 'cover', 'housing', 'cylinder', 'lever', 'linkage',
  'cable', 'pipe', 'hose', 'clip', 'clamp', 'plate', 'spindle', 'shaft', 'pinion', 'gear', 'ring', 'retainer', 'circlip', 'pin', 'cotter', 'rod', 'arm',
  'pulley', 'belt', 'pump', 'filter', 'element', 'switch', 'lamp', 'lens', 'bezel', 'handle', 'hinge', 'catch', 'striker', 'panel', 'strip', 'moulding',
  'badge', 'grille', 'tank', 'cap', 'gauge', 'sender', 'motor', 'mounting', 'trunnion', 'flange', 'adjuster', 'shoe', 'lining', 'disc', 'shield',
];
const SAID = [
  'surface rust, cleans up', 'thread damaged on one end', 'shim stuck to the back', 'paint mark facing out', 'worn on the leading edge', 'seized, soaked overnight',
  'missing one split pin', 'kept with its spring', 'scored, measure before use', 'bent slightly at the lug', 'looks new, replaced before', 'cracked near the boss',
];
const ASSEMBLIES = ['Front axle', 'Rear axle', 'Gearbox', 'Engine', 'Steering', 'Brakes', 'Cooling', 'Fuel', 'Electrics', 'Interior', 'Doors', 'Bonnet', 'Boot', 'Exhaust', 'Clutch'];
const PLACES = ['Rack', 'Shelf', 'Box', 'Drawer', 'Hook', 'Bag'];

/** `count` parts, the same for the same seed. */
export function garage(count, seed = 1) {
  const chance = seeded(seed);
  return Array.from({ length: count }, (_, index) => ({
    id: hexId(1, index),
    name: capital([...(chance.next() < 0.55 ? [chance.pick(WHERE)] : []), chance.pick(OF), chance.pick(WHAT)].join(' ')),
    number: `${letters(chance, 2)}${100000 + chance.below(900000)}`,
    note: chance.next() < 0.35 ? chance.pick(SAID) : '',
    assembly: chance.below(ASSEMBLIES.length),
    place: chance.below(60),
    tag: index + 1,
  }));
}

export const assemblies = ASSEMBLIES.map((name, index) => ({ id: hexId(2, index), name }));
export const places = Array.from({ length: 60 }, (_, index) => ({ id: hexId(3, index), name: `${PLACES[index % PLACES.length]} ${String(index + 1).padStart(2, '0')}` }));

/** An id that no device would make, so that everything can be told apart by its number. */
export function hexId(kind, index) {
  return `be${kind.toString(16).padStart(2, '0')}${'0'.repeat(16)}${index.toString(16).padStart(12, '0')}`;
}

/** Queries made of words of parts, with one letter wrong, missing, too much or swapped with the next. */
export function misspelt(parts, count, seed, mistakes) {
  const chance = seeded(seed);
  const queries = [];
  while (queries.length < count) {
    const part = parts[chance.below(parts.length)];
    // Two in three look for a name, the others for a maker's number.
    const meant = queries.length % 3 === 2 ? [part.number.toLowerCase()] : part.name.toLowerCase().split(' ').slice(-2);
    const typed = [...meant];
    const spoilable = typed.map((word, at) => [word, at]).filter(([word]) => word.length >= 4);
    if (spoilable.length < mistakes && meant.length > 1) continue;
    for (const [word, at] of shuffled(spoilable, chance).slice(0, mistakes)) typed[at] = spoilt(word, chance);
    queries.push({ typed: typed.join(' '), meant });
  }
  return queries;
}

function spoilt(word, chance) {
  const at = chance.below(word.length - 1);
  const letter = 'abcdefghijklmnopqrstuvwxyz'[chance.below(26)];
  const made = [
    () => word.slice(0, at) + letter + word.slice(at + 1),
    () => word.slice(0, at) + word.slice(at + 1),
    () => word.slice(0, at) + letter + word.slice(at),
    () => word.slice(0, at) + word[at + 1] + word[at] + word.slice(at + 2),
  ][chance.below(4)]();
  return made === word ? spoilt(word, chance) : made;
}

function shuffled(list, chance) {
  return list.map((one) => [chance.next(), one]).sort(([a], [b]) => a - b).map(([, one]) => one);
}

function letters(chance, count) {
  return Array.from({ length: count }, () => 'ABCDEFGHKLMNPRSTVW'[chance.below(18)]).join('');
}

function capital(text) {
  return text[0].toUpperCase() + text.slice(1);
}
