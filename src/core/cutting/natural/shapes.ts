import { RECORD } from '../../bytes';
import { itemAt } from '../../item-at';
import { area } from '../../geometry/area';
import { box } from '../../geometry/box';
import { moved } from '../../geometry/moved';
import { type Tracing, tracing } from '../../geometry/convolution';
import { type NoFitRegion, noFitRegionOf, turnedRound } from '../../geometry/no-fit-region';
import { rectangle, rectangleAbout } from '../../geometry/rectangle';
import { ARC_TOLERANCE, difference, grownMitred, intersection } from '../../geometry/regions';
import type { Box, Ring } from '../../geometry/ring';
import { simplify } from '../../geometry/simplify';
import type { Piece } from '../sheet/piece';
import type { SheetFormat } from '../sheet/sheet';
import { BEST, groundFor, type NaturalSheet, type Quality } from '../sheet/natural-sheet';

/** Outlines are thinned by so much before they are laid, and let out by as much, mm: they keep clear all the same. */
const THINNED = 0.25;

/** Bands by which regions are looked up: there are many of them, and each is asked little. */
const BANDS = 32;

/** Bytes of a corner that is traced. */
const BYTES_OF_CORNER = 32;

/** A piece in one of its turns. */
export interface Shape {
  readonly kind: number;
  readonly turn: number;
  readonly quality: Quality;
  /** Of the outline itself. */
  readonly box: Box;
  /** A ring about the outline with few corners, and the same let out by half the knife room: as it lies, and turned round. */
  readonly bareRound: Tracing;
  readonly roomy: Tracing;
  readonly roomyRound: Tracing;
}

/** Where a shape's origin may not lie, seen from another's; turned round where the sign is −1. */
export interface Hindrance {
  readonly region: NoFitRegion;
  readonly sign: 1 | -1;
}

/** Pieces in their turns, and where one of them keeps another away; each worked out when first asked for. */
export class Shapes {
  /** Bytes that what has been worked out takes, near enough. */
  bytes = 0;
  private readonly made = new Map<string, Shape>();
  private readonly regions = new Map<string, NoFitRegion>();
  private readonly grounds = new Map<Quality, readonly Tracing[]>();
  private readonly hindrances = new Map<string, readonly NoFitRegion[]>();

  constructor(
    private readonly pieces: readonly Piece[],
    private readonly format: SheetFormat,
    private readonly sheet: NaturalSheet,
    /** Kept clear all round beyond what is asked for, mm. */
    private readonly spare = 0,
  ) {}

  at(kind: number, turn: number): Shape {
    const key = `${kind} ${turn}`;
    let shape = this.made.get(key);
    if (!shape) {
      const { ring, quality = BEST } = itemAt(this.pieces, kind);
      const turned = moved(ring, turn);
      const thinned = [simplify(turned, THINNED)];
      const roomy = outer(grownMitred(thinned, THINNED + this.format.knifeRoom / 2 + this.spare));
      shape = {
        kind,
        turn,
        quality,
        box: box(turned),
        bareRound: turnedRound(outer(grownMitred(thinned, THINNED + this.spare))),
        roomy: tracing(roomy),
        roomyRound: turnedRound(roomy),
      };
      this.made.set(key, shape);
      this.bytes += BYTES_OF_CORNER * (shape.bareRound.xs.length + 2 * shape.roomy.xs.length);
    }
    return shape;
  }

  /**
   * Where the second shape's origin may not lie, seen from the first's. Seen from the second, and with both turned end for
   * end, the region is the same turned round: it is worked out once.
   */
  between(first: Shape, second: Shape): Hindrance {
    let [one, other, sign]: [Shape, Shape, 1 | -1] = [first, second, 1];
    if (one.kind > other.kind || (one.kind === other.kind && one.turn > other.turn)) {
      [one, other, sign] = [other, one, -1];
    }
    if (one.turn >= 180) {
      [one, other] = [this.at(one.kind, one.turn - 180), this.at(other.kind, (other.turn + 180) % 360)];
      sign = sign === 1 ? -1 : 1;
    }
    const key = `${one.kind} ${one.turn} ${other.kind} ${other.turn}`;
    let region = this.regions.get(key);
    if (!region) {
      this.regions.set(key, (region = noFitRegionOf(one.roomy, other.roomyRound, BANDS)));
      this.bytes += RECORD + region.bytes;
    }
    return { region, sign };
  }

  /** Where a shape's origin may not lie on the empty sheet, beside what the box about the sheet forbids. */
  keptOff(shape: Shape): readonly NoFitRegion[] {
    const key = `${shape.kind} ${shape.turn}`;
    let regions = this.hindrances.get(key);
    if (!regions) {
      regions = this.closedTo(shape.quality).map((ring) => noFitRegionOf(ring, shape.bareRound));
      this.hindrances.set(key, regions);
      for (const { bytes } of regions) this.bytes += RECORD + bytes;
    }
    return regions;
  }

  /** Everything that pieces of a quality must keep off, within the box about the sheet. */
  private closedTo(quality: Quality): readonly Tracing[] {
    let rings = this.grounds.get(quality);
    if (!rings) {
      const { outlines, closed } = groundFor(this.sheet, quality);
      const trim = this.format.edgeTrim;
      const outside = beside(outlines, this.format).flatMap((ring) => grownMitred([ring], trim + ARC_TOLERANCE));
      const holes = this.sheet.holes.flatMap((ring) => grownMitred([ring], trim + ARC_TOLERANCE));
      rings = [...outside, ...holes, ...closed].filter((ring) => area(ring) > 0).map(tracing);
      this.grounds.set(quality, rings);
    }
    return rings;
  }
}

function outer(region: readonly Ring[]): Ring {
  return region.reduce((largest, ring) => (area(ring) > area(largest) ? ring : largest));
}

/**
 * What lies beside outlines in the box from the origin, cut apart by lines across the middle of each so that no part
 * encloses another.
 */
function beside(outlines: readonly Ring[], { length, width }: SheetFormat): readonly Ring[] {
  const middles = outlines.map((ring) => {
    const { left, right } = box(ring);
    return (left + right) / 2;
  });
  const cuts = [0, ...middles.filter((x) => x > 0 && x < length).sort((a, b) => a - b), length];
  const rest = difference([rectangle(length, width)], outlines);
  return cuts.slice(1).flatMap((right, i) => {
    const strip = rectangleAbout({ left: itemAt(cuts, i), bottom: 0, right, top: width });
    return intersection(rest, [strip]);
  });
}
