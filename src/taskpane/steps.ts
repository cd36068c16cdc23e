import { fold } from '../core/plan/codes';
import type { Problem } from '../core/problem';
import { isBlank, type Cells } from '../tables/cell';
import { INPUT_TABLES } from '../tables/input-tables';
import { lostCodes } from '../tables/named-codes';
import { readTable } from '../tables/read';
import type { Columns, Table } from '../tables/schema';
import { headsSums } from '../tables/sums';
import type { WorkbookPlan } from '../workbook/workbook';

/** How far a table is filled in: untouched, of examples alone; begun, with something to put right; done. */
export type StepState = 'untouched' | 'begun' | 'done';

/** One step of the first run through the tables. */
export interface FirstStep {
  readonly table: string;
  readonly say: string;
  /** Whether a plan can be made without it. */
  readonly optional: boolean;
  readonly state: StepState;
}

const { lasts, stock, styles, pairage, rates } = INPUT_TABLES;

/** The tables in the order in which a maker fills them in: each names codes of those before it. */
const ORDER: readonly { readonly table: Table<Columns>; readonly say: string; readonly optional?: boolean }[] = [
  { table: lasts, say: 'Measure your lasts: bottom length, widths, heel height, pairs on hand.' },
  { table: stock, say: 'Enter the sheets on offer: material, thickness, size, price.' },
  { table: styles, say: 'Say what each style is built from, on which last.' },
  { table: pairage, say: 'Enter the pairs of each style under their sizes.' },
  {
    table: rates,
    say: 'Enter your costs and times, for the cost of a pair and the days.',
    optional: true,
  },
];

/**
 * The first run through blank tables, each step with its state as the tables have it.
 * @param tables by name, headings first
 * @param problems what the whole plan cannot read or build
 * @param examples the workbook whose rows are examples and not yet the maker's own
 */
export function steps(
  tables: ReadonlyMap<string, Cells>,
  problems: readonly Problem[],
  examples: WorkbookPlan,
): readonly FirstStep[] {
  // What a row names is found here also where no pair needs it yet.
  const lost = lostCodes(tables).filter(({ code }) => !headsSums(code));
  const naming = new Set(lost.flatMap(({ cells }) => cells.map((place) => place.table)));
  return ORDER.map(({ table, say, optional = false }): FirstStep => {
    const cells = tables.get(table.name) ?? [];
    return {
      table: table.name,
      say,
      optional,
      state: stateOf(
        table,
        cells,
        exampleCodes(examples, table.name),
        () => naming.has(table.name) || problems.some(({ place }) => place.argument === table.argument),
      ),
    };
  });
}

function stateOf(
  table: Table<Columns>,
  cells: Cells,
  examples: ReadonlySet<string>,
  refused: () => boolean,
): StepState {
  const rows = cells.slice(1).filter((line) => !line.every(isBlank));
  const codes = rows.map(([code]) => String(code ?? '')).filter((code) => !headsSums(code));
  const own = codes.filter((code) => !examples.has(fold(code)));
  if (own.length === 0) return 'untouched';
  return readTable(table, cells).problems.length > 0 || refused() ? 'begun' : 'done';
}

/** What heads the rows of a table of examples. */
function exampleCodes({ sheets }: WorkbookPlan, name: string): ReadonlySet<string> {
  const codes = new Set<string>();
  for (const { tables, cells } of sheets) {
    const area = tables.find((one) => one.name === name)?.area;
    if (!area) continue;
    for (const { row, column, role, value } of cells) {
      const within = row > area.row && row < area.row + area.rows && column === area.column;
      if (within && role === 'example' && value !== undefined) codes.add(fold(String(value)));
    }
  }
  return codes;
}
