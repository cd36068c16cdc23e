import { itemAt } from '../item-at';
import { pathLength } from '../geometry/path-length';
import type { Point } from '../geometry/ring';
import type { CoverPiece } from './cover-piece';

/**
 * A strip that covers the edge of a build, unrolled: the plan edge is its straight baseline. Its outline has the baseline
 * along x, turn-under below it, wall and turn-over above, and where its ends meet the lap before and behind it.
 */
export interface CoverStrip extends CoverPiece {
  /** Length of the baseline, mm. */
  readonly length: number;
  /** Places along the baseline with the height of the edge there and the width to cut, turns included, mm. */
  readonly stations: readonly { readonly at: number; readonly height: number; readonly width: number }[];
  /** Greatest width to cut, turns included, mm. */
  readonly width: number;
}

type Station = Omit<CoverStrip['stations'][number], 'width'>;

/** The edge's height is looked at in steps no longer than this, mm: a straight side may have a curved upper edge. */
const FINEST = 2;
/** How far the strip's upper edge may lie off the height between two stations, mm. */
const TOLERANCE = 0.02;

/** As few of the stations as keep the line through them within the tolerance; both ends stay. */
function thinned(fine: readonly Station[]): readonly Station[] {
  const kept = fine.slice(0, 1);
  let from = 0;
  for (let to = 2; to < fine.length; to++) {
    const [a, b] = [itemAt(fine, from), itemAt(fine, to)];
    const off = (one: Station) =>
      Math.abs(one.height - a.height - ((one.at - a.at) / (b.at - a.at)) * (b.height - a.height));
    if (fine.slice(from + 1, to).some((one) => off(one) > TOLERANCE)) {
      from = to - 1;
      kept.push(itemAt(fine, from));
    }
  }
  return [...kept, ...fine.slice(1).slice(-1)];
}

/**
 * The strip for an edge whose height is known all along the plan edge (derived). The baseline is the plan edge, not the
 * slope: a wall that falls toward the front is cut with a falling upper edge.
 * @param path the plan edge in order, mm (open for a wedge's back and sides, closed by repeating the first point)
 * @param heightAt height of the edge over a point of the path, mm
 * @param turnOver mm over the upper edge, turnUnder mm under the lower one
 * @param lap mm that each end goes past the seam, where the path is closed
 */
export function coverStrip(
  path: readonly Point[],
  heightAt: (x: number, y: number) => number,
  turnOver: number,
  turnUnder: number,
  lap = 0,
): CoverStrip {
  const stations: Station[] = [];
  let at = 0;
  path.forEach((point, i) => {
    const before = path[i - 1];
    const height = (x: number, y: number) => Math.max(0, heightAt(x, y));
    if (before) {
      const step = Math.hypot(point[0] - before[0], point[1] - before[1]);
      const pieces = Math.max(1, Math.ceil(step / FINEST));
      const fine = Array.from({ length: pieces + 1 }, (_, k): Station => {
        const t = k / pieces;
        return {
          at: at + t * step,
          height: height(before[0] + t * (point[0] - before[0]), before[1] + t * (point[1] - before[1])),
        };
      });
      stations.push(...thinned(fine).slice(1));
      at += step;
    } else stations.push({ at, height: height(point[0], point[1]) });
  });
  const wall = stations.reduce((sum, { at: to, height }, i) => {
    const before = stations[i - 1];
    return before ? sum + ((to - before.at) * (height + before.height)) / 2 : 0;
  }, 0);
  const [begin, end] = [path[0], path[path.length - 1]];
  const closes = begin !== undefined && begin[0] === end?.[0] && begin[1] === end[1];
  const turns = turnOver + turnUnder;
  const upper = (more: number) => stations.map(({ at: x, height }): Point => [x, height + more]).reverse();
  // An end that nothing meets ends with the wall.
  const past = closes ? lap : 0;
  const corner = (x: number, station: Station | undefined): Point => [x, (station?.height ?? 0) + turnOver];
  const [before, behind] = [corner(-past, stations[0]), corner(at + past, stations.at(-1))];
  return {
    length: at,
    stations: stations.map((station) => ({ ...station, width: station.height + turns })),
    width: Math.max(...stations.map(({ height }) => height)) + turns,
    wall,
    area: wall + at * turns + past * (before[1] + behind[1] + 2 * turnUnder),
    ring: [
      [-past, -turnUnder],
      [at + past, -turnUnder],
      ...(past > 0 ? [behind, ...upper(turnOver), before] : upper(turnOver)),
    ],
    unturned: [[0, 0], [at, 0], ...upper(0)],
    back: closes ? undefined : backOf(path, heightAt),
    over: at,
    under: at,
    closes,
    lap: past,
  };
}

/** Where the middle of the back comes to lie along the baseline, and the height there. */
function backOf(path: readonly Point[], heightAt: (x: number, y: number) => number): CoverPiece['back'] {
  const rear = Math.min(...path.map(([x]) => x));
  const back = [...path.keys()].filter((i) => path[i]![0] - rear < 1e-6);
  const ats = back.map((i) => pathLength(path.slice(0, i + 1)));
  const at = ats.reduce((sum, one) => sum + one, 0) / ats.length;
  return [
    [at, 0],
    [at, heightAt(rear, 0)],
  ];
}
