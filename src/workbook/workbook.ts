/**
 * A workbook as data, independent of any host: what the demo and the blank tables are made of. A host (the embedded
 * grid, the office suite) turns it into sheets. Rows and columns count from 0.
 */
export interface WorkbookPlan {
  readonly name: string;
  readonly sheets: readonly SheetPlan[];
}

/** What a cell is for. A host gives each role one look: inputs boxed, results tinted. */
export type Role =
  | 'title' // the sheet's name, row 1
  | 'note' // the one sentence under it
  | 'caption' // name of a table that is stacked with others
  | 'heading' // heading of a column; its unit is the second line of the same cell
  | 'input' // the maker's to fill in
  | 'example' // a greyed example in a blank table
  | 'result' // worked out
  | 'words' // worked out, in as many lines as its words need
  | 'total'; // a sum

export interface CellPlan {
  readonly row: number;
  readonly column: number;
  readonly role: Role;
  readonly value?: string | number | boolean;
  /** In en-US syntax with a leading "=". A table's cells are written {Table name} and become the host's reference. */
  readonly formula?: string;
  /** Number format pattern, such as 0.0 */
  readonly format?: string;
  readonly align?: 'left' | 'right';
}

export interface Area {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** Input cells with their headings in the first row: what a plan function is given. Blank rows at the end are spare. */
export interface TablePlan {
  readonly name: string;
  readonly area: Area;
}

/** Cells into which a formula's table spills. Only filled cells are to look like results. The first row is headings. */
export interface ResultPlan {
  readonly area: Area;
  readonly columns: readonly {
    readonly format?: string;
    readonly align: 'left' | 'right';
    /** Whether what stands in it goes on in further lines of its row, everywhere or where rows grow by themselves. */
    readonly wraps?: boolean | 'where rows follow';
  }[];
  /** Whether the last filled row is a sum. */
  readonly total?: boolean;
  /** Columns beside its last into which the words of that run on: they look like it. */
  readonly over?: number;
}

/** Cells that take one of several words. */
export interface ListPlan {
  readonly area: Area;
  readonly choices: readonly string[];
  /**
   * The table whose first column holds the words: they are codes of the maker's own. A host that can offers that column
   * as it stands, else the choices.
   */
  readonly codesOf?: string;
}

export interface SheetPlan {
  readonly name: string;
  /** inputs: yours to fill in. results: worked out. run: both, stacked. */
  readonly kind: 'inputs' | 'results' | 'run';
  readonly cells: readonly CellPlan[];
  readonly tables: readonly TablePlan[];
  readonly results: readonly ResultPlan[];
  readonly lists: readonly ListPlan[];
  /** Widths of columns in px, from column 0; the rest keeps the host's own. */
  readonly widths: readonly number[];
  /** Heights of rows in px where they differ from the sheet's 22. */
  readonly heights: Readonly<Record<number, number>>;
  readonly frozen: { readonly rows: number; readonly columns: number };
}
