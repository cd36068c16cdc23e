import { bytesOfRecords } from '../bytes';
import { quickLayoutStepwise } from '../cutting/quick-layout';
import { type Layout, laidSheets, type Placement } from '../cutting/sheet/layout';
import { leastSheets } from '../cutting/sheet/least-sheets';
import { rectangular } from '../cutting/sheet/natural-sheet';
import type { Piece } from '../cutting/sheet/piece';
import type { SheetFormat, ShelfOffcut } from '../cutting/sheet/sheet';
import { describeFault, verifyLayoutStepwise } from '../cutting/sheet/verify-layout';
import { derived } from '../derived';
import { Fingerprint } from '../fingerprint';
import { area } from '../geometry/area';
import { boxAbout, boxMoved } from '../geometry/box';
import { intersection } from '../geometry/regions';
import type { Point } from '../geometry/ring';
import { Memo } from '../memo';
import { Problem } from '../problem';
import type { Stepwise } from '../stepwise';
import { sheetArea, type Stock } from '../stock/stock';
import { fold } from './codes';
import type { LayoutRow, OffcutRow, PlanInput } from './inputs';
import { FEET, laidPieces, type PieceLine, pieceKey, piecesFrom, type StockPieces } from './pieces';
import { planMemory } from './plan-memory';
import type { Runs } from './runs';

/** How the pieces of one stock lie on its sheets. */
export interface StockCutting {
  readonly stock: Stock;
  readonly lines: readonly PieceLine[];
  readonly format: SheetFormat;
  readonly pieces: readonly Piece[];
  /** Stands for the pieces, by outline, count, quality and name, and for the sheets that they are to be cut from. */
  readonly content: string;
  readonly layout: Layout;
  /** Pieces to cut. */
  readonly count: number;
  /** Net area of all pieces, mm². */
  readonly net: number;
  /** Area of the ground that the pieces take up: of the boxes about those of each sheet, mm². */
  readonly ground: number;
  /** Net area over the area of the sheets and offcuts. */
  readonly areaUse: number;
  /** Lost between the pieces, as a share of the ground that they take up on each sheet. */
  readonly lostBetween: number;
  /** Lost outside of that ground, as a share of the sheets. */
  readonly lostOutside: number;
  /** No fewer sheets would be enough. */
  readonly least: number;
  /** Whole sheets that the layout takes, and offcuts that it uses. */
  readonly sheets: number;
  readonly offcuts: readonly ShelfOffcut[];
  /** Where the layout comes from: the quick rows, or a long search's table. */
  readonly source: 'rows' | 'search';
  /** Whole sheets that the quick rows would take. */
  readonly rows: number;
  /** Why a given layout is not used. */
  readonly ignored?: string | undefined;
}

export interface Cutting {
  readonly stocks: readonly StockCutting[];
  readonly problems: readonly Problem[];
}

/** What does not change with names, prices and stocks on hand. */
interface Laid {
  readonly layout: Layout;
  readonly net: number;
  /** Area of the ground that the pieces take up, on all sheets together, mm². */
  readonly ground: number;
  readonly least: number;
}

/** What became of a layout that a long search wrote down: with its ground, or why it is not used. */
type Given =
  | { readonly layout: Layout; readonly ground: number; readonly ignored?: undefined }
  | { readonly layout?: undefined; readonly ignored: string };

const laidByContent = new Memo<Laid>(planMemory, 'layout', ({ layout }) => bytesOfLayout(layout));
const givenByContent = new Memo<Given>(planMemory, 'layout given', ({ layout }) =>
  layout ? bytesOfLayout(layout) : bytesOfRecords(1),
);

function bytesOfLayout({ offcuts, sheets }: Layout): number {
  const all = [...offcuts.map(({ placements }) => placements), ...sheets];
  // A sheet that is cut several times alike is one list.
  return bytesOfRecords(all.length) + [...new Set(all)].reduce((sum, { length }) => sum + bytesOfRecords(length), 0);
}

/**
 * Third stage, of one stock, step by step: the pieces of all styles and sizes on shared sheets; undefined where none are cut
 * from it.
 */
export function* cutStock(
  stock: Stock,
  { styles }: Pick<Runs, 'styles'>,
  input: Pick<PlanInput, 'layouts' | 'offcuts'>,
): Stepwise<StockCutting | Problem | undefined> {
  const own = styles.flatMap((run) => piecesFrom(run, stock.code) ?? []);
  if (own.length === 0) return undefined;
  try {
    return yield* laidOn(stock, own, input);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return new Problem(
      error.code,
      { argument: 'stock', table: 'Bottom stock', row: stock.row, column: 'Stock' },
      `${[stock.code, ...pieceNamed(error, own)].join(', ')}: ${error.reason}`,
    );
  }
}

/** The piece that a problem is about, if it is about one. */
function pieceNamed({ place: { argument } }: Problem, own: readonly StockPieces[]): readonly string[] {
  const names = (line: PieceLine) => FEET.some((foot) => pieceKey(line, foot) === argument);
  return own.some(({ lines }) => lines.some(names)) ? [argument] : [];
}

function* laidOn(
  stock: Stock,
  own: readonly StockPieces[],
  input: Pick<PlanInput, 'layouts' | 'offcuts'>,
): Stepwise<StockCutting> {
  const format = formatOf(stock, input.offcuts);
  const count = own.reduce((sum, one) => sum + one.count, 0);
  const pieces = own.flatMap((one) => laidPieces(one, stock.direction));
  const outlines = new Fingerprint().text(JSON.stringify([format, stock.direction]));
  for (const one of own) outlines.text(one.content);
  const key = outlines.toString();
  const named = new Fingerprint().text(key).text(fold(stock.code));
  for (const one of own) named.text(one.names);
  const content = named.toString();
  const laid = laidByContent.find(key) ?? laidByContent.keep(key, yield* layQuickly(pieces, format));
  const searched = yield* givenLayout(stock, input.layouts, pieces, format, content);
  const taken = laid.layout.sheets.length;
  const given = searched?.layout?.sheets.length ?? 0;
  const worse = given > taken ? `it takes ${given} sheets, and the quick rows ${taken}` : undefined;
  const better = searched?.layout && worse === undefined ? searched : undefined;
  const { layout, ground } = better ?? laid;
  const { net, least } = laid;
  const sheets = layout.sheets.length;
  const used = new Set(layout.offcuts.map(({ code }) => code));
  const offcuts = (format.offcuts ?? []).filter(({ code }) => used.has(code));
  const cutFrom = sheets * sheetArea(stock) + offcuts.reduce((sum, { length, width }) => sum + length * width, 0);
  return {
    stock,
    lines: own.flatMap(({ lines }) => lines),
    format,
    pieces,
    content,
    layout,
    count,
    net,
    ground,
    areaUse: net / cutFrom,
    lostBetween: 1 - net / ground,
    lostOutside: 1 - ground / cutFrom,
    least,
    sheets,
    offcuts,
    source: better ? 'search' : 'rows',
    rows: taken,
    ignored: searched?.ignored ?? worse,
  };
}

function* layQuickly(pieces: readonly Piece[], format: SheetFormat): Stepwise<Laid> {
  const layout = yield* quickLayoutStepwise(pieces, format);
  const net = pieces.reduce((sum, { ring, count }) => sum + area(ring) * count, 0);
  const ground = groundOf(layout, pieces, format);
  yield;
  return { layout, net, ground, least: leastSheets(pieces, format) };
}

/**
 * A sheet's format, with the offcuts of it; of a hide without an outline, a sheet of its proportions and of its usable
 * area.
 */
function formatOf(
  { code, length, width, natural, pairs, usableShare, knifeRoom, edgeTrim }: Stock,
  shelf: readonly OffcutRow[],
): SheetFormat {
  const own = shelf.filter(({ stock }) => fold(stock) === fold(code));
  const more = {
    ...(pairs === 'anywhere' ? {} : { pairs }),
    ...(own.length > 0 && { offcuts: own.map((one) => ({ code: one.code, length: one.length, width: one.width })) }),
  };
  if (natural) return { length, width, natural, knifeRoom, edgeTrim, ...more };
  const scale = Math.sqrt(usableShare);
  return { length: length * scale, width: width * scale, knifeRoom, edgeTrim, ...more };
}

/** Area of the boxes about the pieces of each sheet, as far as they lie on it, mm². */
function groundOf(layout: Layout, pieces: readonly Piece[], format: SheetFormat): number {
  return laidSheets(layout, format).reduce((sum, { format: { natural }, placements }) => {
    if (placements.length === 0) return sum;
    const { left, right, bottom, top } = boxAbout(
      placements.map(({ piece, turn, x, y }) => boxMoved((pieces[piece] as Piece).ring, turn, x, y)),
    );
    const size = { length: right - left, width: top - bottom };
    if (!natural) return sum + size.length * size.width;
    const about = rectangular(size).outline.map(([x, y]): Point => [x + left, y + bottom]);
    return sum + intersection([natural.outline], [about]).reduce((all, ring) => all + area(ring), 0);
  }, 0);
}

/**
 * A layout that a long search wrote down, if it still fits the pieces: it is checked before its first use, and again as
 * soon as any of its rows, the pieces or the sheets are others.
 * @param content of the pieces, with their names, and their format
 */
function* givenLayout(
  stock: Stock,
  given: readonly LayoutRow[],
  pieces: readonly Piece[],
  format: SheetFormat,
  content: string,
): Stepwise<Given | undefined> {
  const rows = rowsOfStock(given).get(fold(stock.code));
  if (!rows) return undefined;
  const print = new Fingerprint().text(content);
  for (const { sheet, offcut = '', piece, x, y, turn } of rows)
    print.text(offcut).text(piece).number(sheet).number(x).number(y).number(turn);
  const key = print.toString();
  return givenByContent.find(key) ?? givenByContent.keep(key, yield* checkedLayout(rows, pieces, format));
}

const byStock = derived<readonly LayoutRow[], ReadonlyMap<string, readonly LayoutRow[]>>('layouts by stock');

function rowsOfStock(given: readonly LayoutRow[]): ReadonlyMap<string, readonly LayoutRow[]> {
  return byStock(given, [], () => {
    const all = new Map<string, LayoutRow[]>();
    for (const row of given) {
      const code = fold(row.stock);
      const own = all.get(code);
      if (own) own.push(row);
      else all.set(code, [row]);
    }
    return all;
  });
}

function* checkedLayout(rows: readonly LayoutRow[], pieces: readonly Piece[], format: SheetFormat): Stepwise<Given> {
  const index = new Map(pieces.map(({ key }, i) => [fold(key), i]));
  const offcuts = (format.offcuts ?? []).map(({ code }) => ({ code, placements: [] as Placement[] }));
  const sheets = new Map<number, Placement[]>();
  for (const { sheet, offcut, piece, x, y, turn } of rows) {
    const found = index.get(fold(piece));
    if (found === undefined) return { ignored: `it holds ${piece}, which is not to be cut` };
    const placement = { piece: found, x, y, turn };
    if (offcut === undefined) {
      const own = sheets.get(sheet);
      if (own) own.push(placement);
      else sheets.set(sheet, [placement]);
    } else {
      const own = offcuts.find(({ code }) => fold(code) === fold(offcut));
      if (!own) return { ignored: `it lays pieces on the offcut ${offcut}, which is not in Offcuts` };
      own.placements.push(placement);
    }
  }
  const whole = [...sheets].sort(([a], [b]) => a - b).map(([, placements]) => placements);
  const layout = { offcuts: offcuts.filter(({ placements }) => placements.length > 0), sheets: whole };
  const [fault] = yield* verifyLayoutStepwise(pieces, format, layout);
  return fault ? { ignored: describeFault(fault) } : { layout, ground: groundOf(layout, pieces, format) };
}
