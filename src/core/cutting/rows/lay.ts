import { box } from '../../geometry/box';
import { moved } from '../../geometry/moved';
import { offsetCurve } from '../../geometry/offset-curve';
import type { Box, Ring } from '../../geometry/ring';
import { quarterTurned, type Sides, sidesOf } from './reach';

/** A piece let out by half the knife room, in one of the turns in which it may be laid. */
export interface Lay {
  readonly turn: number;
  readonly sides: Sides;
  readonly box: Box;
  readonly length: number;
  readonly height: number;
}

/** Prepares a piece's turns when first asked for; quarter turns share the work of one. */
export class Lays {
  private readonly reach: Ring;
  private readonly made = new Map<number, Lay>();

  constructor(
    private readonly ring: Ring,
    private readonly halfRoom: number,
  ) {
    this.reach = offsetCurve(ring, halfRoom);
  }

  /** @param turn degrees, 0 ≤ turn < 360 */
  at(turn: number): Lay {
    const known = this.made.get(turn);
    if (known) return known;
    const lay = turn < 90 ? this.first(turn) : quarterOn(this.at(turn - 90), turn);
    this.made.set(turn, lay);
    return lay;
  }

  private first(turn: number): Lay {
    // The box is that of the outline itself let out: straight through the tips of its rounded corners.
    const b = box(turn === 0 ? this.ring : moved(this.ring, turn));
    const r = this.halfRoom;
    const grown = { left: b.left - r, bottom: b.bottom - r, right: b.right + r, top: b.top + r };
    return lay(turn, sidesOf(turn === 0 ? this.reach : moved(this.reach, turn)), grown);
  }
}

function quarterOn({ sides, box: { left, bottom, right, top } }: Lay, turn: number): Lay {
  return lay(turn, quarterTurned(sides), { left: -top, bottom: left, right: -bottom, top: right });
}

function lay(turn: number, sides: Sides, outer: Box): Lay {
  return { turn, sides, box: outer, length: outer.right - outer.left, height: outer.top - outer.bottom };
}
