import { area } from '../../geometry/area';
import { box } from '../../geometry/box';
import type { Ring } from '../../geometry/ring';
import { type Block, type Direction, type FilledSheet, type Laid, SheetFiller } from './fill-sheet';
import { mustFit } from '../sheet/fitting-turn';
import { type Lay, Lays } from './lay';
import type { Placement, Placements } from '../sheet/layout';
import type { Piece } from '../sheet/piece';
import { Plans, type RowsPlan } from './row-plans';
import { roomOn, type SheetFormat } from '../sheet/sheet';
import { Queue, Supply } from './supply';
import { mustBeSound, verifySheets } from '../sheet/verify-layout';
import { allows, wholeTurn } from '../sheet/way';

interface Kind {
  readonly piece: Piece;
  readonly index: number;
  readonly area: number;
  readonly lays: Lays;
  /** A turn in which the piece fits on the empty sheet. */
  readonly fitting: number;
}

/** Plans kept to after the first sheet: more in a small run, where each sheet counts, and fewer in a large one. */
const KEPT = { small: 4, large: 2 };
const SMALL_RUN = 600;

/** Plans tried, and halvings of the length, to draw the last sheet's pieces together. */
const DRAWN_TOGETHER = 2;
const HALVINGS = 5;

/**
 * Lays pieces of mixed shapes and sizes on as few sheets of a format as rows allow, quickly: on each sheet rows along
 * and across, with the pieces lying or standing in them, and the rest of the sheet filled with rows again; the fullest
 * stays. The last sheet is drawn together, to leave the largest rectangle over at an end or a side.
 * @param most sheets to lay at most; pieces that do not lie on these are left
 * @throws Problem that names a piece which fits on no such sheet.
 */
export function packRows(pieces: readonly Piece[], format: SheetFormat, most = Infinity): readonly Placements[] {
  const counts = most === Infinity ? 'exact' : 'atMost';
  const layout = rowsOf(pieces, format, most);
  if (verifySheets(pieces, format, layout, counts).length === 0) return layout;
  // Should arithmetic ever fail on an odd outline, the pieces are laid by the boxes about them, which cannot.
  const plain = rowsOf(
    pieces.map((piece) => ({ ...piece, ring: boxAbout(piece.ring) })),
    format,
    most,
  );
  mustBeSound(verifySheets(pieces, format, plain, counts));
  return plain;
}

function boxAbout(ring: Ring): Ring {
  const { left, bottom, right, top } = box(ring);
  return [
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
  ];
}

function rowsOf(pieces: readonly Piece[], format: SheetFormat, most: number): readonly Placements[] {
  const kinds = pieces.flatMap((piece, index): Kind[] => {
    const { key, ring, count, way } = piece;
    if (count <= 0) return [];
    const lays = new Lays(ring, format.knifeRoom / 2);
    return [{ piece, index, area: area(ring), lays, fitting: mustFit(ring, format, way, key) }];
  });
  const { length, width, offset } = roomOn(format);
  const room: Block = { x: 0, y: 0, length, width };
  const supply = new Supply(kinds.map(({ piece }) => piece.count));
  const directions = directionsFor(kinds, supply);
  const filler = new SheetFiller(supply, (kind) => kinds[kind].area, directions);
  const plans = new Plans(directions);
  const kept = supply.total <= SMALL_RUN ? KEPT.small : KEPT.large;
  const layout: Placement[][] = [];
  while (supply.total > 0 && layout.length < most) {
    const laid = nextSheet(layout.length === 0, plans, kept, filler, room, supply.total);
    const sheet = laid.map(({ kind, x, y, turn }) => ({
      piece: kinds[kind].index,
      x: x + offset,
      y: y + offset,
      turn,
    }));
    for (let again = Math.min(repeats(laid, supply), most - layout.length); again > 0; again--) {
      layout.push(sheet);
      for (const { kind } of laid) supply.take(kind);
    }
    for (const { kind } of laid) if (supply.left(kind) === 0) for (const { queue } of directions) queue.drop(kind);
  }
  return layout;
}

/** Fills one sheet by the plans worth trying and keeps the fullest; the last sheet is drawn together. */
function nextSheet(
  first: boolean,
  plans: Plans,
  kept: number,
  filler: SheetFiller,
  room: Block,
  left: number,
): readonly Laid[] {
  let best: FilledSheet = { laid: [], area: 0, length: room.length, width: room.width };
  const attempt = (tried: readonly RowsPlan[]) => {
    for (const plan of tried) {
      const sheet = filler.fill(plan.direction, plan.sequence, room);
      plans.note(plan, sheet.area);
      if (better(sheet, best, room, left)) best = sheet;
    }
  };
  attempt(first ? plans.firstLook() : plans.best(kept));
  if (first && best.laid.length < left) attempt(plans.closerLook());
  if (best.laid.length === 0) throw new Error('A piece that fits on an empty sheet was not laid.');
  return (best.laid.length < left ? best : drawnTogether(best, plans.best(DRAWN_TOGETHER), filler, room)).laid;
}

/** How often a sheet can be cut from what is left: at least once. */
function repeats(laid: readonly Laid[], supply: Supply): number {
  const used = new Map<number, number>();
  for (const { kind } of laid) used.set(kind, (used.get(kind) ?? 0) + 1);
  let most = Infinity;
  for (const [kind, count] of used) most = Math.min(most, Math.floor(supply.left(kind) / count));
  return most;
}

/** The fuller sheet; of two that take all that is left, the one that leaves the larger rectangle over. */
function better(a: FilledSheet, b: FilledSheet, room: Block, left: number): boolean {
  if (a.laid.length < left || b.laid.length < left) return a.area > b.area;
  return leftOver(a, room) > leftOver(b, room);
}

/** The larger strip, from edge to edge, that pieces leave of the room at its far end or its far side. */
function leftOver({ length, width }: FilledSheet, room: Block): number {
  return Math.max((room.length - length) * room.width, (room.width - width) * room.length);
}

/** Lays the pieces of the last sheet into ever less of its length or width, to leave the longest piece of sheet over. */
function drawnTogether(last: FilledSheet, plans: readonly RowsPlan[], filler: SheetFiller, room: Block): FilledSheet {
  let best = last;
  for (const side of ['length', 'width'] as const) {
    let enough = last[side];
    let short = last.area / (side === 'length' ? room.width : room.length);
    for (let step = 0; step < HALVINGS; step++) {
      const middle = (short + enough) / 2;
      const tight = { ...room, [side]: middle };
      const sheets = plans.map(({ direction, sequence }) => filler.fill(direction, sequence, tight));
      const whole = sheets.filter(({ laid }) => laid.length === last.laid.length);
      for (const sheet of whole) if (leftOver(sheet, room) > leftOver(best, room)) best = sheet;
      if (whole.length) enough = Math.min(middle, ...whole.map((sheet) => sheet[side]));
      else short = middle;
    }
  }
  return best;
}

/** Rows along and across, the pieces lying or standing in them where any may do either. */
function directionsFor(kinds: readonly Kind[], supply: Supply): readonly Direction[] {
  const free = kinds.some(({ piece }) => piece.way.kind === 'any');
  const directions: Direction[] = [];
  for (const along of [true, false]) {
    for (const standing of free ? [false, true] : [!along]) {
      const known: (readonly Lay[] | undefined)[] = [];
      const laysOf = (kind: number) => (known[kind] ??= turnsInRow(kinds[kind], along, standing));
      const heights = kinds.map((_, kind) => laysOf(kind)[0].height);
      const order = kinds.map((_, kind) => kind);
      order.sort((a, b) => heights[b] - heights[a] || kinds[b].area - kinds[a].area || a - b);
      directions.push({ along, laysOf, queue: new Queue(order, supply) });
    }
  }
  return directions;
}

/** The turns of a piece in a row: one or two, end for end, standing or lying where it may do either. */
function turnsInRow({ lays, fitting, piece: { way } }: Kind, along: boolean, standing: boolean): readonly Lay[] {
  const frame = along ? 0 : 90;
  // Seen along a row that runs across the sheet everything lies a quarter turn further on.
  const wanted = way.kind === 'any' && fitting % 90 === 0 ? (standing ? 90 : 0) : fitting + frame;
  const turns = [wanted, wanted + 180].map(wholeTurn).filter((turn) => allows(way, turn - frame));
  return turns.map((turn) => lays.at(turn));
}
