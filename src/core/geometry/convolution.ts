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
  const next = new Steps(n * m);
  const secondEdges = edgesPassed(first, second, circle);
  const firstEdges = edgesPassed(second, first, circle);
  const cornersAt: number[][] = Array.from({ length: n }, () => []);
  firstEdges.forEach((edges, j) => edges.forEach((i) => cornersAt[i]!.push(j)));
  for (let i = 0; i < n; i++) {
    // Edge j of the second, from its corner j, while the first stands at corner i and turns through its direction.
    for (const j of secondEdges[i]!) {
      const [from, to] = [i * m + j, i * m + ((j + 1) % m)];
      if (first.left[i]) next.set(from, to);
      else next.set(to, from);
    }
    for (const j of cornersAt[i]!) {
      const [from, to] = [i * m + j, ((i + 1) % n) * m + j];
      if (second.left[j]) next.set(from, to);
      else next.set(to, from);
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

/** At each corner of an outline, the edges of the other through whose directions it turns there. */
function edgesPassed(turning: Tracing, other: Tracing, circle: number): readonly (readonly number[])[] {
  // The other's edges in the order of all directions; −1 where an edge of the outline itself stands.
  const edgeAt = new Int32Array(circle).fill(-1);
  other.ranks.forEach((place, edge) => (edgeAt[place] = edge));
  const { ranks, left } = turning;
  return left.map((turnsLeft, corner) => {
    const before = itemRound(ranks, corner - 1);
    const after = itemAt(ranks, corner);
    const [low, high] = turnsLeft ? [before, after] : [after, before];
    const passed: number[] = [];
    for (let place = low; place !== high; place = place + 1 === circle ? 0 : place + 1) {
      const edge = edgeAt[place]!;
      if (edge >= 0) passed.push(edge);
    }
    return passed;
  });
}

/** Steps from states to others, in the order in which they were found. */
class Steps {
  readonly order: number[] = [];
  private readonly to: Int32Array;

  constructor(states: number) {
    this.to = new Int32Array(states).fill(NOWHERE);
  }

  set(from: number, to: number): void {
    if (this.to[from] === NOWHERE) this.order.push(from);
    this.to[from] = to;
  }

  /** Goes a step, once; NOWHERE where there is none any more. */
  take(from: number): number {
    const to = this.to[from]!;
    this.to[from] = NOWHERE;
    return to;
  }
}

const NOWHERE = -1;

function cyclesOf(next: Steps): number[][] {
  const cycles: number[][] = [];
  for (const start of next.order) {
    const cycle: number[] = [];
    let at = start;
    for (let to = next.take(at); to !== NOWHERE; to = next.take(at)) {
      cycle.push(at);
      at = to;
    }
    if (cycle.length > 2) cycles.push(cycle);
  }
  return cycles;
}
