import type { TableCell } from '../tables/block-cell';
import type { Cells } from '../tables/cell';
import type { HeadedColumn, NewColumn } from '../tables/size-columns';
import type { SheetPlan, WorkbookPlan } from '../workbook/workbook';

/** One cell. Rows and columns count from 0. */
export interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** What is to stand in a cell. */
export interface WrittenCell extends CellPlace {
  readonly value: string | number;
}

/** What the maker has selected: its upper left cell and, where it is more than that, its size. */
export interface Selection extends CellPlace {
  readonly rows: number;
  readonly columns: number;
  /** Such as F5, without the sheet. */
  readonly address: string;
  /** What the first cell holds: a number, text, true or false; null where it is blank; an error's code as text. */
  readonly value: string | number | boolean | null;
  /** What the cell shows, in its number format. */
  readonly text: string;
  /** With its leading "="; undefined where the cell holds none or takes its value from a table that spills over it. */
  readonly formula: string | undefined;
  /** Where a table spills over the cell from another: that cell on the same sheet, and its formula. */
  readonly spilledFrom?: { readonly row: number; readonly column: number; readonly formula: string } | undefined;
  /** Where the cell shows an error: what is wrong and what would do. */
  readonly problem: string | undefined;
}

/** Is told of what went wrong where nobody waits for an answer. */
export type Failed = (error: unknown) => void;

/** Ends what it was handed out for, such as a listener. Calling it again does nothing. */
export type Stop = () => void;

/**
 * A workbook, whatever shows it: all that the pane needs. Each call that changes the workbook is one step for undo where
 * the host can undo. Everything returns a promise because the office suite answers late.
 */
export interface Host {
  /** Where the workbook is: in our own grid or in the office suite. */
  readonly name: 'grid' | 'office';

  /**
   * Puts a plan's sheets, looks, drop-down lists and named tables in the place of those of an earlier plan. The grid's
   * workbook has nothing else; in the office suite the maker's own sheets stay, and the maker is asked before anything
   * is lost that undo would not bring back.
   * @returns whether the plan stands in the workbook now: false where the maker would rather keep what is there
   */
  load(plan: WorkbookPlan): Promise<boolean>;

  /** Cells of each input table with its headings in the first row, by the table's name in the plan. */
  tables(): Promise<ReadonlyMap<string, Cells>>;

  /** Where a table stands now, or undefined where the workbook has none of that name. */
  tablePlace(name: string): Promise<TablePlace | undefined>;

  /** Where each input table stands now, by the table's name in the plan. */
  tablePlaces(): Promise<ReadonlyMap<string, PlacedTable>>;

  /** What is selected, or undefined where nothing is. */
  selection(): Promise<Selection | undefined>;

  /** What a reference in a formula means: where it is and what stands there. undefined where there is no such place. */
  read(reference: Reference): Promise<Block | undefined>;

  /** Selects a cell and brings it into view. @throws Error where the workbook has no such sheet. */
  select(place: CellPlace): Promise<void>;

  /**
   * Puts a formula, with its leading "=", into the first selected cell. Tables named in braces, such as {Lasts}, become
   * references to where they stand.
   * @throws Error where nothing is selected or a table is not in the workbook.
   */
  insertFormula(formula: string): Promise<void>;

  /**
   * Puts a picture over the sheet, its upper left corner at the selected cell; only where sheets take pictures.
   * @returns the sheet's name
   */
  insertPicture?(picture: SheetPicture): Promise<string>;

  /**
   * Replaces a table's rows below its headings; what the block does not fill becomes blank. A table that is too short
   * grows by rows inserted at its end.
   * @param cells rows below the headings, none wider than the table
   * @throws Error where the workbook has no such table or a row is too wide.
   */
  writeTable(name: string, cells: Cells): Promise<void>;

  /**
   * Writes cells of tables, all in one step; what stands around them stays. A table that is too short grows by rows inserted
   * above its last, which stays its last.
   * @throws Error where the workbook has no such table; nothing is written then
   */
  writeTableCells(cells: readonly TableCell[]): Promise<void>;

  /**
   * Puts columns into a table, whole columns of its sheet, all in one step; only where the host can.
   * @param headed columns that are there, counted from 0, and what heads them from now on
   * @throws Error where the workbook has no such table
   */
  insertColumns?(table: string, columns: readonly NewColumn[], headed?: readonly HeadedColumn[]): Promise<void>;

  /**
   * Puts a sheet behind those that are there and shows it, in one step; where its name is taken, it has a number as well.
   * @returns its name
   */
  addSheet(plan: SheetPlan): Promise<string>;

  /** Writes single cells, on whatever sheets; what stands around them stays. */
  writeCells(cells: readonly WrittenCell[]): Promise<void>;

  /**
   * Tells of each new selection, and of each new value of what is selected.
   * @param failed is told where the host cannot listen, or could not read what was selected
   */
  onSelection(listener: (selection: Selection | undefined) => void, failed: Failed): Stop;

  /**
   * Has work done with the tables as they have just been changed, before the cells are worked out, wherever no formula
   * reaches into them; only where the host can. The cells wait for it, though not for long.
   */
  beforeWorkedOut?(work: (tables: ReadonlyMap<string, Cells>) => Promise<void>): Stop;

  /** Tells once of changes that follow each other closely, after they have been worked out. */
  onContent(listener: () => void, failed: Failed): Stop;
}

/** A picture for a sheet. */
export interface SheetPicture {
  /** In base64. */
  readonly png: string;
  readonly name: string;
  /** For whoever does not see it. */
  readonly description: string;
  /** Of the drawing, mm. */
  readonly width: number;
}

/** A table's area with its headings. Rows and columns count from 0. */
export interface TablePlace extends CellPlace {
  readonly rows: number;
  readonly columns: number;
}

/** A table's area, and the first row further down that holds something under its columns, which no formula reads. */
export interface PlacedTable extends TablePlace {
  readonly filledBelow?: number | undefined;
}

/** A reference as formulas have it: cells of a sheet, or a table or one of its columns by name. */
export type Reference =
  | ({ readonly kind: 'cells' } & TablePlace)
  | {
      readonly kind: 'table';
      readonly table: string;
      /** all: with its headings. */
      readonly part: 'all' | 'data';
      readonly column?: string | undefined;
    };

/** Cells and where they stand. */
export interface Block {
  readonly place: TablePlace;
  readonly cells: Cells;
}
