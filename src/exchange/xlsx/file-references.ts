import { itemAt } from '../../core/item-at';
import { type Token, parseStructRef, tokenize } from '@borgar/fx';
import { fixedReference } from '../../workbook/address';
import type { Area } from '../../workbook/workbook';
import type { Book, BookCell, BookName, BookSheet, ReadBook } from './book';
import { cellAt } from './references';

/** A table of a file that formulas may name. */
export interface FileTable {
  readonly name: string;
  readonly sheet: string;
  readonly area: Area;
  readonly columns: readonly string[];
  /** Rows of sums at its end. */
  readonly totals: number;
}

/**
 * Ways of referring to cells that only some programs know, put as plain references to where they lead now: tables by their
 * names, and all that a formula spills (A1#).
 * @param left is added to where a formula no longer follows what it referred to
 */
export function withoutFileReferences(book: Book, tables: readonly FileTable[], left: readonly string[]): ReadBook {
  const places = new Places(book.sheets, tables);
  const sheets = book.sheets.map((sheet) => {
    if (!sheet.cells.some(({ formula }) => formula !== undefined && mayRefer(formula))) return sheet;
    const cells = sheet.cells.map((cell): BookCell => {
      if (cell.formula === undefined || !mayRefer(cell.formula)) return cell;
      const formula = places.put(cell.formula, sheet.name, cell.row);
      return formula === cell.formula ? cell : { ...cell, formula };
    });
    return { ...sheet, cells };
  });
  const names = book.names.map((name): BookName => {
    const meaning = mayRefer(name.meaning) ? places.put(`=${name.meaning}`, '', -1).slice(1) : name.meaning;
    return meaning === name.meaning ? name : { ...name, meaning };
  });
  const known = new Set(names.map(({ name }) => name.toUpperCase()));
  const added = tables
    .filter(({ name }) => !known.has(name.toUpperCase()))
    .map(({ name, sheet, area }): BookName => ({ name, meaning: fixedReference(sheet, area) }));
  return {
    book: { ...book, sheets, names: [...names, ...added] },
    left: places.changed
      ? [...left, 'references to tables and to spilled ranges (A1#) that grow: they stay as large as they are']
      : left,
  };
}

function mayRefer(formula: string): boolean {
  return formula.includes('[') || formula.includes('#') || /ANCHORARRAY/i.test(formula);
}

class Places {
  changed = false;
  private readonly tables: ReadonlyMap<string, FileTable>;
  /** How far formulas spill, by sheet and cell. */
  private readonly spills = new Map<string, Area>();

  constructor(sheets: readonly BookSheet[], tables: readonly FileTable[]) {
    this.tables = new Map(tables.map((table) => [table.name.toUpperCase(), table]));
    for (const { name, cells } of sheets) {
      for (const { row, column, spill } of cells) {
        if (spill) this.spills.set(`${name.toUpperCase()} ${row} ${column}`, { row, column, ...spill });
      }
    }
  }

  put(formula: string, sheet: string, row: number): string {
    const tokens = tokenize(formula, { mergeRefs: true });
    const parts: string[] = [];
    for (let at = 0; at < tokens.length; at++) {
      const token = itemAt(tokens, at);
      const wrapped = token.type === 'func' && token.value.toUpperCase() === 'ANCHORARRAY';
      const anchored = wrapped ? tokens[at + 2] : tokens[at + 1]?.value === '#' ? token : undefined;
      const spilled = anchored && this.spilled(anchored, sheet);
      if (spilled !== undefined) {
        parts.push(spilled);
        at += wrapped ? 3 : 1;
      } else parts.push((token.type === 'structured' && this.structured(token.value, row)) || token.value);
    }
    return parts.join('');
  }

  private spilled({ type, value }: Token, sheet: string): string | undefined {
    if (type !== 'range') return undefined;
    const mark = value.lastIndexOf('!');
    const name = mark < 0 ? sheet : value.slice(0, mark).replace(/^'|'$/g, '').replaceAll("''", "'");
    const cell = cellAt(value.slice(mark + 1));
    const area = cell && this.spills.get(`${name.toUpperCase()} ${cell.row} ${cell.column}`);
    if (!area) return undefined;
    this.changed = true;
    return fixedReference(name, area);
  }

  private structured(text: string, row: number): string | undefined {
    const reference = parseStructRef(text);
    const table = this.tables.get(reference?.table?.toUpperCase() ?? '');
    if (!reference || !table) return undefined;
    const columns = (reference.columns ?? []).map((column) =>
      table.columns.findIndex((one) => one.toUpperCase() === column.toUpperCase()),
    );
    if (columns.includes(-1)) return undefined;
    const across =
      columns.length === 0
        ? { column: table.area.column, columns: table.area.columns }
        : {
            column: table.area.column + Math.min(...columns),
            columns: Math.max(...columns) - Math.min(...columns) + 1,
          };
    const down = rowsOf(table, reference.sections ?? [], row);
    this.changed = true;
    return down && fixedReference(table.sheet, { ...down, ...across });
  }
}

/** The rows of a table that a reference means: those below its headings unless it says otherwise. */
function rowsOf(
  { area, totals }: FileTable,
  sections: readonly string[],
  row: number,
): Pick<Area, 'row' | 'rows'> | undefined {
  const asked = sections.map((section) => section.replace('#', '').toLowerCase());
  const has = (name: string) => asked.includes(name);
  if (has('this row') || has('@')) return { row, rows: 1 };
  if (has('all')) return { row: area.row, rows: area.rows };
  const data = { row: area.row + 1, rows: area.rows - 1 - totals };
  if (has('headers')) return has('data') ? { row: area.row, rows: data.rows + 1 } : { row: area.row, rows: 1 };
  if (has('totals')) return totals > 0 ? { row: area.row + area.rows - totals, rows: totals } : undefined;
  return data;
}
