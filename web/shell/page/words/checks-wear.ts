import type { ChecksOf } from './checks';

type Wear = 'cracks' | 'crack-test' | 'bend' | 'thread' | 'tapped-thread' | 'pits' | 'steps' | 'rock' | 'scoring' | 'ridge' | 'burnt' | 'lugs' | 'faces'
  | 'teeth' | 'contact' | 'numbers-match' | 'splines' | 'seal-track' | 'joint-play' | 'head' | 'stretch' | 'marking' | 'nick' | 'hole';

/** Cracks, bends and wear; gears and shafts; fasteners. */
export const wearChecks: ChecksOf<Wear> = {
  cracks: { name: 'Cracks', ask: 'Is it cracked?', how: 'Clean it bright. Look hardest at corners, at holes and at any weld.', small: '', outcomes: { none: 'none seen', 'not-tested': 'not looked yet', cracked: 'cracked' } },
  'crack-test': { name: 'Crack test', ask: 'What did the crack test show?', how: 'Dye penetrant or magnetic particles, on clean bare metal. By eye alone is not a test.', small: '', outcomes: { clean: 'clean', 'not-tested': 'not tested yet', shows: 'shows a crack' } },
  bend: { name: 'Straight', ask: 'Is it straight?', how: 'Between centres, on vee blocks, or against a straight edge.', small: '', outcomes: { straight: 'straight', unsure: 'not sure', bent: 'bent' } },
  thread: { name: 'Thread', ask: 'How is its thread?', how: 'Run a new nut down by hand.', small: '', outcomes: { clean: 'clean', worn: 'worn or bruised', stripped: 'stripped' } },
  'tapped-thread': { name: 'Tapped holes', ask: 'How are the threads in its holes?', how: 'A stripped one can take an insert.', small: '', outcomes: { clean: 'clean', stripped: 'stripped' } },
  pits: { name: 'Rust pits', ask: 'Are there rust pits?', how: 'A deep pit catches a fingernail.', small: '', outcomes: { none: 'none', light: 'light', deep: 'deep' } },
  steps: { name: 'Wear step', ask: 'Is a step worn into it?', how: 'Draw a fingernail from the unworn to the worn place.', small: '', outcomes: { none: 'none', felt: 'felt' } },
  rock: { name: 'Rock', ask: 'Does it rock in its bush or socket?', how: 'Fitted: with the brake on, so that the wheel bearing does not count. Off: put together by hand.', small: '', outcomes: { none: 'none', slight: 'slight', rocks: 'rocks' } },
  scoring: { name: 'Scores', ask: 'Is its working surface scored?', how: 'Draw a fingernail across it.', small: '', outcomes: { none: 'none', light: 'light', deep: 'felt by nail' } },
  ridge: { name: 'Ridge', ask: 'Is there a ridge where the wear ends?', how: '', small: '', outcomes: { none: 'none', felt: 'felt' } },
  burnt: { name: 'Burnt', ask: 'Is its rubber burnt, charred or sticky?', how: 'If it is: do not touch it with bare hands. Read the caution.', small: '', outcomes: { no: 'no', burnt: 'burnt' } },
  lugs: { name: 'Lugs', ask: 'Are all its lugs and ears whole?', how: '', small: '', outcomes: { whole: 'whole', broken: 'broken' } },
  faces: { name: 'Faces', ask: 'Are its faces flat?', how: 'Straight edge and feeler gauge, corner to corner.', small: '', outcomes: { flat: 'flat', warped: 'warped' } },
  teeth: { name: 'Teeth', ask: 'How are the teeth?', how: 'All of them, both sides.', small: '', outcomes: { unmarked: 'unmarked', pitted: 'pitted', chipped: 'chipped' } },
  contact: { name: 'Contact', ask: 'Where do the teeth touch?', how: 'Marking paste on a few teeth, turned both ways.', small: '', outcomes: { centred: 'mid-tooth', 'not-looked': 'not looked yet', off: 'at an edge' } },
  'numbers-match': { name: 'Matching numbers', ask: 'Do the numbers on both of the pair match?', how: 'Etched or stamped on the face of the gear and the end of the pinion.', small: '', outcomes: { match: 'match', unread: 'cannot be read', differ: 'differ' } },
  splines: { name: 'Splines', ask: 'How are the splines?', how: 'Sight along them: a twist shows as a slant.', small: '', outcomes: { straight: 'straight', stepped: 'stepped', twisted: 'twisted' } },
  'seal-track': { name: 'Seal track', ask: 'Has the seal worn a groove?', how: 'A groove that catches a nail will leak; a sleeve can cover it.', small: '', outcomes: { smooth: 'smooth', groove: 'groove' } },
  'joint-play': { name: 'Joint play', ask: 'Is there play in its joints?', how: '', small: '', outcomes: { none: 'none', play: 'play' } },
  head: { name: 'Head', ask: 'How is its head?', how: '', small: '', outcomes: { crisp: 'crisp', rounded: 'rounded' } },
  stretch: { name: 'Stretch', ask: 'Has it stretched?', how: 'A waist in the shank, or a nut that binds half way.', small: '', outcomes: { none: 'no', unsure: 'not sure', stretched: 'stretched' } },
  marking: { name: 'Marking', ask: 'Can the strength marking be read?', how: '', small: '', outcomes: { read: 'read', unread: 'not readable' } },
  nick: { name: 'Nicks', ask: 'Is there any nick in it, however small?', how: '', small: '', outcomes: { none: 'none', nicked: 'nicked' } },
  hole: { name: 'Its hole', ask: 'Is it noted which hole it came from?', how: '', small: '', outcomes: { noted: 'noted', 'not-noted': 'not noted' } },
};
