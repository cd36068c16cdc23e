import { Problem } from '../../problem';
import { fewestSheets } from '../search/fewest-sheets';
import { perform } from '../search/perform';
import type { Layout, Placements } from '../sheet/layout';
import type { Piece } from '../sheet/piece';
import type { SheetFormat, ShelfOffcut } from '../sheet/sheet';
import { cheaperPurchases, type Known, type Purchase, roomArea } from './cheaper-purchases';
import { type Column, columnOf } from './columns';
import { fullestSheets } from './fullest-sheets';
import type { Ground } from './ground';
import type { BuyFormat } from './job';
import type { Solver } from './programme';

/** Shares of the effort for each purchase that is searched for. */
const SHARES = [0.5, 0.25, 0.25];

/** Larger runs are not searched: in so short a time it would find nothing. */
const MOST_PIECES = 600;

const SEED = 1;

/**
 * The sheets of a cheaper purchase on which the long search lays all pieces, those of all formats at once; none where it finds
 * none. Efforts and a seed decide, never the clock.
 * @param effort millions of places tried in all
 */
export function denser(known: Known, solver: Solver, effort: number): readonly Column[] {
  const pieces = known.kinds.reduce((sum, { count }) => sum + count, 0);
  if (effort <= 0 || pieces > MOST_PIECES) return [];
  const purchases = cheaperPurchases(known);
  let columns = known.columns;
  let best: readonly Column[] = [];
  let [first, end] = [0, purchases.length];
  // The cheapest first; then by halves, from what was found before, since the dearer a purchase, the easier it is to lay.
  for (const [i, share] of SHARES.entries()) {
    if (first >= end) break;
    const at = i === 0 ? 0 : (first + end) >> 1;
    const found = laidOn(purchases[at]!, { ...known, columns }, solver, effort * share);
    if (found) [best, columns, end] = [found, [...columns, ...found], at];
    else first = at + 1;
  }
  return best;
}

/** Lays all pieces on the sheets of a purchase: whole ones of its largest format, those of the others beside them. */
function laidOn(
  { sheets }: Purchase,
  { kinds, formats, grounds, columns }: Known,
  solver: Solver,
  effort: number,
): readonly Column[] | undefined {
  const main = largestOf(formats, sheets);
  // What is traced has an outline of its own, which no sheet beside it can have.
  if (main === undefined || sheets.some((count, i) => i !== main && count > 0 && formats[i]!.format.natural))
    return undefined;
  const beside = besideOf(grounds, sheets, main);
  const format = { ...grounds[main]!.format, ...(beside.length > 0 && { offcuts: beside }) };
  const full = fullestSheets(kinds, columns, grounds, sheets, solver);
  const start = startOf(full, beside, grounds[main]!, main, kinds);
  const layout = start && searched(kinds, format, start, sheets[main]!, effort);
  if (!layout) return undefined;
  const groundOf = new Map(beside.map(({ code, ground }) => [code, ground]));
  const column = (ground: number, placements: Placements) => columnOf(ground, placements, kinds.length);
  return [
    ...layout.sheets.map((placements) => column(main, placements)),
    ...layout.offcuts.map(({ code, placements }) => column(groundOf.get(code)!, placements)),
  ];
}

/** The largest format of which there are sheets, a traced one before the others. */
function largestOf(formats: readonly BuyFormat[], sheets: readonly number[]): number | undefined {
  const size = (i: number) => (formats[i]!.format.natural ? Infinity : roomArea(formats[i]!.format));
  const used = [...sheets.keys()].filter((i) => sheets[i]! > 0);
  return used.sort((a, b) => size(b) - size(a) || a - b)[0];
}

/** A sheet of another format, or an offcut, beside those that are emptied. */
interface Beside extends ShelfOffcut {
  readonly ground: number;
}

/** Sheets of the other formats, and all offcuts, each with a code of its own. */
function besideOf(grounds: readonly Ground[], sheets: readonly number[], main: number): readonly Beside[] {
  return grounds.flatMap(({ format: { length, width }, offcut, of }, ground): readonly Beside[] => {
    if (offcut === undefined && of === main) return [];
    const count = offcut === undefined ? sheets[of]! : 1;
    return Array.from({ length: count }, (_, i) => ({ code: `${ground} ${i}`, length, width, ground }));
  });
}

/** A layout to begin with: the fullest sheets of the purchase, and on more of the main ones what they leave. */
function startOf(
  full: readonly Column[],
  beside: readonly Beside[],
  main: Ground,
  at: number,
  kinds: readonly Piece[],
): Layout | undefined {
  const left = kinds.map(({ count }) => count);
  for (const { counts } of full) for (const [kind, count] of counts.entries()) left[kind]! -= count;
  const blank = [...beside];
  const offcuts = full.flatMap(({ ground, placements }) => {
    const place = blank.findIndex((one) => one.ground === ground);
    const [taken] = place < 0 ? [] : blank.splice(place, 1);
    return taken ? [{ code: taken.code, placements }] : [];
  });
  const own = full.filter(({ ground }) => ground === at).map(({ placements }) => placements);
  const rest = main.sheets(left);
  const laid = rest.flat().length === left.reduce((sum, count) => sum + count, 0);
  return laid ? { offcuts, sheets: [...own, ...rest] } : undefined;
}

/** A layout on no more than so many whole sheets and what lies beside them. */
function searched(
  pieces: readonly Piece[],
  format: SheetFormat,
  start: Layout,
  most: number,
  effort: number,
): Layout | undefined {
  if (start.sheets.length <= most) return start;
  try {
    const rounds = fewestSheets({ pieces, format, effort, seed: SEED, start });
    let next = rounds.next();
    while (!next.done) {
      const { tasks, after } = next.value;
      const answers = tasks.map((task) => perform(task, { stopped: false }));
      const { layout } = after(answers);
      if (layout.sheets.length <= most) return layout;
      next = rounds.next(answers);
    }
    return undefined;
  } catch (error) {
    // A piece may fit on none of these sheets.
    if (error instanceof Problem) return undefined;
    throw error;
  }
}
