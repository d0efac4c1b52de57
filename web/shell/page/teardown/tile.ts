import type { Keeping } from '../kit/stamp';

/** A picture taken in this session, as it stands in the strip. */
export interface Tile {
  id: string;
  part: string;
  src: string;
  state: Keeping;
  /** Saves it again after it failed. */
  again: () => void;
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
    if (tile) Object.assign(tile, change);
  }
}
