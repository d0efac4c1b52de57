import type { ChecksOf } from './checks';

type Body = 'rust-grade' | 'coating' | 'works' | 'complete' | 'cover' | 'copper' | 'fraying' | 'connections' | 'rust-through' | 'panel-dents' | 'filler' | 'plating' | 'glass' | 'fabric' | 'clips';

/** Rust and old coatings; units and wiring; body and trim. */
export const bodyChecks: ChecksOf<Body> = {
  // The grades of ISO 8501-1, described in our own words.
  'rust-grade': { name: 'Rust grade', ask: 'How far has the bare steel rusted?', how: 'Wire-brush a small place first.', small: 'Rust grades A to D', outcomes: { a: 'A: tight scale', b: 'B: rust begins', c: 'C: rust, few pits', d: 'D: pits all over' },
    looksLike: { a: 'dark mill scale holds, hardly any rust', b: 'scale starts to flake, rust between', c: 'scale gone or scrapes off, few pits to be seen', d: 'scale gone, pits plain to the eye' } },
  // Rusted share of the surface by grade: ISO 4628-3, as a published table that sets it beside other scales restates it.
  coating: { name: 'Old paint', ask: 'How much rust has come through the old paint?', how: 'The share of the whole surface that shows rust.', small: 'Degree of rusting Ri 0 to 5', outcomes: { ri0: 'Ri 0: none', ri1: 'Ri 1: specks', ri2: 'Ri 2: spots', ri3: 'Ri 3: spreading', ri4: 'Ri 4: much', ri5: 'Ri 5: nearly half' },
    looksLike: { ri0: '0 %', ri1: '0.05 %', ri2: '0.5 %', ri3: '1 %', ri4: '8 %', ri5: '40 to 50 %' } },
  works: { name: 'Works', ask: 'Does it work?', how: 'Tested on the bench, not by memory.', small: '', outcomes: { 'tested-good': 'tested good', 'not-tested': 'not tested yet', fails: 'fails' } },
  complete: { name: 'Complete', ask: 'Is it complete?', how: '', small: '', outcomes: { complete: 'complete', 'pieces-missing': 'pieces missing' } },
  cover: { name: 'Cover', ask: 'How is its cover?', how: 'Bend it gently.', small: '', outcomes: { supple: 'supple', stiff: 'stiff', brittle: 'brittle, cracked' } },
  copper: { name: 'Copper', ask: 'How is the copper at the ends?', how: '', small: '', outcomes: { bright: 'bright', green: 'green or black' } },
  fraying: { name: 'Fraying', ask: 'Is it frayed?', how: '', small: '', outcomes: { none: 'no', frayed: 'frayed' } },
  connections: { name: 'Connections', ask: 'Is there a photo of every connection?', how: '', small: '', outcomes: { photographed: 'yes', 'not-yet': 'not yet' } },
  'rust-through': { name: 'Rusted through', ask: 'Has it rusted through?', how: 'Press with a blunt point, from both sides.', small: '', outcomes: { none: 'no', 'pin-holes': 'pin holes', holes: 'holes' } },
  'panel-dents': { name: 'Dents', ask: 'Is it dented?', how: '', small: '', outcomes: { none: 'no', dents: 'dented' } },
  filler: { name: 'Filler', ask: 'Is there old filler in it?', how: 'A magnet does not hold on filler.', small: '', outcomes: { none: 'none', found: 'found' } },
  plating: { name: 'Plating', ask: 'How is the plating?', how: '', small: '', outcomes: { sound: 'sound', pitted: 'pitted', 'worn-through': 'worn through' } },
  glass: { name: 'Glass', ask: 'How is the glass?', how: '', small: '', outcomes: { sound: 'sound', chipped: 'chipped', cracked: 'cracked' } },
  fabric: { name: 'Covering', ask: 'How is the covering?', how: '', small: '', outcomes: { sound: 'sound', torn: 'torn', rotten: 'rotten' } },
  clips: { name: 'Clips', ask: 'Are its clips there?', how: '', small: '', outcomes: { complete: 'all there', missing: 'some missing' } },
};
