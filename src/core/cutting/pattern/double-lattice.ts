import { itemAt, itemRound } from '../../item-at';
import { area } from '../../geometry/area';
import { convolution } from '../../geometry/convolution';
import { letOut } from '../../geometry/let-out';
import { moved } from '../../geometry/moved';
import { ARC_TOLERANCE } from '../../geometry/regions';
import type { Point, Ring } from '../../geometry/ring';
import { unionOutline } from '../../geometry/union-outline';
import { Lays } from '../rows/lay';
import type { Fineness } from '../../numerics/minimise';
import { cuttingArea, pairRows, type Pattern, type SlantRange } from './pattern';
import { wholeTurn } from '../sheet/way';

/** Places of the second piece round the first, and directions of rows over half a turn, that are looked at. */
const CONTACTS = 48;
const DIRECTIONS = 18;

/** How finely the slant of rows is sought at a place looked at, and about that of the place before. */
const LOOK: Fineness = { places: 8, steps: 0 };
const CLOSE: Fineness = { places: 2, steps: 6 };

/** Of the places looked at, how many are followed, and how many spacings of the grid they must lie apart. */
const FOLLOWED = 5;
const APART = 1.5;

/** Steps as parts of the grid's spacing, halved where no move is better; so many rounds of moves are tried at most. */
const FIRST_STEP = 0.5;
const HALF_WAY = 0.02;
const FINEST = 1e-6;
const MOST_TRIES = 60;

/** Moves of contact and direction tried from a place: alone and together, both ways. */
const ONE_WAY: readonly Point[] = [
  [1, 0],
  [0, 1],
  [1, 1],
  [1, -1],
  [1, 0.5],
  [1, -0.5],
  [0.5, 1],
  [0.5, -1],
];
const MOVES: readonly Point[] = ONE_WAY.flatMap(([s, t]): Point[] => [
  [s, t],
  [-s, -t],
]);

/**
 * The densest double lattice found of a piece that need not be convex: the piece and the piece turned end for end, which
 * touches it, repeated alike (Kuperberg and Kuperberg, Double-lattice packings of convex bodies in the plane, 1990). For
 * convex pieces Mount (The densest double-lattice packing of a convex polygon, 1991) finds it from chords; without
 * convexity the places at which both touch are the edge of the Minkowski sum of the piece with itself, and for every place
 * and direction of the rows the closest rows of the pair follow from its outline. Both are searched: over a grid, then from
 * its best places by moves of halving length (compass search, Kolda, Lewis and Torczon 2003). It finds pairs that hook into
 * each other, which rows sunk from above never do.
 */
export class DoubleLattice {
  private readonly lays: Lays;
  private readonly contacts: Contacts;

  constructor(ring: Ring, knifeRoom: number) {
    this.lays = Lays.of(ring, knifeRoom / 2);
    this.contacts = new Contacts(ring, knifeRoom);
  }

  /** The densest over all directions of the rows. */
  densest(): Pattern {
    const spacing = 180 / DIRECTIONS;
    const looked: Place[] = [];
    for (let k = 0; k < DIRECTIONS; k++) looked.push(...this.look(k * spacing));
    return this.follow(looked, spacing);
  }

  /** The densest with the piece lying by so many degrees from the rows. */
  densestAt(turn: number): Pattern {
    return this.follow(this.look(turn), 0);
  }

  private look(turn: number): Place[] {
    return this.contacts.spread(CONTACTS).map((contact) => this.at(contact, turn));
  }

  /** From the best places looked at, far enough apart, some way down; from the best of these to the bottom. */
  private follow(looked: readonly Place[], spacing: number): Pattern {
    const contactSpacing = this.contacts.length / CONTACTS;
    const apart = (a: Place, b: Place) =>
      this.contacts.between(a.contact, b.contact) > APART * contactSpacing ||
      Math.abs(a.turn - b.turn) > APART * spacing;
    const starts: Place[] = [];
    for (const place of [...looked].sort((a, b) => cuttingArea(a.pattern) - cuttingArea(b.pattern))) {
      if (starts.length === FOLLOWED) break;
      if (starts.every((start) => apart(start, place))) starts.push(place);
    }
    const steps = { contact: contactSpacing, turn: spacing };
    const some = starts.map((start) => this.descend(start, steps, FIRST_STEP, HALF_WAY));
    const best = some.reduce((a, b) => (cuttingArea(b.pattern) < cuttingArea(a.pattern) ? b : a));
    return this.descend(best, steps, HALF_WAY, FINEST).pattern;
  }

  /** Moves from a place to better ones, by ever smaller steps. */
  private descend(start: Place, steps: { contact: number; turn: number }, from: number, to: number): Place {
    const moves = steps.turn > 0 ? MOVES : MOVES.slice(0, 2);
    let best = start;
    let step = from;
    for (let tries = 0; tries < MOST_TRIES && step > to; tries++) {
      let moved = false;
      for (const [along, round] of moves) {
        const { pitch, slant } = best.pattern;
        const range = { about: slant / pitch, within: step / 2 };
        const next = this.at(best.contact + along * step * steps.contact, best.turn + round * step * steps.turn, range);
        if (cuttingArea(next.pattern) >= cuttingArea(best.pattern)) continue;
        best = next;
        moved = true;
      }
      if (!moved) step /= 2;
    }
    return best;
  }

  private at(contact: number, turn: number, range?: SlantRange): Place {
    const [x, y] = itemAt(moved([this.contacts.at(contact)], turn), 0);
    const piece = this.lays.at(wholeTurn(turn));
    const reversed = this.lays.at(wholeTurn(turn + 180));
    return { contact, turn, pattern: pairRows(piece, reversed, x, y, range ? CLOSE : LOOK, range) };
  }
}

interface Place {
  /** Length along the line of contacts. */
  readonly contact: number;
  readonly turn: number;
  readonly pattern: Pattern;
}

/** Where the origin of a piece turned end for end may lie so that it touches the piece: a line round it. */
class Contacts {
  private readonly line: Ring;
  private readonly reached: readonly number[];

  constructor(ring: Ring, knifeRoom: number) {
    const sum = unionOutline(convolution(ring, ring));
    const outer = sum.reduce((largest, one) => (area(one) > area(largest) ? one : largest));
    // Rounded corners may lie inside their true arcs by the tolerance.
    this.line = knifeRoom > 0 ? letOut(outer, knifeRoom + ARC_TOLERANCE) : outer;
    let along = 0;
    const reached = [along];
    this.line.forEach(([x, y], i) => {
      const [nx, ny] = itemRound(this.line, i + 1);
      reached.push((along += Math.hypot(nx - x, ny - y)));
    });
    this.reached = reached;
  }

  get length(): number {
    return itemAt(this.reached, this.line.length);
  }

  at(place: number): Point {
    const along = ((place % this.length) + this.length) % this.length;
    let [low, high] = [0, this.line.length - 1];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (itemAt(this.reached, middle) <= along) low = middle;
      else high = middle - 1;
    }
    const [x, y] = itemAt(this.line, low);
    const [nx, ny] = itemRound(this.line, low + 1);
    const [from, to] = [itemAt(this.reached, low), itemAt(this.reached, low + 1)];
    const share = (along - from) / (to - from || 1);
    return [x + (nx - x) * share, y + (ny - y) * share];
  }

  /** Distance of two places along the line, the shorter way round. */
  between(a: number, b: number): number {
    const apart = Math.abs(a - b) % this.length;
    return Math.min(apart, this.length - apart);
  }

  /** So many places evenly along the line. */
  spread(count: number): readonly number[] {
    return Array.from({ length: count }, (_, i) => (i * this.length) / count);
  }
}
