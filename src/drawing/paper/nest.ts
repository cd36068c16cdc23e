import type { Layer } from '../../core/bottom/layer';
import { box, boxAbout } from '../../core/geometry/box';
import { inside } from '../../core/geometry/inside';
import { rectangleAbout } from '../../core/geometry/rectangle';
import type { Box, Point, Ring } from '../../core/geometry/ring';
import { itemAt, itemRound } from '../../core/item-at';
import { line, type Marks, marks, outline, text } from '../mark';
import { movedMarks, readable } from '../move-marks';
import { widthOf } from './letter-width';
import type { TrueDrawing } from './true-pages';

/** A piece in one of its sizes. */
export interface SizedLayer {
  readonly size: number;
  readonly layer: Pick<Layer, 'ring'>;
}

/** Height of a size's name, and from one name to the next, mm. */
const [LETTERS, PITCH] = [2.6, 3.4];
/** A name stands so far from the first outline, and a leader so far from its name, mm. */
const [AWAY, OFF] = [4, 0.6];
/** Height of a nest's own name below it, mm. */
const NAME = 3;
/** Room about a nest, mm. */
const ROOM = 2;
/** Outlines that are nowhere this far apart run together in print, mm. */
const APART = 0.5;

/**
 * Outlines of a piece in several sizes drawn into each other, each with its size at the end of a leader. Half sizes are
 * dashed, and have a drawing of their own where all together would run into each other.
 * @param name of the piece, such as "Lift 3"
 * @param nest from the smallest size to the largest
 */
export function nestsOf(name: string, nest: readonly SizedLayer[]): readonly TrueDrawing[] {
  if (nest.length < 2) return [];
  const halves = nest.filter(isHalf);
  const wholes = nest.filter((one) => !isHalf(one));
  const close = spread(ringsOf(nest)).apart < APART;
  if (!close || halves.length < 2 || wholes.length < 2) return [drawing(name, nest)];
  return [drawing(`${name}, whole sizes`, wholes), drawing(`${name}, half sizes`, halves)];
}

function isHalf({ size }: SizedLayer): boolean {
  return size % 1 !== 0;
}

/** As they are drawn: y downward. */
function ringsOf(nest: readonly SizedLayer[]): readonly Ring[] {
  return nest.map(({ layer }) => layer.ring.map(([x, y]): Point => [x, -y]));
}

function drawing(name: string, nest: readonly SizedLayer[]): TrueDrawing {
  const rings = ringsOf(nest);
  const about = boxAbout(rings.map((ring) => box(ring)));
  const leaders = spread(rings);
  const mixed = !nest.every(isHalf);
  const ends = leaders.inside ? [] : leaders.leads.map(({ from }) => from);
  const wide = widthOf(name, NAME, true);
  const least = Math.max(about.right, about.left + wide, ...ends.map(([x]) => x + 9));
  const all: Box = {
    left: about.left - ROOM,
    right: least + ROOM,
    bottom: Math.min(about.bottom, ...ends.map(([, y]) => y - PITCH)) - ROOM,
    top: Math.max(about.top, ...ends.map(([, y]) => y + PITCH)) + ROOM + 1.6 * NAME,
  };
  return {
    name,
    short: name,
    ring: rectangleAbout(about),
    ground: rectangleAbout({ left: all.left, right: all.right, bottom: -all.top, top: -all.bottom }),
    draw: (turn) =>
      marks(
        line('chain', about.left, 0, about.right, 0),
        line('chain', 0, about.bottom, 0, about.top),
        rings.map((ring, i) =>
          outline(mixed && isHalf(itemAt(nest, i)) ? 'dashed' : 'narrow', ring, AS_IT_IS, { layer: 'cut' }),
        ),
        leaders.leads.flatMap((lead, i) => leadMarks(lead, itemAt(nest, i).size, turn)),
        nameMarks(name, about, all, turn),
      ),
  };
}

const AS_IT_IS = { x: (mm: number) => mm, y: (mm: number) => mm };

/** The name of the nest below it, upright on its page. */
function nameMarks(name: string, about: Box, all: Box, turn: number): Marks {
  const half = widthOf(name, NAME, true) / 2;
  const word = text(0, 0.35 * NAME, name, 'bold', 'middle', { size: NAME });
  return movedMarks([word], readable(0, turn), about.left + half, all.top - 0.8 * NAME);
}

/** A leader from a size's name to its outline. */
interface Lead {
  readonly from: Point;
  readonly to: Point;
  /** From the leader to the middle of the name, in its length. */
  readonly way: Point;
}

function leadMarks({ from, to, way: [wx, wy] }: Lead, size: number, turn: number): Marks {
  const off = widthOf(String(size), LETTERS) / 2 + OFF;
  const own = (Math.atan2(-wy, wx) * 180) / Math.PI;
  const word = text(0, 0.35 * LETTERS, size, 'plain', 'middle', { size: LETTERS });
  return [
    line('narrow', ...from, ...to),
    ...movedMarks([word], readable(own, turn), from[0] + wx * off, from[1] + wy * off),
  ];
}

/** Leaders of a nest: how far apart outlines are where they end, and whether the names stand within all outlines. */
interface Leaders {
  readonly leads: readonly Lead[];
  readonly apart: number;
  readonly inside: boolean;
}

const WAYS: readonly Point[] = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
];
/** Places that are tried along the outlines, one a millimetre or so. */
const PLACES = 60;

/**
 * Leaders beside each other, one an outline, where the outlines are furthest apart; their names within all outlines where
 * they have room there, and else beyond the toe.
 */
function spread(rings: readonly Ring[]): Leaders {
  const within = WAYS.flatMap((way) => placesAlong(rings, way)).sort((a, b) => b.apart - a.apart);
  for (const place of within) {
    const leads = leadsWithin(place);
    if (leads) return { leads, apart: place.apart, inside: true };
  }
  return leadersBeyond(rings);
}

/** Where leaders might end, with the outlines turned so that leaders run to the right. */
interface PlaceAlong {
  readonly turned: readonly Ring[];
  readonly way: Point;
  readonly ends: readonly Point[];
  readonly apart: number;
}

function placesAlong(rings: readonly Ring[], way: Point): readonly PlaceAlong[] {
  const [wx, wy] = way;
  const turned = rings.map((ring) => ring.map(([x, y]): Point => [x * wx + y * wy, y * wx - x * wy]));
  const { bottom, top } = boxAbout(turned.map((ring) => box(ring)));
  return Array.from({ length: PLACES + 1 }, (_, k): PlaceAlong => {
    const middle = bottom + ((top - bottom) * k) / PLACES;
    const ends = turned.map((ring, i): Point => {
      const row = rowOf(i, turned.length, middle, PITCH);
      return [reach(ring, row), row];
    });
    return { turned, way, ends, apart: apartAt(turned, ends) };
  }).filter(({ ends }) => ends.every(([end]) => Number.isFinite(end)));
}

/** Leaders from names that stand within all outlines; none where they have no room there. */
function leadsWithin({ turned, way: [wx, wy], ends }: PlaceAlong): readonly Lead[] | undefined {
  const back = ([a, b]: Point): Point => [a * wx - b * wy, a * wy + b * wx];
  const from = Math.min(...ends.flatMap(([, row]) => turned.map((ring) => reach(ring, row)))) - AWAY;
  if (!turned.every((ring) => ends.every(([, row]) => hasRoom(ring, from, row)))) return undefined;
  return ends.map((end): Lead => ({ from: back([from, end[1]]), to: back(end), way: [-wx, -wy] }));
}

/** Leaders to the toes, closer there than at their names where the outlines are too narrow for these. */
function leadersBeyond(rings: readonly Ring[]): Leaders {
  const boxes = rings.map((ring) => box(ring));
  const [low, high] = [Math.max(...boxes.map(({ bottom }) => bottom)), Math.min(...boxes.map(({ top }) => top))];
  const from = Math.max(...boxes.map(({ right }) => right)) + AWAY;
  const middle = (low + high) / 2;
  const pitch = Math.min(PITCH, (0.8 * (high - low)) / Math.max(1, rings.length - 1));
  const ends = rings.map((ring, i): Point => {
    const row = rowOf(i, rings.length, middle, pitch);
    return [reach(ring, row), row];
  });
  const leads = ends.map((to, i): Lead => ({ from: [from, rowOf(i, rings.length, middle, PITCH)], to, way: [1, 0] }));
  return { leads, apart: apartAt(rings, ends), inside: false };
}

function rowOf(i: number, count: number, middle: number, pitch: number): number {
  return middle + (i - (count - 1) / 2) * pitch;
}

/** Whether a name that ends at a place lies within a ring. */
function hasRoom(ring: Ring, end: number, row: number): boolean {
  return [end, end - 4, end - 8].every((x) => inside(ring, x, row - PITCH / 2) && inside(ring, x, row + PITCH / 2));
}

/** The least distance of an outline from the ones before and after it, where its leader ends. */
function apartAt(rings: readonly Ring[], ends: readonly Point[]): number {
  const gaps = ends.flatMap(([end, row], i) =>
    [rings[i - 1], rings[i + 1]].flatMap((ring) => (ring ? [Math.abs(reach(ring, row) - end)] : [])),
  );
  return Math.min(...gaps);
}

/** How far a ring reaches to the right at a height; without end where it does not come there. */
function reach(ring: Ring, row: number): number {
  return ring.reduce((most, [ax, ay], i) => {
    const [bx, by] = itemRound(ring, i + 1);
    return ay > row === by > row ? most : Math.max(most, ax + ((bx - ax) * (row - ay)) / (by - ay));
  }, -Infinity);
}
