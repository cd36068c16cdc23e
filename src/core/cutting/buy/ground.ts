import { area } from '../../geometry/area';
import { letOutArea } from '../../geometry/let-out-area';
import { Problem } from '../../problem';
import type { Terms } from '../../stock/purchase';
import { quickLayout } from '../quick-layout';
import { RowPacker } from '../rows/pack-rows';
import { fittingTurn } from '../sheet/fitting-turn';
import type { Placements } from '../sheet/layout';
import type { Piece } from '../sheet/piece';
import { formatOn, roomOn, type SheetFormat } from '../sheet/sheet';
import type { BuyFormat } from './job';

/** One kind of sheet that pieces may be cut from: a format, or an offcut that is on the shelf once. */
export class Ground {
  /** Whether each kind of piece fits on it. */
  readonly fits: readonly boolean[];
  private packer: RowPacker | undefined;

  /**
   * @param of index of the format
   * @param offcut code, where it is one
   */
  constructor(
    readonly kinds: readonly Piece[],
    readonly format: SheetFormat,
    readonly terms: readonly Terms[],
    readonly of: number,
    readonly offcut: string | undefined,
  ) {
    this.fits = kinds.map(({ ring, way }) => this.inRows && fittingTurn(ring, format, way) !== undefined);
  }

  /** Whether rows are laid on it: neither within an outline nor in matching places. */
  get inRows(): boolean {
    return !this.format.natural && this.format.pairs === undefined;
  }

  /** Sheets that are on the shelf. */
  get onHand(): number {
    return this.terms.reduce((sum, { onHand }) => sum + onHand, 0);
  }

  /** What each kind takes of its room, as a share. */
  get shares(): readonly number[] {
    const { length, width } = roomOn(this.format);
    const { natural, knifeRoom } = this.format;
    const whole = natural ? area(natural.outline) : Math.max(1, length) * Math.max(1, width);
    return this.kinds.map(({ ring }) => letOutArea(ring, natural ? 0 : knifeRoom / 2) / whole);
  }

  /** One sheet, as full of some of each kind as the quick rows make it. */
  sheet(counts: readonly number[]): Placements {
    const fitting = this.fits.map((fits) => fits);
    this.packer ??= new RowPacker(
      this.kinds.map((kind, i) => ({ ...kind, count: fitting[i] ? 1 : 0 })),
      this.format,
    );
    return this.packer.sheet(counts.map((count, i) => (fitting[i] ? count : 0)));
  }

  /** All sheets of it that some of each kind take; of those that fit. */
  sheets(counts: readonly number[]): readonly Placements[] {
    const pieces = this.kinds.map((kind, i) => ({ ...kind, count: this.inRows && !this.fits[i] ? 0 : counts[i]! }));
    if (pieces.every(({ count }) => count === 0)) return [];
    try {
      return quickLayout(pieces, this.format).sheets;
    } catch (error) {
      // A piece that does not fit within an outline is for the other formats.
      if (error instanceof Problem) return [];
      throw error;
    }
  }
}

/** The formats, then the offcuts of each. */
export function groundsOf(kinds: readonly Piece[], formats: readonly BuyFormat[]): readonly Ground[] {
  const whole = formats.map(({ format, terms }, i) => {
    const { offcuts: _none, ...own } = format;
    return new Ground(kinds, own, terms, i, undefined);
  });
  const once: readonly Terms[] = [{ price: undefined, pack: 1, minimum: 0, onHand: 1 }];
  const offcuts = formats.flatMap(({ format }, i) =>
    format.pairs === undefined
      ? (format.offcuts ?? []).map(({ code }) => new Ground(kinds, formatOn(format, { offcut: code }), once, i, code))
      : [],
  );
  return [...whole, ...offcuts];
}
