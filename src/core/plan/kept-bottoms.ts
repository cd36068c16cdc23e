import type { Bottom } from '../bottom/bottom';
import type { Mixes } from '../bottom/courses';
import { bytesOfRecords, bytesOfRing } from '../bytes';
import type { LastInSize } from '../last/last-in-size';
import type { Profile } from '../last/profile';
import { Memo } from '../memo';
import type { SizeSystem } from '../sizes/systems';
import { planMemory } from './plan-memory';

/** A last, and what was measured of it, in the sizes in which it was asked for. */
export class Lasts {
  private readonly sizes = new Map<string, LastInSize>();

  constructor(private readonly content: string) {}

  get(size: number, system: SizeSystem, make: () => LastInSize): LastInSize {
    const key = `${system} ${size}`;
    const known = this.sizes.get(key);
    if (known) return known;
    const made = make();
    this.sizes.set(key, made);
    lasts.grow(this.content, bytesOfRecords(1) + bytesOfProfile(made.profile) + bytesOfRing(made.outline));
    return made;
  }
}

/** All bottoms that are built alike on one last, in the sizes in which they were asked for. */
export class Construction {
  private chosen = new Map<string, Mixes>();
  private prices = '';
  private readonly bottoms = new Map<string, Bottom>();

  constructor(private readonly content: string) {}

  /** Prices decide between mixes that are equal otherwise; those of the prices that were asked for last are kept. */
  mixes(size: number, system: SizeSystem, prices: string, make: () => Mixes): Mixes {
    if (prices !== this.prices) [this.prices, this.chosen] = [prices, new Map()];
    const key = `${system} ${size}`;
    const known = this.chosen.get(key);
    if (known) return known;
    const made = make();
    this.chosen.set(key, made);
    return made;
  }

  /** A bottom depends on the mix alone, not on the prices that chose it. */
  bottom(size: number, system: SizeSystem, { lifts, platform }: Mixes, make: () => Bottom): Bottom {
    const key = JSON.stringify([system, size, lifts?.counts, platform?.counts]);
    const known = this.bottoms.get(key);
    if (known) return known;
    const made = make();
    this.bottoms.set(key, made);
    constructions.grow(this.content, bytesOfBottom(made) + key.length);
    return made;
  }
}

const lasts = new Memo<Lasts>(planMemory, 'last', () => bytesOfRecords(1));
const constructions = new Memo<Construction>(planMemory, 'construction', () => bytesOfRecords(2));

/** The sizes of a last of this content. */
export function lastsOf(content: string): Lasts {
  return lasts.get(content, () => new Lasts(content));
}

/** The bottoms of a construction of this content. */
export function constructionOf(content: string): Construction {
  return constructions.get(content, () => new Construction(content));
}

/** Of a bottom without its last, which others share. */
function bytesOfBottom({ layers, face, last }: Bottom): number {
  // Each for both feet.
  const rings = layers.reduce((sum, { ring }) => sum + (ring === last.outline ? 1 : 2) * bytesOfRing(ring), 0);
  const turns = layers.reduce((sum, { cover }) => sum + (cover ? bytesOfRing(cover.unturned) : 0), 0);
  // A face that is as high as the last's bottom is the last's own profile.
  const own = face === last.profile ? 0 : bytesOfProfile(face);
  return bytesOfRecords(4 + 3 * layers.length) + rings + own + turns;
}

function bytesOfProfile({ s, x, z, slope }: Profile): number {
  return bytesOfRecords(5) + [s, x, z, slope].reduce((sum, { byteLength }) => sum + byteLength, 0);
}
