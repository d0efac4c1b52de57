// Finding: the core's own question beside general search libraries, in the same
// page, on the same thread, over the same texts.

import Fuse from './peers/fuse.js';
import MiniSearch from './peers/minisearch.js';
import { garage, misspelt, places } from './garage.js';
import { theRecord } from './record.js';

const FIELDS = ['tag', 'name', 'number', 'note', 'place'];
const SHOWN = 48;

let parts;
let peers;

function documents() {
  return parts.map((part) => ({ id: part.id, tag: String(part.tag).padStart(4, '0'), name: part.name, number: part.number, note: part.note, place: places[part.place].name }));
}

/** Builds the peers' indexes over so many parts; the record holds the same. */
export function buildPeers(count) {
  parts = garage(count);
  const list = documents();
  const from = performance.now();
  const mini = new MiniSearch({ fields: FIELDS });
  mini.addAll(list);
  const built = performance.now() - from;
  const fuse = new Fuse(list, { keys: FIELDS, threshold: 0.35, ignoreLocation: true });
  const withMini = (options) => (typed) => mini.search(typed, options).slice(0, SHOWN).map(({ id }) => id);
  peers = {
    core: (typed) => asked(typed, 'none'),
    'no-rows': (typed) => asked(typed, 'none', 0),
    'as-listed': (typed) => asked(typed, 'assembly'),
    minisearch: withMini({ prefix: true, fuzzy: 0.2, combineWith: 'AND' }),
    'minisearch-or': withMini({ prefix: true, fuzzy: 0.2 }),
    'minisearch-2': withMini({ prefix: true, fuzzy: 2, combineWith: 'AND' }),
    fuse: (typed) => fuse.search(typed, { limit: SHOWN }).map(({ item }) => item.id),
  };
  return { built, parts: list.length };
}

function asked(find, group, count = SHOWN) {
  const view = theRecord().ask({ ask: 'parts', find, group, struck: false, from: 0, count });
  return view.rows.map(({ id }) => id);
}

/** Every keystroke of so many queries. */
export function keystrokes(peer, queries) {
  const spent = [];
  for (const { meant } of misspelt(parts, queries, 11, 0)) {
    const typed = meant.join(' ');
    for (let length = 1; length <= typed.length; length++) {
      const from = performance.now();
      peers[peer](typed.slice(0, length));
      spent.push(performance.now() - from);
    }
  }
  return spent;
}

/** How many of the queries `from` to `to` bring, among the first five, a part that holds every word meant. */
export function recall(peer, mistakes, from, to, seed = 7) {
  const text = new Map(documents().map((one) => [one.id, new Set(FIELDS.flatMap((field) => one[field].toLowerCase().split(/[^\p{L}\p{N}]+/u)))]));
  const missed = [];
  for (const { typed, meant } of misspelt(parts, to, seed, mistakes).slice(from)) {
    const first = peers[peer](typed).slice(0, 5);
    if (!first.some((id) => meant.every((word) => text.get(id)?.has(word)))) missed.push(`${typed} (${meant.join(' ')})`);
  }
  return { missed };
}

/** For the painted comparison. */
export function peer(name) {
  return peers[name];
}

export function typedQueries(count) {
  return misspelt(parts, count, 11, 0).map(({ meant }) => meant.join(' '));
}
