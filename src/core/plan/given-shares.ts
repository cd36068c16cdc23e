import { bytesOfRecords } from '../bytes';
import { type Layout, type Placement } from '../cutting/sheet/layout';
import type { Piece } from '../cutting/sheet/piece';
import type { SheetFormat } from '../cutting/sheet/sheet';
import { describeFault, verifyLayoutStepwise } from '../cutting/sheet/verify-layout';
import { derived } from '../derived';
import { Fingerprint } from '../fingerprint';
import { Memo } from '../memo';
import type { Stepwise } from '../stepwise';
import { formatName } from '../stock/offer';
import type { Stock } from '../stock/stock';
import { fold } from './codes';
import type { LayoutRow, OffcutRow } from './inputs';
import { planMemory } from './plan-memory';
import { bytesOfLayout, formatOf, groundOf, keyOf, piecesOf, type Share, type ToLay } from './stock-share';

/** What became of a layout that a long search wrote down: it with its ground, or why it is not used. */
type Given =
  | { readonly layout: Layout; readonly ground: number; readonly ignored?: undefined }
  | { readonly layout?: undefined; readonly ignored: string };

const givenByContent = new Memo<Given>(planMemory, 'layout given', ({ layout }) =>
  layout ? bytesOfLayout(layout) : bytesOfRecords(1),
);

/**
 * A layout that a long search wrote down, by the formats of its sheets, if it still fits the pieces: it is checked before
 * its first use, and again as soon as any of its rows, the pieces or the sheets are others.
 */
export function* givenShares(
  rows: readonly LayoutRow[],
  formats: readonly (readonly Stock[])[],
  all: ToLay,
  shelf: readonly OffcutRow[],
): Stepwise<{ readonly shares: readonly Share[] } | { readonly ignored: string }> {
  const named = new Map<string, LayoutRow[]>();
  for (const row of rows) {
    const name = row.format?.replace(/\s+/g, '') ?? '';
    named.set(name, [...(named.get(name) ?? []), row]);
  }
  if (named.size === 1 && named.has('')) {
    const share = { offers: formats[0]!, format: formatOf(formats[0]![0]!, shelf) };
    const given = yield* checked(rows, share, all);
    if (given.layout === undefined) return given;
    return { shares: [{ ...share, layout: given.layout, ground: given.ground, searched: true }] };
  }
  const shares: Share[] = [];
  const found = all.pieces.map(() => 0);
  for (const [name, own] of named) {
    const offers = formats.find(([first], i) =>
      name === '' ? i === 0 : formatName(first!).replace(/\s+/g, '') === name,
    );
    if (!offers) return { ignored: `it lays pieces on sheets of ${own[0]!.format}, which are not in Offers` };
    const onShelf = own.some(({ offcut }) => offcut !== undefined) ? shelf : [];
    const counts = countsNamed(own, all.pieces);
    for (const [i, count] of counts.entries()) found[i]! += count;
    const share = { offers, format: formatOf(offers[0]!, onShelf), counts };
    const given = yield* checked(own, share, all);
    if (given.layout === undefined) return given;
    shares.push({ ...share, layout: given.layout, ground: given.ground, searched: true });
  }
  const wrong = all.pieces.findIndex(({ count }, i) => count !== found[i]);
  if (wrong < 0) return { shares };
  const { key, count: wanted } = all.pieces[wrong]!;
  return { ignored: describeFault({ kind: 'count', keys: [key], laid: found[wrong]!, wanted }) };
}

/** How often each piece stands in rows. */
function countsNamed(rows: readonly LayoutRow[], pieces: readonly Piece[]): readonly number[] {
  const counts = new Map<string, number>();
  for (const { piece } of rows) counts.set(fold(piece), (counts.get(fold(piece)) ?? 0) + 1);
  return pieces.map(({ key }) => counts.get(fold(key)) ?? 0);
}

function* checked(rows: readonly LayoutRow[], share: Share, all: ToLay): Stepwise<Given> {
  const print = new Fingerprint().text(keyOf(share, all)).text(all.names);
  for (const { sheet, offcut = '', piece, x, y, turn } of rows)
    print.text(offcut).text(piece).number(sheet).number(x).number(y).number(turn);
  const key = print.toString();
  return (
    givenByContent.find(key) ?? givenByContent.keep(key, yield* checkedLayout(rows, piecesOf(share, all), share.format))
  );
}

const byStock = derived<readonly LayoutRow[], ReadonlyMap<string, readonly LayoutRow[]>>('layouts by stock');

export function rowsOfStock(given: readonly LayoutRow[]): ReadonlyMap<string, readonly LayoutRow[]> {
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
