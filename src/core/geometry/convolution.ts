import { itemAt, itemRound } from '../item-at';
import type { Point, Ring } from './ring';

/**
 * The closed curves traced by the sums of those points of two outlines at which both run in the same direction. They wind
 * round a point as often as the first outline meets, in separate places, the second turned round and moved to that point:
 * so the Minkowski sum of both is what the curves wind round at all (Guibas, Ramshaw and Stolfi, A kinetic framework for
 * computational geometry, 1983).
 */
export function convolution(a: Ring, b: Ring): readonly Ring[] {
  const first = tracing(a);
  const second = tracing(b);
  const circle = rank(first, second);
  const n = first.corners.length;
  const m = second.corners.length;
  // Steps from corner i of the first with corner j of the second: along an edge of either while the other stands still.
  const next = new Map<number, number>();
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < m; j++) {
      // Edge j of the second, from its corner j, while the first stands at corner i and turns through its direction.
      if (turnsThrough(first, i, second.ranks[j]!, circle)) {
        const [from, to] = [i * m + j, i * m + ((j + 1) % m)];
        if (first.left[i]) next.set(from, to);
        else next.set(to, from);
      }
      if (turnsThrough(second, j, first.ranks[i]!, circle)) {
        const [from, to] = [i * m + j, ((i + 1) % n) * m + j];
        if (second.left[j]) next.set(from, to);
        else next.set(to, from);
      }
    }
  }
  return cyclesOf(next).map((cycle) =>
    cycle.map((state): Point => {
      const [x, y] = itemAt(first.corners, Math.floor(state / m));
      const [u, v] = itemAt(second.corners, state % m);
      return [x + u, y + v];
    }),
  );
}

/** An outline as edges, each with its place in the order of all directions, and turns between them. */
interface Tracing {
  readonly corners: Ring;
  /** Direction of the edge that begins at a corner, radians. */
  readonly angles: readonly number[];
  /** Whether the outline turns left at a corner. */
  readonly left: readonly boolean[];
  readonly ranks: Int32Array;
}

function tracing(ring: Ring): Tracing {
  let corners = ring;
  let angles = directionsOf(corners);
  for (;;) {
    const bent = corners.filter((_, i) => angles[i] !== itemRound(angles, i - 1));
    if (bent.length === corners.length || bent.length < 3) break;
    corners = bent;
    angles = directionsOf(corners);
  }
  const left = angles.map((angle, i) => {
    const bend = angle - itemRound(angles, i - 1);
    return bend > Math.PI ? bend - 2 * Math.PI > 0 : bend <= -Math.PI ? true : bend > 0;
  });
  return { corners, angles, left, ranks: new Int32Array(angles.length) };
}

function directionsOf(ring: Ring): number[] {
  return ring.map(([x, y], i) => {
    const [nx, ny] = itemRound(ring, i + 1);
    const angle = Math.atan2(ny - y, nx - x);
    return angle === -Math.PI ? Math.PI : angle;
  });
}

/** Ranks the directions of both outlines round the circle; of two that are equal the first outline's goes first. */
function rank(first: Tracing, second: Tracing): number {
  const all = [
    ...first.angles.map((angle, edge) => ({ angle, edge, of: first })),
    ...second.angles.map((angle, edge) => ({ angle, edge, of: second })),
  ];
  all.sort((p, q) => p.angle - q.angle || Number(p.of === second) - Number(q.of === second) || p.edge - q.edge);
  all.forEach(({ edge, of }, place) => (of.ranks[edge] = place));
  return all.length;
}

/** Whether an outline, turning at a corner from one edge into the next, passes through a direction. */
function turnsThrough({ ranks, left }: Tracing, corner: number, direction: number, circle: number): boolean {
  const before = ranks[corner === 0 ? ranks.length - 1 : corner - 1]!;
  const after = ranks[corner]!;
  const [low, high] = left[corner] ? [before, after] : [after, before];
  return (direction - low + circle) % circle < (high - low + circle) % circle;
}

function cyclesOf(next: Map<number, number>): number[][] {
  const cycles: number[][] = [];
  for (const start of next.keys()) {
    const cycle: number[] = [];
    let at: number | undefined = start;
    while (at !== undefined && next.has(at)) {
      const to: number | undefined = next.get(at);
      next.delete(at);
      cycle.push(at);
      at = to;
    }
    if (cycle.length > 2) cycles.push(cycle);
  }
  return cycles;
}
