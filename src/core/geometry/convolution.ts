import { itemRound } from '../item-at';
import type { Point, Ring } from './ring';

/** A closed curve: x and y of one corner after the other. */
export type Curve = Float64Array;

/**
 * The closed curves traced by the sums of those points of two outlines at which both run in the same direction. They wind
 * round a point as often as the first outline meets, in separate places, the second turned round and moved to that point:
 * so the Minkowski sum of both is what the curves wind round at all (Guibas, Ramshaw and Stolfi, A kinetic framework for
 * computational geometry, 1983).
 */
export function convolution(a: Ring, b: Ring): readonly Ring[] {
  return convolutionOf(tracing(a), tracing(b)).map((curve) =>
    Array.from({ length: curve.length / 2 }, (_, k): Point => [curve[2 * k]!, curve[2 * k + 1]!]),
  );
}

/** The same of outlines that are traced already. */
export function convolutionOf(first: Tracing, second: Tracing): readonly Curve[] {
  const n = first.xs.length;
  const m = second.xs.length;
  const directions = ranked(first, second);
  // Steps from corner i of the first with corner j of the second: along an edge of either while the other stands still.
  const steps = new Steps(n * m);
  const edges = edgesPassed(first, directions.first, directions.secondAt);
  const corners = turnedOver(edgesPassed(second, directions.second, directions.firstAt), n);
  for (let i = 0; i < n; i++) {
    // Edge j of the second, from its corner j, while the first stands at corner i and turns through its direction.
    for (let k = edges.starts[i]!; k < edges.starts[i + 1]!; k++) {
      const from = i * m + edges.items[k]!;
      const to = edges.items[k] === m - 1 ? i * m : from + 1;
      if (first.left[i]) steps.set(from, to);
      else steps.set(to, from);
    }
    for (let k = corners.starts[i]!; k < corners.starts[i + 1]!; k++) {
      const j = corners.items[k]!;
      const from = i * m + j;
      const to = i === n - 1 ? j : from + m;
      if (second.left[j]) steps.set(from, to);
      else steps.set(to, from);
    }
  }
  return steps.cycles().map((cycle) => {
    const curve = new Float64Array(2 * cycle.length);
    for (let k = 0; k < cycle.length; k++) {
      const i = Math.floor(cycle[k]! / m);
      const j = cycle[k]! - i * m;
      curve[2 * k] = first.xs[i]! + second.xs[j]!;
      curve[2 * k + 1] = first.ys[i]! + second.ys[j]!;
    }
    return curve;
  });
}

/** An outline as edges in the order of their directions, and turns between them. */
export interface Tracing {
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  /** Direction of the edge that begins at a corner, radians. */
  readonly angles: Float64Array;
  /** Whether the outline turns left at a corner: 1 or 0. */
  readonly left: Uint8Array;
  /** Edges in the order of their directions round the circle. */
  readonly inOrder: Int32Array;
}

/** Prepares an outline that does not cross itself. */
export function tracing(ring: Ring): Tracing {
  let corners = ring;
  let angles = directionsOf(corners);
  for (;;) {
    const bent = corners.filter((_, i) => angles[i] !== angles[i === 0 ? angles.length - 1 : i - 1]);
    if (bent.length === corners.length || bent.length < 3) break;
    corners = bent;
    angles = directionsOf(corners);
  }
  const left = Uint8Array.from(angles, (angle, i) => {
    const bend = angle - angles[i === 0 ? angles.length - 1 : i - 1]!;
    return Number(bend > Math.PI ? bend - 2 * Math.PI > 0 : bend <= -Math.PI ? true : bend > 0);
  });
  const inOrder = Int32Array.from(angles.keys()).sort((p, q) => angles[p]! - angles[q]! || p - q);
  return {
    xs: Float64Array.from(corners, (point) => point[0]),
    ys: Float64Array.from(corners, (point) => point[1]),
    angles,
    left,
    inOrder,
  };
}

function directionsOf(ring: Ring): Float64Array {
  return Float64Array.from(ring, (point, i) => {
    const next = itemRound(ring, i + 1);
    const angle = Math.atan2(next[1] - point[1], next[0] - point[0]);
    return angle === -Math.PI ? Math.PI : angle;
  });
}

/**
 * The directions of two outlines in one order round the circle; of two that are equal the first outline's goes first: the
 * place of each one's edges in it, and the edge at each place, −1 where an edge of the other one stands.
 */
function ranked(one: Tracing, other: Tracing) {
  const n = one.xs.length;
  const m = other.xs.length;
  const [first, second] = [new Int32Array(n), new Int32Array(m)];
  const [firstAt, secondAt] = [new Int32Array(n + m).fill(-1), new Int32Array(n + m).fill(-1)];
  for (let place = 0, i = 0, j = 0; place < n + m; place++) {
    const edge = one.inOrder[i]!;
    const otherEdge = other.inOrder[j]!;
    if (i < n && (j === m || one.angles[edge]! <= other.angles[otherEdge]!)) {
      first[edge] = place;
      firstAt[place] = edge;
      i++;
    } else {
      second[otherEdge] = place;
      secondAt[place] = otherEdge;
      j++;
    }
  }
  return { first, second, firstAt, secondAt };
}

/** Lists of whole numbers, one after the other. */
interface Lists {
  /** Where each begins, and at last where the last one ends. */
  readonly starts: Int32Array;
  readonly items: Int32Array;
}

/** At each corner of an outline, the edges of the other through whose directions it turns there. */
function edgesPassed({ left }: Tracing, ranks: Int32Array, edgeAt: Int32Array): Lists {
  const circle = edgeAt.length;
  const corners = ranks.length;
  const starts = new Int32Array(corners + 1);
  const items: number[] = [];
  for (let corner = 0; corner < corners; corner++) {
    const before = ranks[corner === 0 ? corners - 1 : corner - 1]!;
    const after = ranks[corner]!;
    const high = left[corner] ? after : before;
    for (let place = left[corner] ? before : after; place !== high; place = place + 1 === circle ? 0 : place + 1) {
      if (edgeAt[place]! >= 0) items.push(edgeAt[place]!);
    }
    starts[corner + 1] = items.length;
  }
  return { starts, items: Int32Array.from(items) };
}

/** For each of so many items the lists in which it stands. */
function turnedOver({ starts, items }: Lists, count: number): Lists {
  const begins = new Int32Array(count + 1);
  for (const item of items) begins[item + 1]!++;
  for (let item = 0; item < count; item++) begins[item + 1]! += begins[item]!;
  const ends = begins.slice();
  const lists = new Int32Array(items.length);
  for (let list = 0; list + 1 < starts.length; list++) {
    for (let k = starts[list]!; k < starts[list + 1]!; k++) lists[ends[items[k]!]!++] = list;
  }
  return { starts: begins, items: lists };
}

const NOWHERE = -1;

/** Steps from states to others, each gone once. */
class Steps {
  /** States in the order in which their steps were found. */
  private readonly order: number[] = [];
  private readonly to: Int32Array;

  constructor(states: number) {
    this.to = new Int32Array(states).fill(NOWHERE);
  }

  set(from: number, to: number): void {
    if (this.to[from] === NOWHERE) this.order.push(from);
    this.to[from] = to;
  }

  cycles(): readonly (readonly number[])[] {
    const cycles: number[][] = [];
    for (const start of this.order) {
      const cycle: number[] = [];
      let at = start;
      for (let to = this.to[at]!; to !== NOWHERE; to = this.to[at]!) {
        this.to[at] = NOWHERE;
        cycle.push(at);
        at = to;
      }
      if (cycle.length > 2) cycles.push(cycle);
    }
    return cycles;
  }
}
