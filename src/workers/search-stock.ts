import { wholeSheets } from '../core/cutting/sheet/layout';
import type { Token } from '../core/cutting/search/effort';
import type { SheetFormat } from '../core/cutting/sheet/sheet';
import type { StockCutting } from '../core/plan/cutting';
import type { FoundRow } from '../core/plan/inputs';
import type { Crew } from './crew';
import { type Progress, run } from './run';

/** The best layout of a stock's pieces so far. */
export interface StockProgress {
  readonly stock: string;
  readonly sheets: number;
  /** Sheets that the quick rows take. */
  readonly rows: number;
  /** Sheets saved against the quick rows. */
  readonly saved: number;
  /** No fewer sheets could do. */
  readonly least: number;
  /** Share of the effort that has been spent, 0 to 1. */
  readonly done: number;
  /** Rows for the Layouts table. */
  readonly layouts: readonly FoundRow[];
}

/** Least, usual and greatest effort of a search, in millions of places tried. */
export const EFFORT = { least: 1, usual: 20, most: 1000 } as const;

/**
 * Searches for the fewest sheets of one stock of a plan, from the layout that the plan uses.
 * @param cutting of the plan, with the pieces and the format of the sheets
 * @param effort millions of places tried
 */
export async function searchStock(
  cutting: StockCutting,
  effort: number,
  seed: number,
  listener: (progress: StockProgress) => void,
  token: Token,
  crew: Crew,
): Promise<StockProgress> {
  const { pieces, format, stock, layout, rows, least } = cutting;
  const told = (progress: Progress): StockProgress => ({
    stock: stock.code,
    sheets: wholeSheets(progress.layout, format),
    rows,
    saved: rows - wholeSheets(progress.layout, format),
    least,
    done: progress.done,
    layouts: progress.layout.flatMap((sheet, i) =>
      sheet.map(({ piece, x, y, turn }) => ({
        stock: stock.code,
        ...placeOf(format, i),
        piece: pieces[piece].key,
        x,
        y,
        turn,
      })),
    ),
  });
  const job = { pieces, format, effort, seed, start: layout };
  return told(await run(job, (progress) => listener(told(progress)), token, crew));
}

/** Where an entry of a layout stands in the table: offcuts by their code, sheets by their number. */
function placeOf({ offcuts = [] }: SheetFormat, entry: number): Pick<FoundRow, 'sheet' | 'offcut'> {
  const offcut = offcuts[entry]?.code;
  return offcut === undefined ? { sheet: entry - offcuts.length + 1 } : { sheet: entry + 1, offcut };
}
