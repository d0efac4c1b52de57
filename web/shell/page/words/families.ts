import type { FamilyCode } from '../../bridge/protocol';
import { capital } from './format';
import type { Vocabulary } from './vocabulary';

/** What is said of a family of parts. */
export interface FamilyWords {
  /** What such parts are called. */
  name: string;
  /** When such a part is used again. */
  again: string;
  /** What else is worth knowing; empty when nothing is. */
  note: string;
}

/** Families of parts: common practice, no source; the workshop manual goes before. */
export const families = (trade: Vocabulary) => ({
  'rolling-bearing': { name: 'Ball or roller bearing', again: 'Tracks and rollers unmarked, cage sound, quiet by hand, and not pulled off through its rollers.',
    note: 'Cup and cone stay together and on their side. A sound old bearing of a good make may outlast a cheap new one. Never spin it with compressed air.' },
  seal: { name: 'Seal, O-ring, gasket, boot', again: 'Never: a new one goes in whatever the old one looks like. Leather and felt may be reworked where no other exists.',
    note: 'Measure shaft, bore and width before it is scrapped. Keep the old one as a pattern until the new one has been compared.' },
  'crush-spacer': { name: 'Crush spacer, stretch bolt', again: 'Never: it has given once, and gives no second time.', note: 'Not cheap, and often overlooked: order early.' },
  'locking-piece': { name: `${capital(trade.splitPin)}, ${trade.circlip}, lock washer`, again: 'Never: a new one goes in. A copper washer can be annealed.', note: 'Cheap: order spares.' },
  'rubber-bush': { name: 'Rubber bush or mount', again: 'Seldom: no cracks, no set, no swelling, and the bond holds.', note: 'Photograph which way round it sits before it is pressed out.' },
  'plain-bearing': { name: 'Plain bush or bearing shell', again: 'Unscored, and its clearance within the limit.', note: 'A new bush is reamed to fit after it is pressed in. Measure the bore in two planes.' },
  'pivot-pin': { name: 'King pin, swivel or shackle pin', again: 'Worn less than the limit, and no rock beyond its designed clearance.',
    note: 'Hold the brake on while you rock the wheel, so that play in the wheel bearing does not count. A threaded swivel has some clearance by design.' },
  'stub-axle': { name: `${capital(trade.stubAxle)}, steering arm, hub, wheel`, again: 'No crack, straight, thread clean.', note: 'Somebody is hurt when it breaks: no welding and no bending.' },
  'ball-joint': { name: `Ball joint, ${trade.trackRodEnd}`, again: 'No play, and its boot is whole.', note: 'Somebody is hurt when it lets go.' },
  spring: { name: 'Coil or leaf spring', again: 'Within the limit, both sides alike, no pits, no cracks.', note: 'It holds energy while fitted. Re-setting needs heat treatment: not at home.' },
  damper: { name: trade.damper === 'damper' ? 'Damper (shock absorber)' : 'Shock absorber', again: 'Smooth, dry, no dead spot, and it matches the one on the other side.', note: 'Rebound is usually stiffer than bump; some work one way only. An exchange unit carries a surcharge until yours is accepted.'.replace('surcharge', trade.surcharge) },
  'brake-disc': { name: capital(trade.brakeDisc), again: 'No crack, and above the machining limit after any skim.', note: 'The figure marked on it is normally the discard limit; the machining limit lies above it. Both sides alike.' },
  'brake-drum': { name: 'Brake drum', again: 'No crack, and below the machining limit after any skim.', note: 'The discard limit is not the machining limit. Old drums are often unmarked: look in the manual.' },
  'brake-lining': { name: 'Brake shoe or pad', again: 'Seldom worth it: what just passes on the road is not what you refit.', note: 'Both sides of an axle together. Old linings may hold asbestos: no air line, no dry brush.' },
  'hydraulic-cylinder': { name: 'Hydraulic cylinder, caliper', again: 'Only with new seals: bore unmarked after a light polish.', note: 'Air drives a piston out with force. The fluid must suit the rubber of the seals.' },
  'hose-pipe': { name: 'Brake or fuel hose, pipe', again: 'A hose never after years; a pipe only clean and unrusted.', note: 'Note length, ends and threads before it goes.' },
  gear: { name: 'Gear, crown wheel and pinion', again: 'Teeth unmarked, and the pair complete.', note: 'A crown wheel and its pinion are a matched pair: read the numbers on both.' },
  shaft: { name: `${capital(trade.halfShaft)}, ${trade.propellerShaft}`, again: 'Straight, no twist in the splines, no crack.', note: 'A grooved seal track can take a sleeve.' },
  casting: { name: 'Casting, housing, bracket', again: 'Sound, or with a thread that can be repaired.', note: 'Often not to be had any more: pack it well.' },
  'engine-internal': { name: 'Inside the engine', again: 'Within its limits, no score, no crack.', note: 'Machining and the matching oversize parts are decided together.' },
  unit: { name: `${capital(trade.carburettor)}, pump, ${trade.dynamo}, instrument`, again: 'Tested good.', note: 'Note what is missing before it is sent out.' },
  wiring: { name: `Wiring ${trade.loom}, cable`, again: 'Cover supple, copper bright, nothing frayed.', note: 'Photograph every connection before it comes off.' },
  panel: { name: 'Sheet-metal panel, floor, sill', again: 'Sound, with metal enough left.', note: 'Old paint and body solder hold lead: mind the dust.' },
  'bright-trim': { name: 'Bright trim, badge, lamp, handle', again: 'Plating sound.', note: 'Very often not to be had any more.' },
  glass: { name: `Glass, ${trade.windscreen}`, again: 'No crack, no chip in the line of sight.', note: 'Keep a broken one as a pattern.' },
  'soft-trim': { name: 'Seat, carpet, soft trim', again: 'Whole, with its clips.', note: 'Keep the old one as a pattern, however rotten.' },
  fastener: { name: 'Ordinary bolt, nut, screw', again: 'Head crisp, thread clean, marking readable.', note: 'Buy the same size and grade. Unusual heads matter at show standard.' },
  'safety-fastener': { name: 'High-strength or safety bolt', again: 'Never when there is any doubt.',
    note: 'Same grade, same plain shank. Note which hole it came from. Harder is not better, nor is stainless, unless the manual says so.' },
}) satisfies Record<FamilyCode, FamilyWords>;
