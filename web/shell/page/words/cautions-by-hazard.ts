import type { Hazard } from '../../bridge/protocol';
import type { Vocabulary } from './vocabulary';

/** One hazard: what it is called in a line, what can happen, what to do, who must decide, and where that stands. */
export interface HazardWords {
  /** After the word caution, in a line of a phone. */
  name: string;
  line: string;
  can: string;
  todo: string;
  who: string;
  /** Where that stands; 'common' when the trade says so and no source was looked up. */
  source: string;
}

const COMMON = 'Common practice, no source.';
const YOU = 'You, with the manual of the vehicle.';
const SHOP = 'A licensed shop.';
const INSPECTOR = 'A competent inspector, before it goes on the road.';

/** The hazards of the work. */
export const byHazard = (trade: Vocabulary) => ({
  'vehicle-falls': { name: 'the vehicle can fall', line: 'A vehicle on a jack can fall on you', can: 'It rolls or slips off the jack and crushes whoever is under it.',
    todo: 'Firm, level ground; wheels chocked. Stands within their rating, at strong points, pins in. Never under a vehicle that only jacks hold. Rock it before you go under.',
    who: YOU, source: 'HSE: HSG261; INDG434.' },
  'stored-spring': { name: 'a spring under load', line: 'A spring holds energy and can let go', can: 'It flies out when the last nut comes off, and breaks bones.',
    todo: 'Use a proper compressor and restrain the spring. Carry the load on a jack before the last nut. Stand out of its line. Wear eye protection for brake springs.',
    who: `You with the right compressor; else a ${trade.specialist}.`, source: COMMON },
  asbestos: { name: 'asbestos dust', line: 'Dust in old brakes and clutches may hold asbestos', can: 'The fibres stay in the lungs and can cause cancer decades later.',
    todo: 'No air line, no dry brush, no household vacuum. Wet it and wipe, keep it wet, seal the rags in a marked bag. Shops use an enclosure with a HEPA vacuum or low-pressure wet cleaning; the wet method alone only up to 5 pairs of brakes or 5 clutches a week.',
    who: 'A professional is advised. At home nobody oversees it: you answer for it yourself.', source: '29 CFR 1910.1001, appendix F; OSHA SHIB 07-26-06.' },
  dust: { name: 'silica and lead dust', line: 'Dust from blasting and sanding holds silica, lead, old paint', can: 'Fine silica scars the lungs; lead poisons, also the children of the house.',
    todo: 'Never blast with silica sand. Extract the dust at the tool, work wet where you can, wear a respirator made for it, keep dust out of the house. OSHA’s limits at work, over 8 h: silica 50, lead 50 micrograms a cubic metre.',
    who: 'You for a hand tool; blasting and lead work: a shop that has the extraction.', source: '29 CFR 1910.1053 (silica), 1926.62 (lead); HSE, motor vehicle repair: lung disease.' },
  isocyanates: { name: 'two-pack paint', line: 'Two-pack paint can give asthma for life', can: 'The mist of its hardener is the commonest cause of asthma from work. Once it has begun, any trace brings it back.',
    todo: 'Do not spray it at home. It takes a booth, air-fed breathing apparatus and health checks; a filter mask is not enough.', who: SHOP, source: 'HSE, COSHH in motor vehicle repair; SIM 03/2012/05.' },
  solvents: { name: `${trade.petrol}, solvents`, line: `${trade.petrol === 'petrol' ? 'Petrol' : 'Gasoline'} and solvents burn, and their fumes creep`, can: 'Vapour runs along the floor to a pilot light, and flashes back. On the skin it takes the fat out and is taken up.',
    todo: `Outdoors or with the door open; no flame, no heater, no sparks. Never wash parts in ${trade.petrol}. Gloves that stand the solvent. Rags outside, in a metal bin with a lid.`,
    who: YOU, source: 'Common practice, no source. Flash points (below 0 °C for petrol) from memory.' },
  'burnt-rubber': { name: 'burnt seals', line: 'Burnt seals: some kinds may leave acid. This is contested',
    can: 'Repair manuals warn: fluoro-rubber heated above about 315 to 400 °C leaves hydrofluoric acid, which burns to the bone. The British HSE says: no case from burnt-out vehicles has been verified, though burnt seals merit gloves.',
    todo: 'Do not touch charred or sticky rubber with bare hands. Neoprene gloves, wash down with limewater or plenty of water, bag the remains and the gloves. If skin was touched: calcium gluconate gel and a doctor, at once.',
    who: 'A doctor, if it touched you.', source: 'Contested. HSE, motor vehicle repair: fluoroelastomers; against it trade press of 1989 and manuals of engine makers.' },
  pressurised: { name: 'gas under pressure', line: 'Gas under pressure: never heat it, never cut it', can: 'A gas-filled strut, air bag or accumulator bursts in the fire, in the oven, or under the saw.',
    todo: 'Never heat, weld, cut or crush it; keep it out of the powder-coating oven. Let pressure off only as the manual says. Air bags: battery off and wait.', who: `A ${trade.specialist} with the maker’s instructions.`, source: COMMON },
  'safety-parts': { name: 'safety-critical part', line: 'Brakes, steering, wheels, belts: renew or have it tested', can: 'It breaks on the road, and somebody is hurt: not always you.',
    todo: 'Where there is any doubt, renew it or have it tested for cracks. No welding, no bending, no heat at home. Have the work looked over before the road.', who: INSPECTOR, source: COMMON },
  embrittlement: { name: 'plating hard steel', line: 'Acid and plating can make hard steel brittle', can: 'Hydrogen goes into hard bolts and springs; they snap days later, without warning.',
    todo: 'No acid and no electroplating on high-strength bolts or springs. If it must be: a plater who bakes them right after, in writing. Else blast, paint, or a coating without hydrogen.', who: `The plater; with safety parts: nobody, buy new.`, source: COMMON },
  'metal-fume': { name: 'zinc or cadmium fume', line: 'Fume of zinc and cadmium is poisonous', can: 'Zinc fume gives a fever by night. Cadmium fume, from old gold-tinted plating and some brazing rods, can kill days later.',
    todo: 'Take the plating off before you weld, braze or heat. Do not grind cadmium off dry. Outdoors or with extraction, a respirator for fume.', who: 'You for zinc, outdoors; cadmium: a shop.', source: COMMON },
  battery: { name: 'battery', line: 'A battery can burn, burst and splash acid', can: 'A spanner across it welds itself and sprays metal. Its gas bursts at a spark. Acid blinds.'.replace('spanner', trade.spanner),
    todo: `Rings off. ${trade.earth === 'earth' ? 'Earth' : 'Ground'} lead off first, on last. No spark near it while it charges. Goggles. Lift it with both hands, upright.`, who: YOU, source: COMMON },
  lifting: { name: 'heavy part', line: 'Heavy: take a hoist or a second pair of hands', can: 'Back, fingers and feet are hurt in one second.',
    todo: 'From about 15 kg, or 10 kg at arm’s reach: two people or a hoist. Try the weight first. Keep fingers out from under. Never under a hanging load.', who: YOU, source: COMMON },
  phosgene: { name: 'cleaner, then welding', line: 'Brake cleaner, then welding: poison gas', can: 'Chlorinated cleaner left on metal turns to phosgene in the arc. A little can kill, hours later.',
    todo: 'Never clean with a chlorinated product before welding; read the can. Use one without chlorine, let it dry wholly, wipe, wait. Weld with air moving.', who: YOU, source: COMMON },
  tanks: { name: '“empty” tank', line: 'An “empty” tank explodes', can: 'What clings to the seams is enough. Rinsing does not make it safe.',
    todo: `No welding, soldering, cutting or grinding on or near a ${trade.petrol} tank or a drum. Store it open, outdoors, away from sparks.`, who: `A ${trade.specialist} who makes tanks safe and says so in writing.`, source: COMMON },
  'exhaust-gas': { name: 'exhaust gas', line: 'Exhaust gas kills in a closed garage', can: 'Carbon monoxide has no smell. You fall asleep.', todo: 'Start it outdoors, or pipe the exhaust out with doors open. An alarm for carbon monoxide on the wall. Fire extinguisher at hand for the first start.', who: YOU, source: COMMON },
  caustic: { name: 'acid and caustic', line: 'Caustic and acid: one splash can blind', can: 'Caustic goes on eating after it is rinsed; acid and caustic together boil over.',
    todo: 'Goggles, not glasses; gauntlets, apron. Acid or caustic into water, never water into it. Water for the eyes within reach: rinse 15 minutes, then a doctor. Never mix the baths. Caustic dissolves aluminium, with a gas that burns.', who: 'You; a hot tank: a shop.', source: COMMON },
  'split-rims': { name: 'split wheel rim', line: 'A wheel rim in several pieces can kill', can: 'The lock ring flies off while the tyre is blown up.'.replace('tyre', trade.tyre),
    todo: 'Let all the air out before you loosen anything. Never blow one up outside a cage, never hammer on it under pressure, never mix pieces.', who: `A ${trade.tyre} shop with a cage.`, source: COMMON },
  injection: { name: 'pistons, diesel jets', line: 'Air throws pistons out; diesel spray goes through the skin', can: 'A caliper piston driven by an air line breaks fingers. An injector jet goes through gloves; untreated, the hand is lost.',
    todo: 'Push a piston out with the brake’s own hydraulics or a grease gun, wood in front of it, fingers away. Keep hands off a spraying injector. If it went in: hospital at once, even when it does not hurt.', who: 'A doctor, if it went through the skin.', source: COMMON },
  radium: { name: 'radium in dials', line: 'Glowing old dials may hold radium', can: 'The paint flakes; its dust, breathed or swallowed, stays in the bones.',
    todo: 'Leave the glass on. Do not scrape or repaint the figures. Bag it, mark it, wash your hands. Ask before you post it or throw it away.', who: `A ${trade.specialist} for instruments; for waste your local authority.`, source: COMMON },
}) satisfies Record<Hazard, HazardWords>;
