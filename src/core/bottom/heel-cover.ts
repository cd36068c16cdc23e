import { area } from '../geometry/area';
import { letOutEdges } from '../geometry/let-out-edges';
import { moved } from '../geometry/moved';
import { pathLength } from '../geometry/path-length';
import type { Point, Ring } from '../geometry/ring';
import { simplify } from '../geometry/simplify';
import { unroll } from '../geometry/unroll';
import type { CoverPiece } from './cover-piece';
import type { HeelWall } from './heel-wall';
import type { Style } from './style';

/** What is turned round the cover of a heel, mm. */
export interface HeelCoverRule extends Pick<Style, 'turnOver' | 'turnUnder' | 'coverLap'> {
  /** Whether a flap of the sole hides the breast: the ends are turned in under it, else they meet in its middle. */
  readonly flapped: boolean;
}

/** How far the outline to cut may lie off the true one, mm: a knife follows no closer. */
const TOLERANCE = 0.05;

/**
 * The cover of a heel in one piece, its wall unrolled to its true shape (derived). Without a flap over the breast it
 * goes on to the breast's middle, where both ends are cut through at once; with one its ends are turned in at the corners.
 */
export function heelCover({ sides, breast }: HeelWall, rule: HeelCoverRule): CoverPiece {
  const { turnOver, turnUnder, coverLap, flapped } = rule;
  const rulings = flapped ? sides : [breast, ...sides, breast];
  const { lower, upper, area: wall } = unroll(rulings);
  const rearmost = rulings.reduce((best, [[x]], i) => (x < rulings[best]![0][0] ? i : best), 0);
  const upright = uprightAt(lower[rearmost]!, upper[rearmost]!);
  const [low, high] = [upright(lower), upright(upper)];
  const unturned: Ring = [...low, ...[...high].reverse()];
  const end = flapped ? turnUnder : coverLap;
  const turns = new Map(
    unturned.map((point, i) => {
      if (i < low.length - 1) return [point, turnUnder];
      return [point, i === low.length - 1 || i === unturned.length - 1 ? end : turnOver];
    }),
  );
  // Its four corners are sharp enough to stay.
  const thinned = simplify(unturned, TOLERANCE);
  const ring = letOutEdges(
    thinned,
    thinned.map((point) => turns.get(point)!),
  );
  return {
    ring,
    unturned,
    back: [low[rearmost]!, high[rearmost]!],
    wall,
    area: area(ring),
    over: pathLength(high),
    under: pathLength(low),
    closes: !flapped,
    lap: flapped ? 0 : coverLap,
  };
}

/** Turns points so that a line stands upright, its lower end at the origin. */
function uprightAt([x, y]: Point, [toX, toY]: Point): (points: readonly Point[]) => readonly Point[] {
  const turn = 90 - (Math.atan2(toY - y, toX - x) * 180) / Math.PI;
  return (points) =>
    moved(
      points.map(([px, py]): Point => [px - x, py - y]),
      turn,
    );
}
