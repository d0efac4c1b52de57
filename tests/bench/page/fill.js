// Jobs of a size, written by the shipped record itself, in steps.

import { assemblies, garage, hexId, places } from './garage.js';
import { another, picture } from './pictures.js';
import { carryOut, hashOf, theRecord } from './record.js';

/** Assemblies and places; before any part. */
export async function fillGround() {
  const create = (kind) => ({ id, name }) => ({ do: 'create', id, kind, changes: [{ name }] });
  await carryOut({ do: 'all', commands: [...assemblies.map(create('assembly')), ...places.map(create('place'))] });
}

/** Parts without photos, fifty at a time. */
export async function fillParts(all, from, to) {
  const parts = garage(all).slice(from, to);
  for (let at = 0; at < parts.length; at += 50) await carryOut({ do: 'all', commands: parts.slice(at, at + 50).map(creating) });
}

let stand;

/** Parts one by one, each with its photos beside it, and what is derived from them. */
export async function fillWithPhotos(all, from, to, each, bytes) {
  stand ??= { photo: await weighing(bytes), view: await weighing(bytes / 2), thumb: await picture(320, 240, 12, 0.7) };
  for (const part of garage(all).slice(from, to)) {
    for (let order = 1; order <= each[part.tag % each.length]; order++) {
      await withPhoto(part, order);
    }
  }
  return { photo: stand.photo.byteLength, view: stand.view.byteLength, thumb: stand.thumb.byteLength };
}

async function withPhoto(part, order) {
  const bytes = another(stand.photo, part.tag * 100 + order);
  const hash = hashOf(new Uint8Array(bytes));
  const changes = [{ of: part.id }, { moment: 'off' }, { shot: 'plain' }, { taken: 1750000000000 + part.tag * 1000 + order }, { order }, { blob: hash }, { length: bytes.byteLength }, { media_type: 'image/jpeg' }];
  const photo = { do: 'create', id: hexId(4, part.tag * 100 + order), kind: 'photo', changes };
  await carryOut({ do: 'all', commands: order === 1 ? [creating(part), photo] : [photo] }, [{ hash, media_type: 'image/jpeg', bytes }]);
  await theRecord().keepDerived(hash, new Uint8Array(stand.view), new Uint8Array(stand.thumb));
}

function creating({ id, name, number, note, assembly, place }) {
  const changes = [{ name }, { makers_number: number }, { assembly: assemblies[assembly].id }, { place: places[place].id }, ...(note ? [{ remark: note }] : [])];
  return { do: 'create', id, kind: 'part', changes };
}

/** Seals as the app does when nobody waits. */
export async function settle() {
  while (await theRecord().seal(1500));
  await theRecord().noteLine();
}

async function weighing(bytes) {
  let best;
  for (let noise = 0; noise <= 120; noise += 6) {
    best = await picture(...(bytes > 100_000 ? [1600, 1200] : [800, 600]), noise, bytes > 100_000 ? 0.85 : 0.6);
    if (best.byteLength >= bytes) return best.slice(0);
  }
  return best;
}
