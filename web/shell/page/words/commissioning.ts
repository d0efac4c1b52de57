import type { CommissioningStep } from '../../bridge/protocol';
import { capital, count, number } from './format';
import type { Vocabulary } from './vocabulary';

/** From the last assembly to the road. */
export const commissioning = (trade: Vocabulary) => ({
  title: 'Commissioning', second: 'from the last assembly to the road', lead: 'The last assembly is the vehicle itself: each line done, with what was found, or left out.', open: (n: number) => `${count(n, 'assembly', 'assemblies')} not together yet.`, allOn: 'Every assembly is together.',
  steps: {
    fluids: ['Fluids in', 'Engine, gearbox, axle, steering, cooling, brakes: as the refill list above.'],
    bleed: ['Bled', 'Brakes, clutch, cooling, fuel: until no air comes. Pedal firm, and firm after a night.'],
    prime: ['Primed', 'Oil turned up to pressure before the first start; fuel up to the pump.'],
    settings: ['Settings', `Valve clearances, timing, mixture, tracking, brakes, lamps, ${trade.tyre} pressures.`],
    leaks: ['Leaks', 'Looked over cold, warm, and the morning after: oil, water, fuel, brake fluid.'],
    retighten: ['Tightened again', 'Wheels after the first miles, cylinder head and manifolds where the manual says so, bushes at ride height.'],
    inspection: ['Looked over by somebody competent', 'Brakes, steering, wheels, belts, lamps: before the road, whatever the law asks.'],
    'running-in': ['Run in', 'By the manual; oil and filter after it.'],
  } satisfies Record<CommissioningStep, readonly [string, string]>,
  progress: (done: number, of: number) => `${number(done)} of ${number(of)} done`, done: 'Done', doneOf: (step: string) => `Done: ${step}`, skip: 'Leave it out', skipOf: (step: string) => `Leave it out: ${step}`, undo: 'Open again', undoOf: (step: string) => `Open again: ${step}`, isDone: 'done', isSkipped: 'left out', isOpen: 'open', finding: 'What was found', findingKept: (step: string) => `${step}: kept`,
  doneSaid: (step: string) => `${step}: done`, skippedSaid: (step: string) => `${step}: left out`, openSaid: (step: string) => `${step}: open again`, stepsTitle: 'Step by step',
  fluids: {
    title: 'Fluids', lead: 'What is drained says how much goes in again, and in what state it was.', none: 'none put down', add: 'Put a fluid down', name: 'Which', likely: ['Engine oil', 'Gearbox oil', 'Axle oil', 'Coolant', 'Brake fluid', 'Steering box oil', `${capital(trade.damper)} oil`, capital(trade.petrol)], drained: 'Drained', capacity: 'By the manual', filled: 'Filled in', condition: 'Its condition', conditionHint: 'Milky, black, with swarf: it is evidence. Then to where waste oil goes.', hint: (unit: string) => `In ${unit}, or with its unit: 4.5 L, 500 ml, 8 pt, 1 gal`, wrong: 'Give an amount, as 4.5 or 500 ml.', needsName: 'Say which fluid it is.', put: 'Put it down', said: (name: string) => `${name} put down`, saved: (what: string) => `${what} put down`,
    refill: 'Refill list', toFill: (amount: string) => `${amount} to fill in`, byManual: 'by the manual', asDrained: 'as much as came out', unknown: 'amount not known', isIn: (amount: string) => `${amount} in`, strike: 'Strike out', struck: (name: string) => `${name} struck out`, now: 'All of it is in', nowOf: (name: string) => `All of it is in: ${name}`, nowDone: (name: string, amount: string) => `${name}: ${amount} filled in`, disposal: 'Drained fluids go to where waste oil and coolant are taken in, not down the drain.',
  },
  before: { title: 'Found before, found now', lead: 'What was seen before anything was slackened, beside what is seen now it is together.', none: 'Nothing was put down before it was slackened.', was: 'Before', now: 'Now', saved: (check: string) => `${check}: kept`, open: (n: number) => `${count(n, 'finding')} not compared`, all: 'all compared' },
  left: {
    title: 'Left over', none: 'Nothing is left over.', parts: 'Off, and never ticked as on', neverTicked: 'Joints that nobody ticked', renewed: 'Renewed', pieces: (n: number) => count(n, 'piece'), noneRenewed: 'nothing', count: (n: number) => (n ? count(n, 'thing') : 'none'),
  },
});
