import type { ChecksOf } from './checks';

// Names of the damage groups of ISO 15243:2017, clauses 5.1 to 5.6 (from memory).
type Bearing = 'spalls' | 'wear-scoring' | 'smearing' | 'track-rust' | 'fluting' | 'dents' | 'track-cracks' | 'heat-colour' | 'cage' | 'runs' | 'pulled-through' | 'kept-together';

/** Ball and roller bearings. */
export const bearingChecks: ChecksOf<Bearing> = {
  spalls: { name: 'Flakes', ask: 'Have flakes come out of the track or the rollers?', how: 'Clean and dry it. Look under a magnifier, all the way round.', small: 'Rolling contact fatigue', outcomes: { none: 'none', flaked: 'flaked' } },
  'track-rust': { name: 'Rust', ask: 'Is there rust on the track or the rollers?', how: 'A stain wipes or polishes off. Etching catches a fingernail.', small: 'Corrosion', outcomes: { none: 'none', stain: 'stain only', etched: 'etched' } },
  dents: { name: 'Dents', ask: 'Are there dents, as far apart as the balls or rollers?', how: 'They come from a blow, or from pressing through the rollers.', small: 'Plastic deformation', outcomes: { none: 'none', faint: 'faint', 'at-pitch': 'one per roller' } },
  'wear-scoring': { name: 'Scores', ask: 'Is the track scored or worn dull?', how: 'Draw a fingernail across it.', small: 'Abrasive wear', outcomes: { none: 'none', light: 'light', deep: 'felt by nail' } },
  smearing: { name: 'Smearing', ask: 'Is metal smeared along the track or the roller ends?', how: 'It looks dragged or frosted.', small: 'Adhesive wear', outcomes: { none: 'none', smeared: 'smeared' } },
  'heat-colour': { name: 'Heat', ask: 'Has heat coloured it?', how: 'Old grease varnish wipes off with solvent; heat does not.', small: '', outcomes: { none: 'no', straw: 'straw', blue: 'blue' } },
  fluting: { name: 'Washboard', ask: 'Are there even ridges across the track, like a washboard?', how: 'They come from current through the bearing.', small: 'Electrical erosion', outcomes: { none: 'no', washboard: 'washboard' } },
  'track-cracks': { name: 'Cracks', ask: 'Is a ring or a roller cracked?', how: '', small: 'Cracking and fracture', outcomes: { none: 'none seen', cracked: 'cracked' } },
  cage: { name: 'Cage', ask: 'How is the cage?', how: 'It should hold every roller and be neither bent nor cracked.', small: '', outcomes: { sound: 'sound', loose: 'loose', cracked: 'cracked' } },
  runs: { name: 'Runs', ask: 'How does it run, oiled and turned slowly by hand?', how: 'Press it together as you turn. Never spin it with air.', small: '', outcomes: { quiet: 'quiet', 'not-clean': 'too dirty to tell', rough: 'rough' } },
  'pulled-through': { name: 'Pulled off', ask: 'Was it pulled off through its rollers?', how: 'That is: by the ring that was not the tight one.', small: '', outcomes: { no: 'no', unknown: 'not known', yes: 'yes' } },
  'kept-together': { name: 'Kept together', ask: 'Are its cup and cone still together, and on their side?', how: '', small: '', outcomes: { yes: 'yes', mixed: 'mixed up' } },
};
