import { bytesOfRecords } from '../bytes';
import { allPlacements, type Layout, type Placements } from '../cutting/sheet/layout';
import { leastSheets } from '../cutting/sheet/least-sheets';
import type { Piece } from '../cutting/sheet/piece';
import type { SheetFormat, ShelfOffcut } from '../cutting/sheet/sheet';
import { Fingerprint } from '../fingerprint';
import { Memo } from '../memo';
import { formatName } from '../stock/offer';
import type { Stock } from '../stock/stock';
import { foundRows } from './found-rows';
import type { FoundRow, OffcutRow } from './inputs';
import { planMemory } from './plan-memory';
import type { BesideFormat, StockCutting } from './stock-cutting';
import { formatOf, type ToLay } from './stock-share';

/** Pieces, and the sheets that they lie on together: whole ones of the format at hand, all others as offcuts. */
export interface CommonGround {
  readonly pieces: readonly Piece[];
  readonly format: SheetFormat;
  readonly layout: Layout;
}

type OnGround = Pick<StockCutting, 'stock' | 'otherFormat' | 'format' | 'pieces' | 'layout' | 'beside'>;

const plain = ({ natural, pairs }: SheetFormat) => natural === undefined && pairs === undefined;

/** No code in a cell has a line break, so none is taken for another. */
const sheetCode = (format: number, sheet: number) => `\n${format}\n${sheet}`;

/**
 * The cuttings of one stock, each with what lies beside it: sheets of other formats that are cut or on the shelf. Its least
 * is that of the whole stock on all of them.
 */
export function onCommonGround(
  cuttings: readonly StockCutting[],
  formats: readonly (readonly Stock[])[],
  all: ToLay,
  shelf: readonly OffcutRow[],
): readonly StockCutting[] {
  if (formats.length === 1) return cuttings;
  return cuttings.map((cutting) => {
    const beside = besideOf(cutting, cuttings, formats);
    if (beside.length === 0) return cutting;
    const format = { ...cutting.format, ...formatOf(cutting.stock, shelf) };
    const own = { ...cutting, format, beside };
    const content = contentOf(own, all);
    // What lies on the shelf saves no money by what is bought in its place.
    const counted = cutting.sheets > onHand(cutting.offers) ? beside : beside.filter(({ bought }) => !bought);
    return { ...own, content, least: leastOf({ ...own, beside: counted }, all) };
  });
}

/** Stands for all pieces of a stock and the sheets that they may lie on. */
function contentOf({ content, format, beside = [] }: StockCutting, { outlines }: ToLay): string {
  const print = new Fingerprint().text(content).text(JSON.stringify(format)).text(outlines);
  for (const one of beside) print.text(JSON.stringify(one.format)).number(one.layout.sheets.length).number(one.blank);
  return print.toString();
}

/** Blank sheets of a format are no more than the pieces that could be laid on them. */
function besideOf(
  { stock, count, format: at }: StockCutting,
  cuttings: readonly StockCutting[],
  formats: readonly (readonly Stock[])[],
): readonly BesideFormat[] {
  return formats.flatMap((offers): readonly BesideFormat[] => {
    const first = offers[0]!;
    const cut = cuttings.find(({ offers: own }) => own === offers);
    const format = cut?.format ?? formatOf(first, []);
    if (cut?.stock === stock) return [];
    const fixed = !plain(at) || !plain(format);
    const layout = cut?.layout ?? { offcuts: [], sheets: [] };
    const [cutNow, shelved] = [layout.sheets.length, onHand(offers)];
    const blank = fixed ? 0 : Math.min(count, Math.max(0, shelved - cutNow));
    if (cutNow === 0 && blank === 0) return [];
    const otherFormat = first.offer === undefined ? undefined : formatName(first);
    return [{ stock: first, otherFormat, format, layout, blank, bought: cutNow > shelved, fixed }];
  });
}

function onHand(offers: readonly Stock[]): number {
  return offers.reduce((sum, offer) => sum + offer.onHand, 0);
}

const leastByContent = new Memo<{ readonly least: number }>(planMemory, 'least on common ground', () =>
  bytesOfRecords(1),
);

function leastOf(cutting: StockCutting, all: ToLay): number {
  const { pieces, format } = commonGround(cutting);
  const key = contentOf(cutting, all);
  const { least } = leastByContent.find(key) ?? leastByContent.keep(key, { least: leastSheets(pieces, format) });
  return Math.min(cutting.sheets, least);
}

/** All that pieces of a cutting may lie on, and how they lie there now. */
export function commonGround({ pieces: own, format, layout, beside: all = [] }: OnGround): CommonGround {
  const beside = all.filter(({ fixed }) => !fixed);
  if (beside.length === 0) return { pieces: own, format, layout };
  const counts = own.map(({ count }) => count);
  for (const one of beside) for (const { piece } of allPlacements(one.layout)) counts[piece]!++;
  const sheets = beside.flatMap((one, i) =>
    Array.from({ length: sheetsOf(one) }, (_, k): ShelfOffcut & { placements: Placements } => ({
      code: sheetCode(i, k),
      length: one.format.length,
      width: one.format.width,
      placements: one.layout.sheets[k] ?? [],
    })),
  );
  const used = [layout, ...beside.map((one) => one.layout)].flatMap(({ offcuts }) => offcuts);
  return {
    pieces: own.map((piece, i) => ({ ...piece, count: counts[i]! })),
    format: { ...format, offcuts: [...(format.offcuts ?? []), ...sheets.map(({ placements: _, ...one }) => one)] },
    layout: {
      offcuts: [...used, ...sheets.filter(({ placements }) => placements.length > 0)],
      sheets: layout.sheets,
    },
  };
}

const sheetsOf = ({ layout, blank }: BesideFormat) => layout.sheets.length + blank;

/** Rows for the table Layouts of a layout on common ground: those of every format of the stock. */
export function rowsOnGround(cutting: OnGround, layout: Layout): readonly FoundRow[] {
  const { pieces, beside = [] } = cutting;
  const laid = new Map(layout.offcuts.map(({ code, placements }) => [code, placements]));
  const real = new Set((cutting.format.offcuts ?? []).map(({ code }) => code));
  const own = { offcuts: layout.offcuts.filter(({ code }) => real.has(code)), sheets: layout.sheets };
  const filled = beside
    .filter(({ fixed }) => !fixed)
    .flatMap((one, i) => {
      const sheets = Array.from({ length: sheetsOf(one) }, (_, k) => laid.get(sheetCode(i, k)) ?? []);
      return foundRows({ ...one, pieces }, { offcuts: [], sheets: sheets.filter(({ length }) => length > 0) });
    });
  const asTheyAre = beside.filter(({ fixed }) => fixed).flatMap((one) => foundRows({ ...one, pieces }, one.layout));
  return [...foundRows(cutting, own), ...filled, ...asTheyAre];
}
