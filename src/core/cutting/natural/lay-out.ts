import { itemAt } from '../../item-at';
import type { Stepwise } from '../../stepwise';
import type { Placement } from '../sheet/layout';
import type { SheetFormat } from '../sheet/sheet';
import { Hindrances } from './hindrances';
import { LaidBefore } from './laid-before';
import { Least } from './least';
import type { Shape, Shapes } from './shapes';

/** A piece of a unit: its origin lies at (x, y + dy), or seen across the backbone. */
export interface Part {
  readonly shape: Shape;
  readonly dy: number;
  readonly across: boolean;
}

/** One way to lay a unit. */
export interface Posture {
  readonly parts: readonly Part[];
  /** Range of y that it may take; the sheet narrows it further. */
  readonly from: number;
  readonly to: number;
}

/** Pieces that are laid together: one, or the two of a pair from matching places. */
export interface Unit {
  readonly key: string;
  /** Stands for its pieces and how they may lie, among those of the same shapes. */
  readonly kind: string;
  readonly postures: readonly Posture[];
  readonly area: number;
}

/** In which order places are taken: along the sheet or across it first, from which end and which side. */
export interface Sweep {
  readonly step: 1 | -1;
  readonly first: 'along' | 'across';
  readonly side: 1 | -1;
}

export const SWEEPS: readonly Sweep[] = ([1, -1] as const).flatMap((step): Sweep[] => [
  { first: 'along', step, side: 1 },
  { first: 'across', step, side: 1 },
  { first: 'across', step, side: -1 },
]);

/** A unit laid: which of its postures, where. */
export interface LaidUnit {
  readonly shape: Shape;
  readonly x: number;
  readonly y: number;
}

/** Pieces laid on one sheet, how many of each unit they hold, and their area. */
export interface LaidOut {
  readonly placements: readonly Placement[];
  readonly used: readonly number[];
  readonly area: number;
}

/** Where it counts first how far along a place lies, how much a place further to the side counts. */
const TO_THE_SIDE = 0.05;

/** Halvings by which a piece closes up to those beside it. */
const CLOSE_UP = 10;

/**
 * Lays units on an empty sheet one after another, each at the first place that is free when the sheet is swept line by
 * line: bottom-left placement (Baker, Coffman and Rivest 1980) on the level lines of no-fit regions.
 * @param counts how many of each unit are wanted
 * @param before what has been laid of the same shapes on the same sheets
 * @param spacing of the lines, mm
 * @returns the placements and how many of each unit they hold
 */
export function* layOut(
  units: readonly Unit[],
  counts: readonly number[],
  shapes: Shapes,
  format: SheetFormat,
  backbone: number,
  sweep: Sweep,
  spacing: number,
  before = new LaidBefore<LaidUnit>(),
): Stepwise<LaidOut> {
  const laid: LaidUnit[] = [];
  let area = 0;
  const used: number[] = [];
  let sheet = before.sheet([format.pairs ?? '', sweep.first, sweep.step, sweep.side, spacing].join(' '));
  for (const [i, { kind, postures, area: size }] of units.entries()) {
    const wanted = itemAt(counts, i);
    const lines: Lines[] = [];
    let count = 0;
    for (const known = sheet.of(kind); count < wanted; count++) {
      if (count === known.units.length) {
        if (known.full) break;
        for (const posture of lines.length > 0 ? [] : postures) {
          lines.push(new Lines(posture, laid, shapes, format, backbone, sweep, spacing));
          yield;
        }
        let best: Place | undefined;
        for (const one of lines) best = one.first(best?.cost) ?? best;
        if (!best) {
          known.full = true;
          break;
        }
        const unit = best.lines.close(best);
        // Another that works step by step may have come to the same meanwhile.
        if (known.units.length === count) sheet.add(kind, unit);
        yield;
      }
      laid.push(...itemAt(known.units, count));
      area += size;
    }
    used.push(count);
    if (count > 0) sheet = sheet.with(kind, count);
  }
  const placements = laid.map(({ shape, x, y }) => ({ piece: shape.kind, x, y, turn: shape.turn }));
  return { placements, used, area };
}

interface Place {
  readonly lines: Lines;
  readonly x: number;
  readonly y: number;
  readonly cost: number;
}

/** A part of a unit, with what the empty sheet and the pieces laid keep it off. */
interface Hindered extends Part {
  readonly off: Hindrances;
}

/** The first free place of a posture on each line across the sheet; places are only ever taken away. */
class Lines {
  private readonly x: Float64Array;
  /** How early the sweep comes to the place that a line had last; infinite where it has none any more. */
  private readonly cost: Least;
  /** How many of the laid pieces a line's place has been held against. */
  private readonly seen: Int32Array;
  private readonly from: number;
  private readonly spacing: number;
  private readonly left: number;
  private readonly right: number;
  private readonly parts: readonly Hindered[];

  constructor(
    posture: Posture,
    private readonly laid: readonly LaidUnit[],
    private readonly shapes: Shapes,
    { length, width, edgeTrim }: SheetFormat,
    private readonly backbone: number,
    private readonly sweep: Sweep,
    spacing: number,
  ) {
    let [from, to] = [posture.from, posture.to];
    let [left, right] = [-Infinity, Infinity];
    for (const { shape, dy, across } of posture.parts) {
      const { box } = shape;
      left = Math.max(left, edgeTrim - box.left);
      right = Math.min(right, length - edgeTrim - box.right);
      const [low, high] = [edgeTrim - box.bottom - dy, width - edgeTrim - box.top - dy];
      from = Math.max(from, across ? 2 * backbone - high : low);
      to = Math.min(to, across ? 2 * backbone - low : high);
    }
    this.left = left;
    this.right = right;
    this.from = from;
    const count = right < left || to < from ? 0 : 1 + Math.ceil((to - from) / spacing);
    this.spacing = count > 1 ? (to - from) / (count - 1) : 0;
    this.x = new Float64Array(count).fill(sweep.step === 1 ? left : right);
    this.cost = new Least(this.x.map((_, line) => this.costOf(line)));
    this.seen = new Int32Array(count).fill(-1);
    this.parts = posture.parts.map((part) => ({
      ...part,
      off: new Hindrances(shapes.keptOff(part.shape), sweep.step),
    }));
  }

  /**
   * The place that the sweep comes to first; undefined where there is none that costs less than a limit. A line's place only
   * ever moves on, so that a line is looked at again only while its last place would still be the first.
   */
  first(limit = Infinity): Place | undefined {
    const { cost } = this;
    for (;;) {
      const line = cost.first;
      const least = cost.of(line);
      if (!(least < limit)) return undefined;
      const y = this.from + line * this.spacing;
      const x = this.advance(line, y);
      if (cost.of(line) === least) return { lines: this, x, y, cost: least };
    }
  }

  private costOf(line: number): number {
    const x = this.x[line]!;
    if (!Number.isFinite(x)) return Infinity;
    const { step, first, side } = this.sweep;
    const along = step * x;
    const across = side * (this.from + line * this.spacing);
    return first === 'along' ? along + TO_THE_SIDE * across : across + 1e-6 * along;
  }

  /** Moves from a place on a line towards the side and the end from which the sweep comes, as far as it is free. */
  close({ x, y }: Place): readonly LaidUnit[] {
    const { step, side } = this.sweep;
    let [bestX, bestY] = [x, y];
    let reach = this.spacing;
    for (let k = 0; k < CLOSE_UP; k++, reach /= 2) {
      const nextY = bestY - side * reach;
      if (nextY < this.from || nextY > this.from + (this.x.length - 1) * this.spacing) continue;
      const from = bestX - step * this.spacing;
      const start = step === 1 ? Math.max(this.left, from) : Math.min(this.right, from);
      const nextX = this.free(start, nextY);
      if (step * (nextX - bestX) > 1e-9) continue;
      [bestX, bestY] = [nextX, nextY];
    }
    return this.parts.map(({ shape, dy, across }) => ({
      shape,
      x: bestX,
      y: dy + (across ? 2 * this.backbone - bestY : bestY),
    }));
  }

  private advance(line: number, y: number): number {
    const x = itemAt(this.x, line);
    const seen = itemAt(this.seen, line);
    if (seen === this.laid.length) return x;
    this.seen[line] = this.laid.length;
    // What has been laid since may not lie in the way.
    if (seen >= 0 && this.keepsClear(x, y, seen)) return x;
    this.x[line] = this.free(x, y);
    this.cost.become(line, this.costOf(line));
    return itemAt(this.x, line);
  }

  /** The first place on a line, from one on, that nothing hinders; infinite where there is none. */
  private free(x: number, y: number): number {
    this.takeIn();
    const { parts, sweep } = this;
    const limit = sweep.step === 1 ? this.right : -this.left;
    let at = x;
    // Until none of the parts has anything against the place.
    for (let k = 0, content = 0; content < parts.length; k = k + 1 < parts.length ? k + 1 : 0) {
      const part = parts[k]!;
      const next = part.off.free(at, this.heightOf(part, y), limit);
      content = next === at ? content + 1 : 1;
      at = next;
      if (!Number.isFinite(at)) break;
    }
    return at;
  }

  /** Whether none of the pieces that were laid after the first few hinders a place on a line. */
  private keepsClear(x: number, y: number, since: number): boolean {
    this.takeIn();
    for (const part of this.parts) if (!part.off.keepsClear(x, this.heightOf(part, y), since)) return false;
    return true;
  }

  private heightOf({ dy, across }: Part, y: number): number {
    return dy + (across ? 2 * this.backbone - y : y);
  }

  /** Takes what has been laid by now among the hindrances. */
  private takeIn(): void {
    const { laid, shapes } = this;
    for (const { shape, off } of this.parts) {
      for (let k = off.pieces; k < laid.length; k++) {
        const one = itemAt(laid, k);
        off.add(shapes.between(one.shape, shape), one.x, one.y);
      }
    }
  }
}
