import { finished, type Stepwise } from '../../stepwise';
import { roundedArea } from '../../geometry/area';
import { box } from '../../geometry/box';
import { OutlineIndex } from '../../geometry/outline-index';
import { rectangleAbout } from '../../geometry/rectangle';
import { mustFit } from '../sheet/fitting-turn';
import type { Placement, Placements } from '../sheet/layout';
import type { Piece } from '../sheet/piece';
import { roomOn, type SheetFormat } from '../sheet/sheet';
import { mustBeSound, verifySheetsStepwise } from '../sheet/verify-layout';
import { allows, wholeTurn, type Way } from '../sheet/way';
import { BuiltRows } from './built-rows';
import { laterBy } from './chance';
import { drawnTogether, FUZZ, leftOver } from './draw-together';
import { type Block, type Direction, type FilledSheet, SheetFiller } from './fill-sheet';
import { keptLays } from './kept-lays';
import type { Lay, Lays } from './lay';
import { Plans, type RowsPlan } from './row-plans';
import { Queue, Supply } from './supply';

/** A piece, ready to be laid in rows. */
interface Kind {
  readonly way: Way;
  readonly area: number;
  readonly lays: Lays;
  /** A turn in which the piece fits on the empty sheet. */
  readonly fitting: number;
}

/** Plans kept to after the first sheet: more in a small run, where each sheet counts, and fewer in a large one. */
const KEPT = { small: 4, large: 2 };
const SMALL_RUN = 600;

/** Plans by which the last sheet's pieces are drawn together, and one in turn. */
const DRAWN_BY = 1;

/**
 * Lays pieces of mixed shapes and sizes on as few sheets of a format as rows allow, quickly: on each sheet rows along
 * and across, with the pieces lying or standing in them, and the rest of the sheet filled with rows again; the fullest
 * stays. The last sheet is drawn together, to leave the largest rectangle over at an end or a side.
 * @param most sheets to lay at most; pieces that do not lie on these are left
 * @throws Problem that names a piece which fits on no such sheet.
 */
export function packRows(pieces: readonly Piece[], format: SheetFormat, most = Infinity): readonly Placements[] {
  return finished(packRowsStepwise(pieces, format, most));
}

/**
 * The same, step by step.
 * @param share chance by which rows are varied, in so many ways on each sheet; without it they are not
 */
export function* packRowsStepwise(
  pieces: readonly Piece[],
  format: SheetFormat,
  most = Infinity,
  share?: () => number,
  tries = 0,
): Stepwise<readonly Placements[]> {
  const counts = most === Infinity ? 'exact' : 'atMost';
  const sheets = yield* inRows(pieces, format, most, share, tries);
  if ((yield* verifySheetsStepwise(pieces, format, sheets, counts)).length === 0) return sheets;
  // Should arithmetic ever fail on an odd outline, the pieces are laid by the boxes about them, which cannot.
  const boxes = pieces.map((piece) => ({ ...piece, ring: rectangleAbout(box(piece.ring)) }));
  const plain = yield* inRows(boxes, format, most);
  mustBeSound(yield* verifySheetsStepwise(pieces, format, plain, counts));
  return plain;
}

/** Lays pieces on one sheet after another of its own choice: what they share is prepared once. */
export class RowPacker {
  private readonly kinds: readonly (Kind | undefined)[];

  /** @throws Problem that names a piece which fits on no such sheet. */
  constructor(
    pieces: readonly Piece[],
    private readonly format: SheetFormat,
  ) {
    this.kinds = finished(prepared(pieces, format));
  }

  /** The fullest sheet that the quick rows make of some of each piece; none where there are no pieces. */
  sheet(counts: readonly number[]): Placements {
    const { length, width, offset } = roomOn(this.format);
    const supply = new Supply(counts);
    if (supply.total === 0) return [];
    const wanted = this.kinds.map((kind, i) => (counts[i]! > 0 ? kind : undefined));
    const packing = new Packing(supply, directionsFor(wanted, supply), { x: 0, y: 0, length, width });
    return finished(packing.next()).map((one) => ({ ...one, x: one.x + offset, y: one.y + offset }));
  }
}

function* inRows(
  pieces: readonly Piece[],
  format: SheetFormat,
  most: number,
  share?: () => number,
  tries = 0,
): Stepwise<readonly Placements[]> {
  const { length, width, offset } = roomOn(format);
  const supply = new Supply(pieces.map(({ count }) => count));
  const directions = directionsFor(yield* prepared(pieces, format), supply);
  const packing = new Packing(supply, directions, { x: 0, y: 0, length, width }, share, tries);
  const sheets: Placements[] = [];
  while (supply.total > 0 && sheets.length < most) {
    const laid = yield* packing.next();
    const sheet = laid.map((one): Placement => ({ ...one, x: one.x + offset, y: one.y + offset }));
    for (let again = Math.min(repeats(laid, supply), most - sheets.length); again > 0; again--) {
      sheets.push(sheet);
      for (const { piece } of laid) supply.take(piece);
    }
    for (const { piece } of laid) {
      if (supply.left(piece) === 0) for (const { queue } of directions) queue.drop(piece);
    }
  }
  return sheets;
}

/** Prepares pieces; those of one outline, and of the other foot's, share the work. Those that are not wanted are left out. */
function* prepared(pieces: readonly Piece[], format: SheetFormat): Stepwise<readonly (Kind | undefined)[]> {
  const outlines = new OutlineIndex();
  const prepared: { readonly lays: Lays; readonly area: number }[] = [];
  const kinds: (Kind | undefined)[] = [];
  for (const { key, ring, count, way } of pieces) {
    if (count <= 0) {
      kinds.push(undefined);
      continue;
    }
    const { number, mirrored } = outlines.find(ring);
    const { lays, area: size } = (prepared[number] ??= {
      lays: keptLays(ring, format.knifeRoom / 2),
      area: roundedArea(ring),
    });
    const fitting = mustFit(ring, format, way, key);
    kinds.push({ way, area: size, lays: mirrored ? lays.mirrored : lays, fitting });
    yield;
  }
  return kinds;
}

/** Fills sheet after sheet from one supply, by the plans that did best so far. */
class Packing {
  private readonly filler: SheetFiller;
  private readonly plans: Plans;
  private readonly kept: number;
  private first = true;

  constructor(
    private readonly supply: Supply,
    private readonly directions: readonly Direction[],
    private readonly room: Block,
    private readonly share?: () => number,
    private readonly tries = 0,
  ) {
    this.filler = new SheetFiller(supply, directions);
    this.plans = new Plans(directions);
    this.kept = supply.total <= SMALL_RUN ? KEPT.small : KEPT.large;
  }

  /** The fullest sheet that the plans worth trying give, drawn together where it takes all that is left. Takes nothing. */
  *next(): Stepwise<Placements> {
    const { filler, plans, room, share } = this;
    for (const { built } of this.directions) built.clear();
    const left = this.supply.total;
    let best: FilledSheet = { placements: [], area: 0, length: room.length, width: room.width };
    const attempt = function* (tried: readonly RowsPlan[]): Stepwise<void> {
      for (const plan of tried) {
        const sheet = filler.fill(plan.direction, plan.sequence, room, share && laterBy(share));
        plans.note(plan, sheet.area);
        if (better(sheet, best, room, left)) best = sheet;
        yield;
        if (share && best.placements.length === left) return;
      }
    };
    if (share) yield* attempt(plans.inTurn(this.tries));
    else yield* attempt(this.first ? plans.firstLook() : plans.best(this.kept));
    if (!share && this.first && best.placements.length < left) yield* attempt(plans.closerLook());
    this.first = false;
    // What is left may fit in none of the directions that did best.
    if (best.placements.length === 0) yield* attempt(plans.firstLook());
    if (best.placements.length === 0) throw new Error('A piece that fits on an empty sheet was not laid.');
    if (best.placements.length < left) return best.placements;
    return drawnTogether(best, plans.best(DRAWN_BY), filler, room).placements;
  }
}

/** How often a sheet can be cut from what is left: at least once. */
function repeats(sheet: Placements, supply: Supply): number {
  const used = new Map<number, number>();
  for (const { piece } of sheet) used.set(piece, (used.get(piece) ?? 0) + 1);
  let most = Infinity;
  for (const [piece, count] of used) most = Math.min(most, Math.floor(supply.left(piece) / count));
  return most;
}

/** The fuller sheet; of two that take all that is left, the one that leaves the larger rectangle over. */
function better(a: FilledSheet, b: FilledSheet, room: Block, left: number): boolean {
  if (a.placements.length < left || b.placements.length < left) return a.area > b.area;
  return leftOver(a, room) > leftOver(b, room) + FUZZ;
}

/** Rows along and across, the pieces lying or standing in them where any may do either. */
function directionsFor(kinds: readonly (Kind | undefined)[], supply: Supply): readonly Direction[] {
  const free = kinds.some((kind) => kind?.way.kind === 'any');
  const areas = kinds.map((kind) => kind?.area ?? 0);
  return [true, false].flatMap((along) =>
    (free ? [false, true] : [!along]).map((standing): Direction => {
      const lays = kinds.map((kind) => (kind ? turnsInRow(kind, along, standing) : []));
      const heights = lays.map(([lay]) => lay?.height ?? 0);
      const order = [...kinds.keys()].filter((kind) => kinds[kind]);
      order.sort((a, b) => heights[b]! - heights[a]! || areas[b]! - areas[a]! || a - b);
      return { along, lays, areas, queue: new Queue(order, supply), built: new BuiltRows() };
    }),
  );
}

/** The turns of a piece in a row: one or two, end for end, standing or lying where it may do either. */
function turnsInRow({ lays, fitting, way }: Kind, along: boolean, standing: boolean): readonly Lay[] {
  const frame = along ? 0 : 90;
  // Seen along a row that runs across the sheet everything lies a quarter turn further on.
  const wanted = way.kind === 'any' && fitting % 90 === 0 ? (standing ? 90 : 0) : fitting + frame;
  const turns = [wanted, wanted + 180].map(wholeTurn).filter((turn) => allows(way, turn - frame));
  return turns.map((turn) => lays.at(turn));
}
