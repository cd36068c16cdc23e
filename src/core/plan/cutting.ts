import { Fingerprint } from '../fingerprint';
import { area } from '../geometry/area';
import { Problem } from '../problem';
import type { Stepwise } from '../stepwise';
import { byFormat, formatName, sameFormat } from '../stock/offer';
import { sheetArea, type Stock } from '../stock/stock';
import { fold } from './codes';
import { givenShares, rowsOfStock } from './given-shares';
import { onCommonGround } from './common-ground';
import type { PlanInput } from './inputs';
import { FEET, type PieceLine, pieceKey, piecesFrom, type StockPieces } from './pieces';
import { costOf, EQUAL_MONEY, offersOf, quickShares } from './quick-shares';
import type { Runs } from './runs';
import { cuttingName, type StockCutting } from './stock-cutting';
import { groundOf, keyOf, type Laid, laidOf, piecesOf, type Share, toLay, type ToLay } from './stock-share';

export { cuttingName, type StockCutting };

export interface Cutting {
  readonly stocks: readonly StockCutting[];
  readonly problems: readonly Problem[];
}

/**
 * Third stage, of one stock, step by step: the pieces of all styles and sizes on shared sheets, a cutting for each format that is used;
 * none where no pieces are cut from it.
 */
export function* cutStock(
  stock: Stock,
  { styles }: Pick<Runs, 'styles'>,
  input: Pick<PlanInput, 'layouts' | 'offcuts' | 'offers'>,
): Stepwise<readonly StockCutting[] | Problem> {
  const own = styles.flatMap((run) => piecesFrom(run, stock.code) ?? []);
  if (own.length === 0) return [];
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
  input: Pick<PlanInput, 'layouts' | 'offcuts' | 'offers'>,
): Stepwise<readonly StockCutting[]> {
  const formats = byFormat(offersOf(stock, input.offers));
  const all = toLay(own, stock);
  const shelf = input.offcuts.filter((one) => fold(one.stock) === fold(stock.code));
  const quick = yield* quickShares(formats, all, shelf);
  const rows = rowsOfStock(input.layouts).get(fold(stock.code));
  const given = rows && (yield* givenShares(rows, formats, all, shelf));
  return onCommonGround(yield* bestOf(quick, given, all), formats, all, shelf);
}

/** A given layout where it holds and is no worse, else the quick rows. */
function* bestOf(
  quick: readonly Share[],
  given: { readonly shares: readonly Share[] } | { readonly ignored: string } | undefined,
  all: ToLay,
): Stepwise<readonly StockCutting[]> {
  if (!given || 'ignored' in given) return yield* cuttingsOf(quick, all, given?.ignored);
  const found = yield* cuttingsOf(given.shares, all);
  const laid = yield* cuttingsOf(quick, all);
  const worse = worseThan(found, laid);
  return worse === undefined ? found : yield* cuttingsOf(quick, all, worse);
}

function* cuttingsOf(shares: readonly Share[], all: ToLay, ignored?: string): Stepwise<readonly StockCutting[]> {
  const cuttings: StockCutting[] = [];
  for (const share of shares) cuttings.push(cuttingOf(share, all, yield* laidOf(share, all), ignored));
  return cuttings;
}

/** Why one way to lay a stock's pieces is worse than another; undefined where it is not. */
function worseThan(a: readonly StockCutting[], b: readonly StockCutting[]): string | undefined {
  const [first, other] = [a, b].map((parts) => parts.reduce((sum, { sheets }) => sum + sheets, 0));
  const alike = [a, b].every((parts) => parts.length === 1) && sameFormat(a[0]!.stock, b[0]!.stock);
  if (alike) return first! > other! ? `it takes ${first} sheets, and the quick rows ${other}` : undefined;
  const [cost, least] = [a, b].map(costOf);
  if (cost !== undefined && least !== undefined && cost <= least + EQUAL_MONEY) return undefined;
  if (cost === undefined || least === undefined) return undefined;
  return `it costs ${cost.toFixed(2)}, and the quick rows ${least.toFixed(2)}`;
}

function cuttingOf(share: Share, all: ToLay, laid: Laid, ignored?: string): StockCutting {
  const { offers, format, layout: other, searched = false } = share;
  const stock = offers[0]!;
  const pieces = piecesOf(share, all);
  const layout = other ?? laid.layout;
  const ground = other ? (share.ground ?? groundOf(other, pieces, format)) : laid.ground;
  const { net, least } = laid;
  const sheets = layout.sheets.length;
  const used = new Set(layout.offcuts.map(({ code }) => code));
  const offcuts = (format.offcuts ?? []).filter(({ code }) => used.has(code));
  const cutFrom = sheets * sheetArea(stock) + offcuts.reduce((sum, { length, width }) => sum + length * width, 0);
  return {
    stock,
    offers,
    ...(stock.offer !== undefined && { otherFormat: formatName(stock) }),
    lines: all.own.flatMap(({ lines }) => lines),
    format,
    pieces,
    content: new Fingerprint().text(keyOf(share, all)).text(fold(stock.code)).text(all.names).toString(),
    layout,
    count: pieces.reduce((sum, { count }) => sum + count, 0),
    net,
    netOfStock: share.counts ? all.pieces.reduce((sum, { ring, count }) => sum + area(ring) * count, 0) : net,
    ground,
    areaUse: net / cutFrom,
    lostBetween: (ground - net) / cutFrom,
    lostOutside: 1 - ground / cutFrom,
    least,
    sheets,
    offcuts,
    source: searched ? 'search' : 'rows',
    rows: laid.layout.sheets.length,
    ignored,
  };
}
