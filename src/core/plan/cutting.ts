import { sheetArea, type Stock } from '../stock/stock';
import { area } from '../geometry/area';
import { box } from '../geometry/box';
import { mirror } from '../geometry/mirror';
import { moved } from '../geometry/moved';
import type { Point } from '../geometry/ring';
import { intersection } from '../geometry/regions';
import { leastSheets } from '../cutting/sheet/least-sheets';
import { rectangular } from '../cutting/sheet/natural-sheet';
import { quickLayout } from '../cutting/quick-layout';
import { type Layout, laidSheets, type Placement } from '../cutting/sheet/layout';
import type { Piece } from '../cutting/sheet/piece';
import type { SheetFormat, ShelfOffcut } from '../cutting/sheet/sheet';
import type { Way } from '../cutting/sheet/way';
import { describeFault, verifyLayout } from '../cutting/sheet/verify-layout';
import { Problem } from '../problem';
import { fold } from './codes';
import type { LayoutRow, OffcutRow } from './inputs';
import { identity, Memo } from '../memo';
import { FEET, type PieceLine, pieceKey } from './pieces';

/** How the pieces of one stock lie on its sheets. */
export interface StockCutting {
  readonly stock: Stock;
  readonly lines: readonly PieceLine[];
  readonly format: SheetFormat;
  readonly pieces: readonly Piece[];
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

/** What does not change with prices and stocks on hand. */
interface Laid {
  readonly pieces: readonly Piece[];
  readonly layout: Layout;
  readonly count: number;
  readonly net: number;
  /** Area of the ground that the pieces take up, on all sheets together, mm². */
  readonly ground: number;
  readonly least: number;
}

/** More pieces of one stock than this are no small run, and would keep a sheet waiting. */
const MOST_PIECES = 40_000;

const laidByContent = new Memo<Laid>(512);

/** Third stage: the pieces of all styles and sizes on shared sheets, stock by stock. */
export function cutting(
  lines: readonly PieceLine[],
  stocks: readonly Stock[],
  given: readonly LayoutRow[],
  offcuts: readonly OffcutRow[],
): Cutting {
  const problems: Problem[] = [];
  const cut = stocks.flatMap((stock): StockCutting[] => {
    const own = lines.filter(({ layer }) => fold(layer.stock) === fold(stock.code));
    if (own.length === 0) return [];
    try {
      return [cutStock(stock, own, given, offcuts)];
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      problems.push(
        new Problem(
          error.code,
          { argument: 'stock', table: 'Bottom stock', row: stock.row, column: 'Stock' },
          `${[stock.code, ...pieceNamed(error, own)].join(', ')}: ${error.reason}`,
        ),
      );
      return [];
    }
  });
  return { stocks: cut, problems };
}

/** The piece that a problem is about, if it is about one. */
function pieceNamed({ place: { argument } }: Problem, lines: readonly PieceLine[]): readonly string[] {
  return lines.some((line) => FEET.some((foot) => pieceKey(line, foot) === argument)) ? [argument] : [];
}

function cutStock(
  stock: Stock,
  lines: readonly PieceLine[],
  given: readonly LayoutRow[],
  shelf: readonly OffcutRow[],
): StockCutting {
  const format = formatOf(stock, shelf);
  const content = lines.map(({ sizeRun, layer, count, run }) => [
    identity(sizeRun.bottom),
    layer.item,
    count,
    run.style.code,
    sizeRun.size,
    run.style.quality[layer.part],
  ]);
  const wanted = lines.reduce((sum, { count }) => sum + count, 0);
  if (wanted > MOST_PIECES) {
    throw new Problem(
      'unavailable',
      { argument: 'pairage' },
      `${wanted} pieces are more than the ${MOST_PIECES} that are laid at once; plan fewer pairs at a time`,
    );
  }
  const laid = laidByContent.get(JSON.stringify([format, stock.direction, content]), () => {
    const pieces = piecesOf(lines, stock);
    const layout = quickLayout(pieces, format);
    return {
      pieces,
      layout,
      count: pieces.reduce((sum, { count }) => sum + count, 0),
      net: pieces.reduce((sum, { ring, count }) => sum + area(ring) * count, 0),
      ground: groundOf(layout, pieces, format),
      least: leastSheets(pieces, format),
    };
  });
  const { pieces, layout: rows, count, net, least } = laid;
  const searched = givenLayout(stock, given, pieces, format);
  const taken = rows.sheets.length;
  const layout = searched?.layout && searched.layout.sheets.length <= taken ? searched.layout : rows;
  const ground = layout === rows ? laid.ground : groundOf(layout, pieces, format);
  const sheets = layout.sheets.length;
  const used = new Set(layout.offcuts.map(({ code }) => code));
  const offcuts = (format.offcuts ?? []).filter(({ code }) => used.has(code));
  const cutFrom = sheets * sheetArea(stock) + offcuts.reduce((sum, { length, width }) => sum + length * width, 0);
  return {
    stock,
    lines,
    format,
    pieces,
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
    source: layout === rows ? 'rows' : 'search',
    rows: taken,
    ignored: searched?.ignored,
  };
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

function wayOf({ direction }: Stock): Way {
  return { kind: ({ 'any way': 'any', 'end for end': 'endForEnd', 'one way': 'oneWay' } as const)[direction] };
}

function piecesOf(lines: readonly PieceLine[], stock: Stock): readonly Piece[] {
  const way = wayOf(stock);
  return lines.flatMap((line): Piece[] => {
    const { ring, part } = line.layer;
    const quality = line.run.style.quality[part];
    const [left, right] = [pieceKey(line, 'L'), pieceKey(line, 'R')];
    const same = { count: line.count / 2, way, quality, pair: left };
    return [
      { key: left, ring, ...same },
      { key: right, ring: mirror(ring), ...same },
    ];
  });
}

/** Area of the boxes about the pieces of each sheet, as far as they lie on it, mm². */
function groundOf(layout: Layout, pieces: readonly Piece[], format: SheetFormat): number {
  return laidSheets(layout, format).reduce((sum, { format: { natural }, placements }) => {
    if (placements.length === 0) return sum;
    const { left, right, bottom, top } = box(
      placements.flatMap(({ piece, turn, x, y }) => moved((pieces[piece] as Piece).ring, turn, x, y)),
    );
    const size = { length: right - left, width: top - bottom };
    if (!natural) return sum + size.length * size.width;
    const about = rectangular(size).outline.map(([x, y]): Point => [x + left, y + bottom]);
    return sum + intersection([natural.outline], [about]).reduce((all, ring) => all + area(ring), 0);
  }, 0);
}

/** A layout that a long search wrote down, if it still fits the pieces: it is checked anew at every use. */
function givenLayout(
  stock: Stock,
  given: readonly LayoutRow[],
  pieces: readonly Piece[],
  format: SheetFormat,
): { readonly layout?: Layout; readonly ignored?: string } | undefined {
  const rows = given.filter((row) => fold(row.stock) === fold(stock.code));
  if (rows.length === 0) return undefined;
  const index = new Map(pieces.map(({ key }, i) => [fold(key), i]));
  const offcuts = (format.offcuts ?? []).map(({ code }) => ({ code, placements: [] as Placement[] }));
  const sheets = new Map<number, Placement[]>();
  for (const { sheet, offcut, piece, x, y, turn } of rows) {
    const found = index.get(fold(piece));
    if (found === undefined) return { ignored: `it holds ${piece}, which is not to be cut` };
    const placement = { piece: found, x, y, turn };
    if (offcut === undefined) sheets.set(sheet, [...(sheets.get(sheet) ?? []), placement]);
    else {
      const own = offcuts.find(({ code }) => fold(code) === fold(offcut));
      if (!own) return { ignored: `it lays pieces on the offcut ${offcut}, which is not in Offcuts` };
      own.placements.push(placement);
    }
  }
  const whole = [...sheets].sort(([a], [b]) => a - b).map(([, placements]) => placements);
  const layout = { offcuts: offcuts.filter(({ placements }) => placements.length > 0), sheets: whole };
  const [fault] = verifyLayout(pieces, format, layout);
  return fault ? { ignored: describeFault(fault) } : { layout };
}
