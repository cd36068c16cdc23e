import { placeInWords } from '../../core/problem';
import { cellAddress } from '../../tables/cell-address';
import { INPUT_TABLES } from '../../tables/input-tables';
import { sheetInFormula } from '../../workbook/address';
import { argumentCount, type FunctionMetadata, type ParameterMetadata } from './metadata';

/** A cell's value as the grid has it: null is a blank cell. */
export type Scalar = number | string | boolean | null;

/** A cell that holds an error. */
export class CellError {
  constructor(readonly code: string) {}
}

/** An argument as the grid hands it over: one value, or the rows of a range or an array. */
export type Argument = Scalar | CellError | Range;

/** Rows of cells. */
type Range = readonly (readonly (Scalar | CellError)[])[];

/** Where a range stands: its sheet and its upper left cell, counted from 0. */
export interface Corner {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** The address of an argument as formulas write it, such as Run!A7:K20; undefined for what stands in no cells. */
export function addressOf(argument: Argument, corner: Corner | undefined): string | undefined {
  if (!corner || !isBlock(argument)) return undefined;
  const { sheet, row, column } = corner;
  const [rows, columns] = [argument.length, argument[0]?.length ?? 0];
  const end = rows * columns > 1 ? `:${cellAddress(row + rows - 1, column + columns - 1)}` : '';
  return `${sheetInFormula(sheet)}!${cellAddress(row, column)}${end}`;
}

/** An answer that is an error: its code for the cell and, where there is more to say, a sentence for its reader. */
export class Failure {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}

const isBlock = (argument: Argument): argument is Range => Array.isArray(argument);

/**
 * Size of the array that one call works through cell by cell: where a parameter for one value is given a range, the
 * function is called for each of its cells and the answers spill.
 */
export function liftedSize(metadata: FunctionMetadata, given: readonly Argument[]): { rows: number; columns: number } {
  let [rows, columns] = [1, 1];
  given.forEach((argument, at) => {
    const parameter = parameterAt(metadata, at);
    if (!parameter || parameter.dimensionality === 'matrix' || !isBlock(argument)) return;
    rows = Math.max(rows, argument.length);
    columns = Math.max(columns, argument[0]?.length ?? 0);
  });
  return { rows, columns };
}

/**
 * The arguments that a custom function is called with, by the office suite's convention: an omitted optional one is
 * null, a range is rows of cells, a value of type any arrives as it is, and repeating ones arrive as a list.
 * @param row the row of the lifted array that this call is for, from 0
 * @param column its column, from 0
 * @param corners where each argument stands, as far as it stands in cells
 * @throws Failure where an argument holds an error or cannot be what its parameter asks for.
 */
export function argumentsFor(
  metadata: FunctionMetadata,
  given: readonly Argument[],
  row = 0,
  column = 0,
  corners: readonly (Corner | undefined)[] = [],
): unknown[] {
  const { least, most } = argumentCount(metadata);
  if (given.length < least || given.length > most) {
    const counted = `${metadata.name} takes ${countInWords(least, most)}, not ${given.length}`;
    // Whoever writes 45,5;7 at home has the parts of one argument or of too many here.
    throw new Failure('#VALUE!', `${counted}; here a comma separates arguments and a point is the decimal mark`);
  }
  return metadata.parameters.map((parameter, at) =>
    parameter.repeating
      ? given.slice(at).map((argument, n) => argumentFor(parameter, argument, row, column, corners[at + n]))
      : argumentFor(parameter, given[at] ?? null, row, column, corners[at]),
  );
}

function parameterAt({ parameters }: FunctionMetadata, at: number): ParameterMetadata | undefined {
  const last = parameters[parameters.length - 1];
  return parameters[at] ?? (last?.repeating ? last : undefined);
}

function argumentFor(
  parameter: ParameterMetadata,
  argument: Argument,
  row: number,
  column: number,
  corner: Corner | undefined,
): unknown {
  if (parameter.dimensionality === 'matrix') {
    const omitted = argument === null && parameter.optional;
    return omitted ? null : rangeFor(parameter, isBlock(argument) ? argument : [[argument]], corner);
  }
  if (!isBlock(argument)) return converted(parameter, argument);
  // A single row or column serves every row or column of the lifted array; where another range is larger, it ends in #N/A.
  const cells = argument[argument.length === 1 ? 0 : row];
  const cell = cells?.[cells.length === 1 ? 0 : column];
  if (cell === undefined) throw new Failure('#N/A', `${parameter.name}: its range is smaller than another argument's`);
  return converted(parameter, cell);
}

/** A range that needs no change is handed on as it is: plan functions are given large tables, each of them the same. */
function rangeFor(parameter: ParameterMetadata, block: Range, corner: Corner | undefined): unknown {
  const asItIs = parameter.type === undefined || parameter.type === 'any';
  if (asItIs && !block.some((cells) => cells.some((cell) => cell instanceof CellError))) return block;
  const alone = block.length === 1 && block[0]?.length === 1;
  return block.map((cells, r) =>
    cells.map((cell, c) =>
      converted(parameter, cell, alone ? undefined : () => placeIn(parameter, block, r, c, corner)),
    ),
  );
}

/** Where a cell of a range is, in words: on its sheet, else in its table, whose rows are counted below the headings. */
function placeIn(
  { name: argument }: ParameterMetadata,
  block: Range,
  row: number,
  column: number,
  corner: Corner | undefined,
): string {
  const table = Object.values(INPUT_TABLES).find((one) => one.argument === argument)?.name;
  const heading = table === undefined || row === 0 ? undefined : block[0]?.[column];
  const headed = typeof heading === 'string' && heading.trim() ? heading.trim().split('\n')[0] : undefined;
  if (corner) {
    const cell = cellAddress(corner.row + row, corner.column + column);
    return [corner.sheet, cell, headed ?? ''].filter(Boolean).join(', ');
  }
  if (table !== undefined && row === 0) return `headings of ${table}, column ${column + 1}`;
  const counted = table === undefined ? { argument, row: row + 1 } : { argument, table, row };
  return placeInWords({ ...counted, column: headed ?? `column ${column + 1}` });
}

/** @param at where in its range the cell is; undefined for an argument of one cell */
function converted({ name, type, optional }: ParameterMetadata, cell: Scalar | CellError, at?: () => string): unknown {
  const where = () => at?.() ?? name;
  if (cell instanceof CellError) {
    throw new Failure(cell.code, `${where()}: the cell shows ${cell.code}; put that one right first`);
  }
  if (cell === null) return optional || type === undefined || type === 'any' || at ? null : blankAs(type);
  const bad = (kind: string) => new Failure('#VALUE!', `${where()}: "${String(cell)}" is not ${kind}; enter one`);
  switch (type) {
    case 'number': {
      const value = typeof cell === 'string' && cell.trim() === '' ? NaN : Number(cell);
      if (Number.isNaN(value)) throw bad('a number');
      return value;
    }
    case 'string':
      return typeof cell === 'boolean' ? String(cell).toUpperCase() : String(cell);
    case 'boolean':
      if (typeof cell !== 'string') return Boolean(cell);
      if (!/^(true|false)$/i.test(cell)) throw bad('TRUE or FALSE');
      return cell.toUpperCase() === 'TRUE';
    default:
      return cell;
  }
}

function blankAs(type: string): Scalar {
  return type === 'number' ? 0 : type === 'boolean' ? false : type === 'string' ? '' : null;
}

function countInWords(least: number, most: number): string {
  const plural = (count: number) => `${count} argument${count === 1 ? '' : 's'}`;
  if (most === Infinity) return `${plural(least)} or more`;
  return least === most ? plural(least) : `${least} to ${plural(most)}`;
}
