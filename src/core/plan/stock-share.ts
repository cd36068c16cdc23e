import { itemAt } from '../item-at';
import { bytesOfRecords } from '../bytes';
import { quickLayoutStepwise } from '../cutting/quick-layout';
import { type Layout, laidSheets } from '../cutting/sheet/layout';
import { leastSheets } from '../cutting/sheet/least-sheets';
import { rectangular } from '../cutting/sheet/natural-sheet';
import type { Piece } from '../cutting/sheet/piece';
import type { SheetFormat } from '../cutting/sheet/sheet';
import { Fingerprint } from '../fingerprint';
import { area } from '../geometry/area';
import { boxAbout, boxMoved } from '../geometry/box';
import { intersection } from '../geometry/regions';
import type { Point } from '../geometry/ring';
import { Memo } from '../memo';
import type { Stepwise } from '../stepwise';
import type { Stock } from '../stock/stock';
import type { OffcutRow } from './inputs';
import { laidPieces, type StockPieces } from './pieces';
import { planMemory } from './plan-memory';

/** What the formats of a stock share. */
export interface ToLay {
  readonly own: readonly StockPieces[];
  readonly pieces: readonly Piece[];
  /** Stands for the outlines, counts and qualities of the pieces, and for their names too. */
  readonly outlines: string;
  readonly names: string;
}

/** Sheets of one format, and what is cut from them. */
export interface Share {
  /** In which the format is sold. */
  readonly offers: readonly Stock[];
  readonly format: SheetFormat;
  /** Of each piece; without them all of it. */
  readonly counts?: readonly number[] | undefined;
  /** Where it is laid otherwise than the quick rows would. */
  readonly layout?: Layout | undefined;
  readonly ground?: number | undefined;
  readonly searched?: boolean;
}

/** What does not change with names, prices and stocks on hand. */
export interface Laid {
  readonly layout: Layout;
  readonly net: number;
  /** Area of the ground that the pieces take up, on all sheets together, mm². */
  readonly ground: number;
  readonly least: number;
}

const laidByContent = new Memo<Laid>(planMemory, 'layout', ({ layout }) => bytesOfLayout(layout));

export function bytesOfLayout({ offcuts, sheets }: Layout): number {
  const all = [...offcuts.map(({ placements }) => placements), ...sheets];
  // A sheet that is cut several times alike is one list.
  return bytesOfRecords(all.length) + [...new Set(all)].reduce((sum, { length }) => sum + bytesOfRecords(length), 0);
}

/** What is to be laid of a stock. @param spoiled share of the pieces that are cut again */
export function toLay(own: readonly StockPieces[], { direction }: Pick<Stock, 'direction'>, spoiled = 0): ToLay {
  const outlines = new Fingerprint().number(spoiled);
  const names = new Fingerprint();
  for (const one of own) {
    outlines.text(one.content);
    names.text(one.names);
  }
  const pieces = own
    .flatMap((one) => laidPieces(one, direction))
    .map((piece) => (spoiled === 0 ? piece : { ...piece, count: withSpoiled(piece.count, spoiled) }));
  return { own, pieces, outlines: outlines.toString(), names: names.toString() };
}

/** Pieces to cut so that some are left where a share is spoiled. */
export function withSpoiled(count: number, spoiled: number): number {
  return Math.ceil(count / (1 - spoiled) - 1e-9);
}

/** The pieces of a share, each as often as it is cut of it. */
export function piecesOf({ counts }: Share, { pieces }: ToLay): readonly Piece[] {
  return counts ? pieces.map((piece, i) => ({ ...piece, count: counts[i]! })) : pieces;
}

/** Stands for the pieces of a share and for its sheets. */
export function keyOf({ offers: [stock], format, counts }: Share, { outlines }: ToLay): string {
  const print = new Fingerprint().text(JSON.stringify([format, stock!.direction])).text(outlines);
  for (const count of counts ?? []) print.number(count);
  return print.toString();
}

/** How the quick rows lay a share. */
export function* laidOf(share: Share, all: ToLay): Stepwise<Laid> {
  const key = keyOf(share, all);
  return laidByContent.find(key) ?? laidByContent.keep(key, yield* layQuickly(piecesOf(share, all), share.format));
}

function* layQuickly(pieces: readonly Piece[], format: SheetFormat): Stepwise<Laid> {
  const layout = yield* quickLayoutStepwise(pieces, format);
  const net = pieces.reduce((sum, { ring, count }) => sum + area(ring) * count, 0);
  const ground = groundOf(layout, pieces, format);
  yield;
  return { layout, net, ground, least: leastSheets(pieces, format, layout.sheets.length) };
}

/**
 * A sheet's format, with the offcuts of it; of a hide without an outline, a sheet of its proportions and of its usable
 * area.
 */
export function formatOf(
  { length, width, natural, pairs, usableShare, knifeRoom, edgeTrim }: Stock,
  own: readonly OffcutRow[],
): SheetFormat {
  const more = {
    ...(pairs === 'anywhere' ? {} : { pairs }),
    ...(own.length > 0 && { offcuts: own.map((one) => ({ code: one.code, length: one.length, width: one.width })) }),
  };
  if (natural) return { length, width, natural, knifeRoom, edgeTrim, ...more };
  const scale = Math.sqrt(usableShare);
  return { length: length * scale, width: width * scale, knifeRoom, edgeTrim, ...more };
}

/** Area of the boxes about the pieces of each sheet, as far as they lie on it, mm². */
export function groundOf(layout: Layout, pieces: readonly Piece[], format: SheetFormat): number {
  return laidSheets(layout, format).reduce((sum, { format: { natural }, placements }) => {
    if (placements.length === 0) return sum;
    const { left, right, bottom, top } = boxAbout(
      placements.map(({ piece, turn, x, y }) => boxMoved(itemAt(pieces, piece).ring, turn, x, y)),
    );
    const size = { length: right - left, width: top - bottom };
    if (!natural) return sum + size.length * size.width;
    const about = rectangular(size).outline.map(([x, y]): Point => [x + left, y + bottom]);
    return sum + intersection([natural.outline], [about]).reduce((all, ring) => all + area(ring), 0);
  }, 0);
}
