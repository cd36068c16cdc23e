import { itemAt } from '../../item-at';
import { finished, type Stepwise } from '../../stepwise';
import { roundedArea } from '../../geometry/area';
import { Problem } from '../../problem';
import { Lays } from '../rows/lay';
import type { Placement, Placements } from '../sheet/layout';
import type { Piece } from '../sheet/piece';
import { clearance } from '../rows/reach';
import type { SheetFormat } from '../sheet/sheet';
import type { Pairs } from '../sheet/matching-pairs';
import { mustBeSound, verifySheetsStepwise } from '../sheet/verify-layout';
import { type Way, wholeTurn } from '../sheet/way';
import { KeptShapes } from './kept-shapes';
import { layOut, type LaidOut, type Part, type Posture, type Sweep, SWEEPS, type Unit } from './lay-out';
import { BEST, type NaturalSheet, rectangular } from '../sheet/natural-sheet';
import type { Shapes } from './shapes';

/** Lines of the sweep lie this far apart, mm; where a piece finds no place on an empty sheet, closer. */
const SPACING = 4;
const CLOSE_SPACING = 0.5;

/** More lines than this on a sheet are spread further apart. */
const MOST_LINES = 400;

/** Pieces up to which every sweep is tried on every sheet; above that the two that did best on the first. */
const SMALL_RUN = 150;

/** Pieces that match lie this much further apart than the knife needs, mm, so that rounding does no harm; or amply so. */
const TO_SPARE = 1e-3;
const AMPLE = 0.2;

/**
 * Lays pieces on sheets of a natural outline, or on rectangles where pairs are to match, clear of holes and of zones whose quality does not do, quickly: the pieces
 * that need the best ground and the largest ones first, each at the first free place of a sweep over the sheet; of several
 * sweeps the fullest sheet stays.
 * @throws Problem that names a piece which fits nowhere on the sheet
 */
export function packNatural(pieces: readonly Piece[], format: SheetFormat): readonly Placements[] {
  return finished(packNaturalStepwise(pieces, format));
}

/** The same, step by step. */
export function* packNaturalStepwise(pieces: readonly Piece[], format: SheetFormat): Stepwise<readonly Placements[]> {
  const layout = yield* swept(pieces, format, TO_SPARE);
  if ((yield* verifySheetsStepwise(pieces, format, layout)).length === 0) return layout;
  // Should arithmetic ever fail on an odd outline, the pieces are laid anew with more room than they need.
  const roomier = yield* swept(pieces, format, AMPLE);
  mustBeSound(yield* verifySheetsStepwise(pieces, format, roomier));
  return roomier;
}

function* swept(pieces: readonly Piece[], format: SheetFormat, spare: number): Stepwise<readonly Placements[]> {
  const { natural: sheet = rectangular(format), pairs = 'anywhere' } = format;
  const before = new KeptShapes(pieces, format, sheet, spare - TO_SPARE);
  const { shapes } = before;
  const units = yield* unitsOf(pieces, format, sheet, pairs, shapes, spare);
  let left: readonly number[] = units.map(({ count }) => count);
  const most = left.reduce((sum, count) => sum + count, 0);
  const spacing = Math.max(SPACING, format.width / MOST_LINES);
  const layout: Placement[][] = [];
  let sweeps: readonly Sweep[] = SWEEPS;
  const lay = (sweep: Sweep, apart: number) =>
    layOut(units, left, shapes, format, sheet.backbone, sweep, apart, before.laid);
  for (;;) {
    const next = units.find((_, i) => itemAt(left, i) > 0);
    if (!next) break;
    const tried: (LaidOut & { readonly sweep: Sweep })[] = [];
    for (const sweep of sweeps) {
      const laid = yield* lay(sweep, spacing);
      tried.push({ sweep, ...laid });
      // No other sheet can be fuller than one that takes all that is left.
      if (laid.used.every((count, i) => count === left[i])) break;
    }
    tried.sort((a, b) => b.area - a.area);
    if (most > SMALL_RUN && layout.length === 0) sweeps = tried.slice(0, 2).map(({ sweep }) => sweep);
    const fullest = itemAt(tried, 0);
    const { placements, used } = fullest.placements.length ? fullest : yield* lay(itemAt(SWEEPS, 0), CLOSE_SPACING);
    if (placements.length === 0) throw fitsNowhere(next.key, sheet);
    const holds = left.map((count, i) => ({ count, used: itemAt(used, i) }));
    const again = Math.min(...holds.map((one) => (one.used === 0 ? Infinity : Math.floor(one.count / one.used))));
    for (let k = 0; k < again; k++) layout.push([...placements]);
    left = holds.map((one) => one.count - again * one.used);
  }
  before.keep();
  return layout;
}

/** What is laid together, the pieces that need the best quality first, then the largest. */
function* unitsOf(
  pieces: readonly Piece[],
  format: SheetFormat,
  sheet: NaturalSheet,
  pairs: Pairs,
  shapes: Shapes,
  spare: number,
): Stepwise<readonly (Unit & { readonly count: number; readonly quality: number })[]> {
  const mates = pairs === 'anywhere' ? new Map<number, number>() : matesOf(pieces);
  const second = new Set(mates.values());
  const units: (Unit & { readonly count: number; readonly quality: number })[] = [];
  for (const [kind, { key, ring, count, way, quality = BEST }] of pieces.entries()) {
    if (count <= 0 || second.has(kind)) continue;
    const mate = mates.get(kind);
    const postures = turnsOf(way).flatMap((turn) =>
      mate === undefined
        ? [alone({ shape: shapes.at(kind, turn), dy: 0, across: false })]
        : matched(pieces, kind, mate, turn, format, sheet, pairs, shapes, spare),
    );
    const size = roundedArea(ring) + (mate === undefined ? 0 : roundedArea(itemAt(pieces, mate).ring));
    units.push({ key, kind: JSON.stringify([kind, mate, way]), postures, area: size, count, quality });
    yield;
  }
  return units.sort((a, b) => a.quality - b.quality || b.area - a.area);
}

function turnsOf(way: Way): readonly number[] {
  switch (way.kind) {
    case 'any':
      return [0, 180, 90, 270];
    case 'endForEnd':
      return [0, 180];
    case 'oneWay':
      return [0];
    case 'within':
      return [...new Set([0, 180, way.degrees, 180 + way.degrees, -way.degrees, 180 - way.degrees].map(wholeTurn))];
  }
}

function alone(part: Part): Posture {
  return { parts: [part], from: -Infinity, to: Infinity };
}

/** The ways to lay a pair: the first piece to either side of the second. */
function matched(
  pieces: readonly Piece[],
  kind: number,
  mate: number,
  turn: number,
  format: SheetFormat,
  sheet: NaturalSheet,
  pairs: Pairs,
  shapes: Shapes,
  spare: number,
): readonly Posture[] {
  const half = format.knifeRoom / 2 + spare;
  const first = Lays.of(itemAt(pieces, kind).ring, half).at(turn);
  const shape = shapes.at(kind, turn);
  const part = { shape, dy: 0, across: false };
  if (pairs === 'across the backbone') {
    const other = { shape: shapes.at(mate, wholeTurn(-turn)), dy: 0, across: true };
    return [
      { parts: [part, other], from: sheet.backbone - first.box.bottom, to: Infinity },
      { parts: [part, other], from: -Infinity, to: sheet.backbone - first.box.top },
    ];
  }
  const second = Lays.of(itemAt(pieces, mate).ring, half).at(turn);
  const other = shapes.at(mate, turn);
  const above = clearance(first.sides.top, second.sides.bottom, 0);
  const below = -clearance(second.sides.top, first.sides.bottom, 0);
  return [above, below].map((dy) => ({
    parts: [part, { shape: other, dy, across: false }],
    from: -Infinity,
    to: Infinity,
  }));
}

/** The other foot's piece of each first one of a pair. */
function matesOf(pieces: readonly Piece[]): ReadonlyMap<number, number> {
  const waiting = new Map<string, number>();
  const mates = new Map<number, number>();
  pieces.forEach(({ pair, count }, kind) => {
    if (pair === undefined || count <= 0) return;
    const first = waiting.get(pair);
    if (first === undefined) waiting.set(pair, kind);
    else if (itemAt(pieces, first).count === count) mates.set(first, kind);
  });
  return mates;
}

function fitsNowhere(key: string, { holes, zones }: NaturalSheet): Problem {
  const lies = [holes.length ? 'clear of its holes' : '', zones.length ? 'in the quality that it needs' : ''].filter(
    Boolean,
  );
  const where = ['within the outline and its edge trim', ...lies].join(', ');
  return new Problem(
    'unavailable',
    { argument: key },
    `the piece finds no place ${where}; take a larger sheet, or let the piece lie another way or be of a lesser quality`,
  );
}
