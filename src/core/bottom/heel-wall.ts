import { crossesItself } from '../geometry/crosses-itself';
import type { Point, Ring } from '../geometry/ring';
import type { Point3, Ruling } from '../geometry/unroll';
import type { LastInSize } from '../last/last-in-size';
import { atGround, atLength, type Profile } from '../last/profile';
import { rootOfRising } from '../numerics/root-of-rising';
import { Problem } from '../problem';
import type { PieceEdges } from './edge';
import { breastLine } from './raise';
import type { Style } from './style';

/** The wall of a heel as it is covered: rasped, less what the cover takes. */
export interface HeelWall {
  /** From the breast's outside corner round the back to its inside corner, seen from above; the last has the foot over it. */
  readonly sides: readonly Ruling[];
  /** The middle of the breast, which is cut square to the length and upright. */
  readonly breast: Ruling;
}

/** What the wall of a heel stands under and on. */
export interface HeelWallRule {
  readonly style: Style;
  readonly last: LastInSize;
  /** What the heel is fitted to, over its ground face. */
  readonly face: Profile;
  /** The last's outline as it stands on the ground, point for point that of `last`. */
  readonly ground: Ring;
  readonly pieceEdges: PieceEdges;
  /** Height of the heel under the seat, mm. */
  readonly height: number;
  /** What the cover takes off its edge, mm. */
  readonly taken: number;
}

/**
 * The wall of a heel between seat and ground. It narrows evenly toward the ground, square to its edge, so that it is of
 * one slope all round and can be unrolled (derived).
 * @throws Problem where it narrows so much that its ground face has no smooth edge.
 */
export function heelWall({ style, last, face, ground, pieceEdges, height, taken }: HeelWallRule): HeelWall {
  const taper = style.laying === 'bent' ? 0 : style.heelTaper;
  const full = pieceEdges.finished(ground, taken);
  const narrowed = pieceEdges.finished(ground, taken + taper);
  const breast = atLength(face, breastLine(last)).x;
  const rulingOf = ([[px, py], [ux, uy]]: Edges): Ruling => {
    const at = (t: number): Point3 => [px + t * (ux - px), py + t * (uy - py), t * height];
    const rising = (t: number) => t * height - atGround(face, at(t)[0]).z;
    // Where nothing stands over it the wall has no height.
    return [at(0), at(rising(0) >= 0 ? 0 : (rootOfRising(rising, 0, 2) ?? 1))];
  };
  const edges = finer(narrowed.map((point, i): Edges => [point, full[i]!]));
  const rulings = edges.map(rulingOf);
  const behind = rulings.map(([[px], [qx]]) => px < breast && qx < breast);
  const n = rulings.length;
  const start = behind.findIndex((one, i) => one && !behind[(i + n - 1) % n]);
  if (start < 0) throw new Error('A heel has no breast.');
  let end = start;
  while (behind[end % n]) end++;
  const sides = Array.from({ length: end - start }, (_, i) => rulings[(start + i) % n]!);
  /** Where the wall meets the breast between an edge behind it and one before it. */
  const corner = (inner: Edges, outer: Edges): Ruling => {
    const between = (u: number) => rulingOf(mixed(inner, outer, u));
    const reaching = (k: 0 | 1) => rootOfRising((u) => between(u)[k][0] - breast, 0, 1) ?? 0;
    const [p, q] = [between(reaching(0))[0], between(reaching(1))[1]];
    return [
      [breast, p[1], 0],
      [breast, q[1], q[2]],
    ];
  };
  const outside = corner(edges[start]!, edges[(start + n - 1) % n]!);
  const inside = corner(edges[(end - 1) % n]!, edges[end % n]!);
  const all = [outside, ...sides, inside];
  if (crossesItself(all.map(([[x, y]]): Point => [x, y]))) throw tooMuchTaper(taper);
  return { sides: all, breast: [between(outside[0], inside[0]), between(outside[1], inside[1])] };
}

/** A point of the edge on the ground, and the one over it before the heel narrows, seen from above. */
type Edges = readonly [narrowed: Point, full: Point];

/** Points of the edge lie no farther apart, mm: over a straight side the last may be curved. */
const FINEST = 2;

function finer(edges: readonly Edges[]): readonly Edges[] {
  return edges.flatMap((one, i) => {
    const next = edges[(i + 1) % edges.length]!;
    const apart = Math.hypot(next[1][0] - one[1][0], next[1][1] - one[1][1]);
    const steps = Math.max(1, Math.ceil(apart / FINEST));
    return Array.from({ length: steps }, (_, k) => mixed(one, next, k / steps));
  });
}

function mixed(from: Edges, to: Edges, share: number): Edges {
  const mix = (k: 0 | 1): Point => [
    from[k][0] + share * (to[k][0] - from[k][0]),
    from[k][1] + share * (to[k][1] - from[k][1]),
  ];
  return [mix(0), mix(1)];
}

function between(a: Point3, b: Point3): Point3 {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2];
}

function tooMuchTaper(taper: number): Problem {
  return new Problem(
    'invalid',
    { argument: 'heel_taper' },
    `${taper} mm a side leave the back of the ground face no round edge to cover; give less`,
  );
}
