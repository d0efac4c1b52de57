import type { Keeping } from '../kit/stamp';

/** A picture taken in this session, as it stands in the strip. */
export interface Tile {
  id: string;
  part: string;
  src: string;
  state: Keeping;
  /** When it became safe, by the clock of the page. */
  keptAt?: number;
  /** Saves it again after it failed. */
  again: () => void;
}

/** As long as the stamp comes down. */
const FRESH_MS = 500;

/** Whether it became safe just now: its stamp is seen to come down, also where the record takes over from the tile. */
export function isFresh(tile: Tile | undefined): boolean {
  return tile?.keptAt !== undefined && performance.now() - tile.keptAt < FRESH_MS;
}

/** The small pictures of this session; addresses of those long gone are given back. */
export class Tiles {
  private tiles: Tile[] = [];

  of(part: string): readonly Tile[] {
    return this.tiles.filter((tile) => tile.part === part);
  }

  find(id: string): Tile | undefined {
    return this.tiles.find((tile) => tile.id === id);
  }

  get failed(): readonly Tile[] {
    return this.tiles.filter(({ state }) => state === 'failed');
  }

  add(tile: Tile): void {
    this.tiles.unshift(tile);
    const old = this.tiles.slice(60).filter(({ state }) => state === 'kept');
    for (const { src } of old) URL.revokeObjectURL(src);
    this.tiles = this.tiles.filter((one) => !old.includes(one));
  }

  drop(id: string): void {
    this.tiles = this.tiles.filter((tile) => tile.id !== id);
  }

  set(id: string, change: Partial<Pick<Tile, 'src' | 'state'>>): void {
    const tile = this.find(id);
    if (tile && tile.state !== 'kept' && change.state === 'kept') tile.keptAt = performance.now();
    if (tile) Object.assign(tile, change);
  }
}
