import { area } from '../geometry/area';
import { fillRows, type Filled, type RowPlan } from './fill-rows';
import { mustFit } from './fitting-turn';
import { type Lay, Lays } from './lay';
import type { Layout, Placement } from './layout';
import type { Piece } from './piece';
import { roomOn, type SheetFormat } from './sheet';
import { Queue, Supply } from './supply';
import { mustBeSound, verifyLayout } from './verify-layout';
import { allows, wholeTurn } from './way';

interface Kind {
  readonly piece: number;
  readonly area: number;
  readonly lays: Lays;
  /** A turn in which the piece fits on the empty sheet. */
  readonly fitting: number;
}

/** A direction of rows on the sheet and a posture of the pieces in them. */
interface Direction extends RowPlan {
  /** Rows run along the sheet's length or across it. */
  readonly along: boolean;
}

/** A rectangle of the room on a sheet. */
interface Block {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

interface Laid {
  readonly kind: number;
  readonly x: number;
  readonly y: number;
  readonly turn: number;
}

interface Sheet {
  readonly laid: readonly Laid[];
  readonly area: number;
  /** What the pieces take of the room's length and width. */
  readonly length: number;
  readonly width: number;
}

/**
 * Lays pieces of mixed shapes and sizes on as few sheets of a format as rows allow, quickly: on each sheet rows along
 * and across, with the pieces lying or standing in them, and the rest of the sheet filled with rows again; the fullest
 * stays. The last sheet is the one with the most left over in one rectangle.
 * @throws Problem that names a piece which fits on no such sheet.
 */
export function packRows(pieces: readonly Piece[], format: SheetFormat): Layout {
  const kinds: Kind[] = [];
  pieces.forEach(({ key, ring, count, way }, piece) => {
    if (count <= 0) return;
    const fitting = mustFit(ring, format, way, key);
    kinds.push({ piece, area: area(ring), lays: new Lays(ring, format.knifeRoom / 2), fitting });
  });
  const { length, width, offset } = roomOn(format);
  const supply = new Supply(kinds.map(({ piece }) => pieces[piece].count));
  const directions = directionsFor(kinds, pieces, supply);
  const whole: Block = { x: 0, y: 0, length, width };
  const areaOf = (kind: number) => kinds[kind].area;
  const layout: Placement[][] = [];
  while (supply.total > 0) {
    let best: Sheet | undefined;
    for (const direction of directions) {
      const sheet = fillSheet(direction, directions, whole, supply, areaOf);
      for (const { kind } of sheet.laid) supply.putBack(kind);
      if (!best || better(sheet, best, whole, sheet.laid.length === supply.total)) best = sheet;
    }
    if (!best?.laid.length) throw new Error('A piece that fits on an empty sheet was not laid.');
    const { laid } = best;
    const sheet = laid.map(({ kind, x, y, turn }) => ({
      piece: kinds[kind].piece,
      x: x + offset,
      y: y + offset,
      turn,
    }));
    for (let again = repeats(laid, supply); again > 0; again--) {
      layout.push(sheet);
      for (const { kind } of laid) supply.take(kind);
    }
    for (const { kind } of laid) if (supply.left(kind) === 0) for (const { queue } of directions) queue.drop(kind);
  }
  mustBeSound(verifyLayout(pieces, format, layout));
  return layout;
}

/** How often a sheet can be cut from what is left: at least once. */
function repeats(laid: readonly Laid[], supply: Supply): number {
  const used = new Map<number, number>();
  for (const { kind } of laid) used.set(kind, (used.get(kind) ?? 0) + 1);
  let most = Infinity;
  for (const [kind, count] of used) most = Math.min(most, Math.floor(supply.left(kind) / count));
  return most;
}

/** The fuller sheet; of two that take all that is left, the one that leaves the larger rectangle at an edge. */
function better(a: Sheet, b: Sheet, room: Block, takesAll: boolean): boolean {
  if (!takesAll || a.laid.length !== b.laid.length) return a.area > b.area;
  return leftOver(a, room) > leftOver(b, room);
}

function leftOver(sheet: Sheet, room: Block): number {
  return Math.max((room.length - sheet.length) * room.width, (room.width - sheet.width) * room.length);
}

function directionsFor(kinds: readonly Kind[], pieces: readonly Piece[], supply: Supply): Direction[] {
  const free = kinds.some(({ piece }) => pieces[piece].way.kind === 'any');
  const directions: Direction[] = [];
  for (const along of [true, false]) {
    for (const standing of free ? [false, true] : [!along]) {
      const known: (readonly Lay[] | undefined)[] = [];
      const laysOf = (kind: number) =>
        (known[kind] ??= turnsInRow(kinds[kind], pieces[kinds[kind].piece], along, standing));
      const order = kinds.map((_, kind) => kind);
      order.sort((a, b) => laysOf(b)[0].height - laysOf(a)[0].height || kinds[b].area - kinds[a].area || a - b);
      directions.push({ along, laysOf, queue: new Queue(order, supply) });
    }
  }
  return directions;
}

/** The turns of a piece in a row: one or two, end for end, standing or lying where it may do either. */
function turnsInRow({ lays, fitting }: Kind, { way }: Piece, along: boolean, standing: boolean): readonly Lay[] {
  const frame = along ? 0 : 90;
  // Seen along a row that runs across the sheet everything lies a quarter turn further on.
  const wanted = way.kind === 'any' && fitting % 90 === 0 ? (standing ? 90 : 0) : fitting + frame;
  const turns = [wanted, wanted + 180].map(wholeTurn).filter((turn) => allows(way, turn - frame));
  return turns.map((turn) => lays.at(turn));
}

/** Fills a sheet with rows in one direction, then what is left beside and above them with rows in any. */
function fillSheet(
  first: Direction,
  directions: readonly Direction[],
  room: Block,
  supply: Supply,
  areaOf: (kind: number) => number,
): Sheet {
  const main = fillBlock(first, room, supply, areaOf);
  let sheet = main;
  if (supply.total > 0) {
    const beside = { ...room, x: room.x + main.length, length: room.length - main.length };
    const above = { ...room, y: room.y + main.width, width: room.width - main.width };
    const blocks = first.along
      ? [beside, { ...above, length: main.length }]
      : [above, { ...beside, width: main.width }];
    for (const block of blocks) sheet = joined(sheet, fillRest(directions, block, supply, areaOf));
  }
  return sheet;
}

function fillRest(
  directions: readonly Direction[],
  block: Block,
  supply: Supply,
  areaOf: (kind: number) => number,
): Sheet {
  let best: Sheet = { laid: [], area: 0, length: 0, width: 0 };
  for (const direction of directions) {
    const sheet = fillBlock(direction, block, supply, areaOf);
    for (const { kind } of sheet.laid) supply.putBack(kind);
    if (sheet.area > best.area) best = sheet;
  }
  for (const { kind } of best.laid) supply.take(kind);
  return best;
}

function fillBlock(direction: Direction, block: Block, supply: Supply, areaOf: (kind: number) => number): Sheet {
  const { along } = direction;
  const filled: Filled = along
    ? fillRows(direction, supply, areaOf, block.length, block.width)
    : fillRows(direction, supply, areaOf, block.width, block.length);
  const laid = filled.items.map(({ kind, lay, u, v }): Laid => {
    if (along) return { kind, x: block.x + u, y: block.y + v, turn: lay.turn };
    return { kind, x: block.x + v, y: block.y + filled.length - u, turn: wholeTurn(lay.turn - 90) };
  });
  const [length, width] = along ? [filled.length, filled.height] : [filled.height, filled.length];
  return { laid, area: filled.area, length: block.x + length, width: block.y + width };
}

function joined(a: Sheet, b: Sheet): Sheet {
  if (!b.laid.length) return a;
  return {
    laid: [...a.laid, ...b.laid],
    area: a.area + b.area,
    length: Math.max(a.length, b.length),
    width: Math.max(a.width, b.width),
  };
}
