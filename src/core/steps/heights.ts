import { itemRound } from '../item-at';
import type { Bottom } from '../bottom/bottom';
import { builtThickness, type Layer } from '../bottom/layer';
import { breastLine } from '../bottom/raise';
import { atLength } from '../last/profile';
import { does } from './operation';
import type { HeightAfter, HeightPart, Operation } from './step';

const RADIAN = Math.PI / 180;

/** Keeps, step by step, what is joined to what and how thick each piece is by then. */
export class Build {
  private readonly thickness = new Map<Layer, number>();
  private onLast: readonly Layer[] = [];
  private offLast: readonly Layer[] = [];
  private welted = { back: 0, tread: 0 };

  /**
   * @param openSeat whether a welt ends at the seat
   * @param heel whether a heel raises it: a wedge has no breast
   */
  constructor(
    private readonly bottom: Bottom,
    private readonly openSeat: boolean,
    private readonly heel: boolean,
  ) {}

  thicknessOf(piece: Layer): number {
    return this.thickness.get(piece) ?? piece.thickness;
  }

  /** Does a step; the heights after it, where it changes any. */
  after(operation: Operation): HeightAfter | undefined {
    const { joint, pieces } = operation;
    if (does(operation, 'level', 'thin', 'saw')) {
      const low = itemRound(pieces, -1);
      this.thickness.set(low, low.thickness - (low.rasped ?? 0));
      return does(operation, 'thin') ? undefined : this.heights(this.onLast.includes(low) ? this.onLast : pieces);
    }
    if (does(operation, 'sew welt', 'pack seat')) {
      const thick = this.bottom.layers.find(({ part }) => part === 'welt')?.thickness ?? 0;
      this.welted = { back: this.openSeat && !does(operation, 'pack seat') ? 0 : thick, tread: thick };
      return this.heights([]);
    }
    if (does(operation, 'check height')) return this.heights(this.onLast);
    if (!joint || !does(operation, 'join') || joint.adds.every(({ part }) => part === 'cover')) return undefined;
    if (!joint.apart) {
      this.onLast = [...this.onLast, ...joint.adds, ...joint.brings];
      return this.heights(this.onLast);
    }
    const met = joint.above.flatMap(({ piece }) => piece ?? []);
    this.offLast = [...(met.some((piece) => this.offLast.includes(piece)) ? this.offLast : []), ...met, ...joint.adds];
    return this.heights(this.offLast);
  }

  private heights(body: readonly Layer[]): HeightAfter {
    // From the ground up, which is how a stack is read.
    const stack = this.bottom.layers.filter((piece) => body.includes(piece) && piece.part !== 'insole').reverse();
    const place = (height: number, slope: number, at: 'underSeat' | 'underTread'): readonly HeightPart[] =>
      stack.flatMap((piece) => (piece[at] ? [{ piece, adds: this.adds(piece, height, slope) }] : []));
    const { face, last, liftHeight } = this.bottom;
    const breast = atLength(face, breastLine(last));
    const parts = {
      back: place(liftHeight, face.slope[0]!, 'underSeat'),
      breast: this.heel && stack.some(({ part }) => part === 'lift') ? place(breast.z, breast.slope, 'underSeat') : [],
      tread: place(this.bottom.through, 0, 'underTread'),
    };
    const off = stack.length > 0 && !stack.every((piece) => this.onLast.includes(piece));
    const welt = off ? { back: 0, tread: 0 } : this.welted;
    const sum = (list: readonly HeightPart[], more: number) =>
      list.length + more > 0 ? list.reduce((all, { adds }) => all + adds, more) : undefined;
    return {
      back: sum(parts.back, welt.back),
      breast: parts.breast.length > 0 ? sum(parts.breast, welt.back) : undefined,
      tread: sum(parts.tread, welt.tread),
      ...(welt.tread > 0 && { welt: { tread: welt.tread, ...(welt.back > 0 && { back: welt.back }) } }),
      parts,
    };
  }

  /** What a piece adds at a place where the lifts are to stand so high and what lies over them slopes so. */
  private adds(piece: Layer, height: number, slope: number): number {
    const thick = this.thicknessOf(piece);
    const { lift, part, follows } = piece;
    if (part !== 'lift') return thick;
    // A layer that is bent on is measured upright; what is not rasped off yet stands out below the ground face.
    if (follows) {
      const upright = Math.cos(slope * RADIAN);
      const within = Math.max(0, height - this.over(piece, slope));
      return within > 0 ? Math.min(thick / upright, within + (thick - builtThickness(piece)) / upright) : 0;
    }
    if (!lift) return thick;
    const uncut = thick - (lift.upper - lift.lower);
    const within = Math.max(0, Math.min(height, lift.upper) - lift.lower);
    return within > 0 ? within + uncut : 0;
  }

  private over(piece: Layer, slope: number): number {
    return this.bottom.layers
      .filter(({ part, item }) => part === 'lift' && item < piece.item)
      .reduce((sum, one) => sum + one.thickness / Math.cos(slope * RADIAN), 0);
  }
}
