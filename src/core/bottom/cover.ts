import { box } from '../geometry/box';
import type { Ring } from '../geometry/ring';
import type { LastInSize } from '../last/last-in-size';
import { atGround, atLength, type Profile } from '../last/profile';
import { Problem } from '../problem';
import type { CoverPiece } from './cover-piece';
import { coverStrip } from './cover-strip';
import type { PieceEdges } from './edge';
import { cutAlongFront } from './front-edge';
import { coveredParts } from './covered-parts';
import { heelCover } from './heel-cover';
import { heelWall } from './heel-wall';
import { HEADINGS, type Layer } from './layer';
import type { Style } from './style';
import { styleCell, within } from './style-problem';
import { wedgeEdge } from './wedge-edge';

/** What is covered. */
export interface Covered {
  readonly style: Style;
  readonly last: LastInSize;
  /** What the lifts are fitted to. */
  readonly face: Profile;
  /** The last's outline as it stands on the ground. */
  readonly ground: Ring;
  readonly pieceEdges: PieceEdges;
  readonly layers: readonly Layer[];
  /** Height of the lifts under the seat, mm. */
  readonly liftHeight: number;
  /** What of that goes on under the tread, mm. */
  readonly through: number;
  /** Thickness of the cover, mm. */
  readonly taken: number;
}

/**
 * What covers the edges of a bottom: of wedge and platform together, of a platform alone, or the wall of a heel; of a
 * heel under a platform each for itself, first the platform, which is turned under before the heel stands on it.
 */
export function coversOf(covered: Covered): readonly CoverPiece[] {
  const { style, layers, liftHeight: height } = covered;
  if (style.raise !== 'heel') return [stripOf(covered, layers)];
  const parts = coveredParts(style);
  const platform = parts.platform ? layers.filter(({ part }) => part === 'platform') : [];
  const flapped = layers.some(({ flap }) => flap !== undefined);
  const wall = () => heelCover(heelWall({ ...covered, height }), { ...style, flapped });
  return [
    ...(platform.length > 0 ? [stripOf(covered, platform)] : []),
    ...(parts.lifts ? [within(style, 'Heel taper', wall)] : []),
  ];
}

/** The strip round the edge of what there is of wedge and platform. */
function stripOf(
  { style, last, face, ground, pieceEdges, through, taken }: Covered,
  layers: readonly Layer[],
): CoverPiece {
  const lifts = layers.filter(({ part }) => part === 'lift');
  const platform = layers.filter(({ part }) => part === 'platform');
  const longest = lifts.reduce<Layer | undefined>(
    (best, one) => (best && best.length >= one.length ? best : one),
    undefined,
  );
  const base = platform[0] ?? longest;
  if (!base) {
    throw new Problem(
      'invalid',
      styleCell(style, HEADINGS.cover),
      'there is no wedge, heel or platform to cover; leave it blank',
    );
  }
  // What is covered is the edge once it is rasped, less what the cover takes.
  const full = pieceEdges.of(base.follows ? last.outline : ground, taken, 0);
  const wedge = longest && (through > 0 ? full : cutAlongFront(full, longest.ring));
  const furthest = wedge ? box(wedge).right : -Infinity;
  const { path, heightAt } = wedgeEdge(platform.length > 0 ? full : (wedge ?? full), {
    front: longest?.follows && !base.follows ? atLength(face, furthest).x : furthest,
    wedgeHeight: (x) => (base.follows ? atLength(face, x) : atGround(face, x)).z - through,
    platform: platform.reduce((sum, { thickness, rasped = 0 }) => sum + thickness - rasped, through),
  });
  return coverStrip(path, heightAt, style.turnOver, style.turnUnder, style.coverLap);
}
