import { itemAt } from '../../item-at';
import { finished, type Stepwise } from '../../stepwise';
import { box } from '../../geometry/box';
import { cornersOf, edgesGap, gap, type LaidOutline, laidGap } from '../../geometry/gap';
import { inside } from '../../geometry/inside';
import { moved } from '../../geometry/moved';
import { depth, overlap } from '../../geometry/overlap';
import { difference } from '../../geometry/regions';
import type { Point, Ring } from '../../geometry/ring';
import { type Layout, laidSheets, type Placement, type Placements } from './layout';
import { BEST, type NaturalSheet, type Quality } from './natural-sheet';
import type { Piece } from './piece';
import { type SheetFormat, type SheetName, TOLERANCE } from './sheet';
import { allows } from './way';

/** What is wrong with a layout. `on` names the sheet, `keys` name the pieces. */
export type Fault =
  | {
      readonly kind: 'knifeRoom';
      readonly on: SheetName;
      readonly keys: readonly [string, string];
      readonly gap: number;
    }
  | { readonly kind: 'edgeTrim'; readonly on: SheetName; readonly keys: readonly [string]; readonly gap: number }
  | { readonly kind: 'hole'; readonly on: SheetName; readonly keys: readonly [string]; readonly gap: number }
  | { readonly kind: 'quality'; readonly on: SheetName; readonly keys: readonly [string] }
  | { readonly kind: 'way'; readonly on: SheetName; readonly keys: readonly [string]; readonly turn: number }
  | { readonly kind: 'pair'; readonly on: SheetName; readonly keys: readonly [string] }
  | { readonly kind: 'count'; readonly keys: readonly [string]; readonly laid: number; readonly wanted: number }
  | { readonly kind: 'unknown'; readonly on: SheetName; readonly keys: readonly []; readonly piece: number }
  | { readonly kind: 'offcut'; readonly on: SheetName; readonly keys: readonly [] };

/**
 * Checks a layout piece by piece against what was asked, by nothing but the outlines as they lie: the distance between
 * every two on a sheet (their shared area where they touch), the distance from the sheet's edges and holes, the quality of
 * the ground, the direction, and how many there are. It uses nothing of what made the layout.
 * @param format of the sheets, with the offcuts that there are
 * @param counts 'exact': each piece as often as wanted; 'atMost': no more often
 * @returns no faults for a layout that can be cut
 */
export function verifyLayout(
  pieces: readonly Piece[],
  format: SheetFormat,
  layout: Layout,
  counts: 'exact' | 'atMost' = 'exact',
): readonly Fault[] {
  return finished(verifyLayoutStepwise(pieces, format, layout, counts));
}

/** The same, sheet by sheet. */
export function* verifyLayoutStepwise(
  pieces: readonly Piece[],
  format: SheetFormat,
  layout: Layout,
  counts: 'exact' | 'atMost' = 'exact',
): Stepwise<readonly Fault[]> {
  const faults: Fault[] = [];
  const turned = new TurnedOutlines(pieces);
  const laid = new Map<number, number>();
  const shelf = new Set(format.offcuts?.map(({ code }) => code));
  for (const { name: on, format: own, placements } of laidSheets(layout, format)) {
    if ('offcut' in on && !shelf.delete(on.offcut)) faults.push({ kind: 'offcut', on, keys: [] });
    const placed: Placed[] = [];
    for (const { piece, x, y, turn } of placements) {
      const wanted = pieces[piece];
      if (!wanted || ![x, y, turn].every(Number.isFinite)) {
        faults.push({ kind: 'unknown', on, keys: [], piece });
        continue;
      }
      laid.set(piece, (laid.get(piece) ?? 0) + 1);
      if (!allows(wanted.way, turn)) faults.push({ kind: 'way', on, keys: [wanted.key], turn });
      placed.push({ key: wanted.key, outline: turned.laid(piece, turn, x, y), quality: wanted.quality ?? BEST });
    }
    for (const {
      key,
      outline: { box: b },
    } of placed) {
      const edge = Math.min(b.left, b.bottom, own.length - b.right, own.width - b.top);
      if (edge < own.edgeTrim - TOLERANCE) faults.push({ kind: 'edgeTrim', on, keys: [key], gap: edge });
    }
    const { natural } = own;
    if (natural) for (const one of placed) faults.push(...offGround(one, own, natural, on));
    faults.push(...tooClose(placed, own.knifeRoom, on), ...unmatched(pieces, own, placements, on));
    yield;
  }
  pieces.forEach(({ key, count }, piece) => {
    const had = laid.get(piece) ?? 0;
    const wrong = counts === 'exact' ? had !== count : had > count;
    if (wrong) faults.push({ kind: 'count', keys: [key], laid: had, wanted: count });
  });
  return faults;
}

/** Checks whole sheets in the same way. */
export function verifySheets(
  pieces: readonly Piece[],
  format: SheetFormat,
  sheets: readonly Placements[],
  counts: 'exact' | 'atMost' = 'exact',
): readonly Fault[] {
  return finished(verifySheetsStepwise(pieces, format, sheets, counts));
}

/** The same, sheet by sheet. */
export function verifySheetsStepwise(
  pieces: readonly Piece[],
  format: SheetFormat,
  sheets: readonly Placements[],
  counts: 'exact' | 'atMost' = 'exact',
): Stepwise<readonly Fault[]> {
  return verifyLayoutStepwise(pieces, format, { offcuts: [], sheets }, counts);
}

interface Placed {
  readonly key: string;
  readonly outline: LaidOutline;
  readonly quality: Quality;
}

/** The outlines of pieces as they are turned, each turned once. */
class TurnedOutlines {
  private readonly known: Map<number, LaidOutline>[];

  constructor(private readonly pieces: readonly Piece[]) {
    this.known = pieces.map(() => new Map());
  }

  laid(piece: number, turn: number, x: number, y: number): LaidOutline {
    const own = this.known[piece]!;
    let outline = own.get(turn);
    if (!outline) {
      const ring = moved(this.pieces[piece]!.ring, turn);
      own.set(turn, (outline = { corners: cornersOf(ring), x: 0, y: 0, box: box(ring) }));
    }
    const { left, bottom, right, top } = outline.box;
    return {
      corners: outline.corners,
      x,
      y,
      box: { left: left + x, bottom: bottom + y, right: right + x, top: top + y },
    };
  }
}

function ringOf({ corners, x, y }: LaidOutline): Ring {
  return Array.from({ length: corners.length / 2 }, (_, i): Point => [corners[2 * i]! + x, corners[2 * i + 1]! + y]);
}

/** Where a piece leaves a natural outline or comes too near its edge, a hole, or ground that is not good enough. */
function offGround(
  { key, outline: laid, quality }: Placed,
  { edgeTrim }: SheetFormat,
  { outline, holes, zones, quality: base }: NaturalSheet,
  on: SheetName,
): Fault[] {
  const faults: Fault[] = [];
  const enough = Math.max(edgeTrim, TOLERANCE);
  const ring = ringOf(laid);
  const [x, y] = itemAt(ring, 0);
  const edge = inside(outline, x, y) ? edgesGap(ring, outline, enough) : 0;
  const flush = edgeTrim <= TOLERANCE && depth(difference([ring], [outline])) <= TOLERANCE;
  if (edge < edgeTrim - TOLERANCE || (edge === 0 && !flush)) {
    faults.push({ kind: 'edgeTrim', on, keys: [key], gap: edge });
  }
  for (const hole of holes) {
    const between = gap(ring, hole, enough);
    const beside = edgeTrim <= TOLERANCE && overlap(ring, hole) <= TOLERANCE;
    if (between < edgeTrim - TOLERANCE || (between === 0 && !beside)) {
      faults.push({ kind: 'hole', on, keys: [key], gap: between });
    }
  }
  const good = zones.filter((zone) => zone.quality <= quality).map((zone) => zone.ring);
  const poor = zones.filter((zone) => zone.quality > quality).map((zone) => zone.ring);
  const spoiled = poor.some((zone) => overlap(ring, zone) > TOLERANCE);
  const wanting = base > quality && depth(difference([ring], good)) > TOLERANCE;
  if (spoiled || wanting) faults.push({ kind: 'quality', on, keys: [key] });
  return faults;
}

/** How far matching places may be off, and pieces side by side apart beyond the knife room, mm. */
const MATCHED = 0.05;
const BESIDE = 1;

/** Pieces of pairs that are to come from matching places of one sheet, and do not. */
function unmatched(
  pieces: readonly Piece[],
  { pairs = 'anywhere', natural, width, knifeRoom }: SheetFormat,
  placements: Placements,
  on: SheetName,
): Fault[] {
  if (pairs === 'anywhere') return [];
  const backbone = natural?.backbone ?? width / 2;
  const asLaid = ({ piece, turn, x, y }: Placement) => moved(itemAt(pieces, piece).ring, turn, x, y);
  const match = (a: Placement, b: Placement) => {
    const same = (one: number, other: number, by: number) => Math.abs(one - other) <= by;
    if (!same(a.x, b.x, MATCHED)) return false;
    if (pairs === 'across the backbone') {
      return same(a.y + b.y, 2 * backbone, MATCHED) && Math.cos(((a.turn + b.turn) * Math.PI) / 180) > 1 - 1e-9;
    }
    const alike = Math.cos(((a.turn - b.turn) * Math.PI) / 180) > 1 - 1e-9;
    return alike && gap(asLaid(a), asLaid(b), knifeRoom + 2 * BESIDE) <= knifeRoom + BESIDE;
  };
  const single: Placement[] = [];
  for (const placement of placements) {
    const pair = pieces[placement.piece]?.pair;
    if (pair === undefined) continue;
    const other = single.findIndex(
      (one) => one.piece !== placement.piece && pieces[one.piece]?.pair === pair && match(one, placement),
    );
    if (other < 0) single.push(placement);
    else single.splice(other, 1);
  }
  return single.map(({ piece }) => ({ kind: 'pair', on, keys: [itemAt(pieces, piece).key] }));
}

/** Every two pieces of a sheet that do not keep the knife room, found by sweeping them from left to right. */
/** Pairs of one sheet that are told of as too close: of thousands on one spot every two would be. */
const MOST_TOLD = 1000;

function tooClose(placed: readonly Placed[], room: number, on: SheetName): Fault[] {
  const faults: Fault[] = [];
  let passed: Placed[] = [];
  for (const b of [...placed].sort((one, other) => one.outline.box.left - other.outline.box.left)) {
    const { box: boxB } = b.outline;
    passed = passed.filter((a) => boxB.left < a.outline.box.right + room);
    for (const a of passed) {
      const { box: boxA } = a.outline;
      if (boxB.bottom >= boxA.top + room || boxA.bottom >= boxB.top + room) continue;
      const between = laidGap(a.outline, b.outline, Math.max(room, TOLERANCE));
      if (between >= room - TOLERANCE && between > 0) continue;
      // Pieces that may lie edge on edge touch or share a sliver thinner than arithmetic can avoid.
      if (room <= TOLERANCE && overlap(ringOf(a.outline), ringOf(b.outline)) <= TOLERANCE) continue;
      faults.push({ kind: 'knifeRoom', on, keys: [a.key, b.key], gap: between });
      if (faults.length === MOST_TOLD) return faults;
    }
    passed.push(b);
  }
  return faults;
}

/** A fault in words, for a message. */
export function describeFault(fault: Fault): string {
  const here = (name: SheetName) => ('offcut' in name ? `offcut ${name.offcut}` : `sheet ${name.sheet}`);
  switch (fault.kind) {
    case 'knifeRoom':
      return `${here(fault.on)}: ${fault.keys[0]} and ${fault.keys[1]} lie ${fault.gap.toFixed(2)} mm apart`;
    case 'edgeTrim':
      return `${here(fault.on)}: ${fault.keys[0]} lies ${fault.gap.toFixed(2)} mm from the edge`;
    case 'hole':
      return `${here(fault.on)}: ${fault.keys[0]} lies ${fault.gap.toFixed(2)} mm from a hole`;
    case 'quality':
      return `${here(fault.on)}: ${fault.keys[0]} lies on a zone whose quality does not do for it`;
    case 'pair':
      return `${here(fault.on)}: ${fault.keys[0]} has no other of its pair in the matching place`;
    case 'way':
      return `${here(fault.on)}: ${fault.keys[0]} lies turned by ${fault.turn.toFixed(1)}°, which it may not`;
    case 'count':
      return `${fault.keys[0]} is laid ${fault.laid} times and wanted ${fault.wanted} times`;
    case 'unknown':
      return `${here(fault.on)}: piece ${fault.piece} is not in the list`;
    case 'offcut':
      return `${here(fault.on)} is not on the shelf, or is laid twice`;
  }
}

/** Stops a layout with faults from leaving the core: it would be a mistake of the tool, never of the maker. */
export function mustBeSound(faults: readonly Fault[]): void {
  if (faults.length)
    throw new Error(`The layout does not stand the check: ${faults.slice(0, 3).map(describeFault).join('; ')}`);
}
