import { boxMoved } from '../../geometry/box';
import { moved } from '../../geometry/moved';
import { offsetCurve } from '../../geometry/offset-curve';
import type { Box, Ring } from '../../geometry/ring';
import { rounded, roundedRing } from '../../geometry/rounded-ring';
import { wholeTurn } from '../sheet/way';
import { mirroredSides, quarterTurned, type Sides, sidesOf } from './side';

/** A piece let out by half the knife room, in one of the turns in which it may be laid. */
export interface Lay {
  readonly turn: number;
  readonly sides: Sides;
  readonly box: Box;
  readonly length: number;
  readonly height: number;
}

/** A piece in its turns, each prepared when first asked for. Quarter turns, and the other foot's piece, share the work of one. */
export class Lays {
  private readonly made = new Map<number, Lay>();
  private otherFoot: Lays | undefined;

  private constructor(private readonly prepare: (turn: number) => Lay) {}

  /** @param halfRoom what the piece is let out by, mm */
  static of(ring: Ring, halfRoom: number): Lays {
    let letOut: Ring | undefined;
    const lays: Lays = new Lays((turn) => {
      if (turn >= 90) return quarterOn(lays.at(turn - 90), turn);
      letOut ??= roundedRing(offsetCurve(ring, halfRoom));
      // The box is that of the outline itself let out: straight through the tips of its rounded corners.
      const { left, bottom, right, top } = boxMoved(ring, turn);
      return lay(turn, sidesOf(roundedRing(moved(letOut, turn))), {
        left: rounded(left - halfRoom),
        bottom: rounded(bottom - halfRoom),
        right: rounded(right + halfRoom),
        top: rounded(top + halfRoom),
      });
    });
    return lays;
  }

  /** @param turn degrees, 0 ≤ turn < 360 */
  at(turn: number): Lay {
    let known = this.made.get(turn);
    if (!known) this.made.set(turn, (known = this.prepare(turn)));
    return known;
  }

  /** The other foot's piece: mirrored in the length line. */
  get mirrored(): Lays {
    if (!this.otherFoot) {
      this.otherFoot = new Lays((turn) => mirrored(this.at(wholeTurn(-turn)), turn));
      this.otherFoot.otherFoot = this;
    }
    return this.otherFoot;
  }
}

function quarterOn({ sides, box: { left, bottom, right, top } }: Lay, turn: number): Lay {
  return lay(turn, quarterTurned(sides), { left: -top, bottom: left, right: -bottom, top: right });
}

function mirrored({ sides, box: { left, bottom, right, top } }: Lay, turn: number): Lay {
  return lay(turn, mirroredSides(sides), { left, bottom: -top, right, top: -bottom });
}

function lay(turn: number, sides: Sides, outer: Box): Lay {
  return { turn, sides, box: outer, length: outer.right - outer.left, height: outer.top - outer.bottom };
}
