import {
  ArrayValueObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from '@univerjs/engine-formula';
import { type Argument, CellError, Failure, type Scalar } from './arguments';
import type { Answer } from './result';

/** Ranges that have been read: within one calculation the engine hands all functions the same object for the same range. */
const read = new WeakMap<BaseValueObject, Argument>();

/** The formula engine's value as an argument; of the same range, the same rows. */
export function argumentFromEngine(value: BaseValueObject): Argument {
  if (!value.isArray()) return scalarFromEngine(value);
  const known = read.get(value);
  if (known !== undefined) return known;
  const rows = value.getArrayValue().map((row) => row.map((cell) => (cell ? scalarFromEngine(cell) : null)));
  read.set(value, rows);
  return rows;
}

/** Where a range stands that the formula engine hands over; undefined for a value and for what is worked out. */
export function standingIn(value: BaseValueObject): { sheetId: string; row: number; column: number } | undefined {
  if (!value.isArray()) return undefined;
  const range = value as ArrayValueObject;
  const [sheetId, row, column] = [range.getSheetId(), range.getCurrentRow(), range.getCurrentColumn()];
  return sheetId && row >= 0 && column >= 0 ? { sheetId, row, column } : undefined;
}

function scalarFromEngine(value: BaseValueObject): Scalar | CellError {
  if (value.isError()) return new CellError((value as ErrorValueObject).getErrorType());
  return value.isNull() ? null : value.getValue();
}

/** An answer as the formula engine's value; an array spills. */
export function answerToEngine(answer: Answer): BaseValueObject {
  return Array.isArray(answer)
    ? arrayToEngine(answer.map((row: readonly (Scalar | Failure)[]) => row.map(cellToEngine)))
    : cellToEngine(answer as Scalar | Failure);
}

/** Rows of equal length as one value that spills. */
export function arrayToEngine(rows: BaseValueObject[][]): BaseValueObject {
  return ArrayValueObject.create({
    calculateValueList: rows,
    rowCount: rows.length,
    columnCount: rows[0]?.length ?? 0,
    unitId: '',
    sheetId: '',
    row: -1,
    column: -1,
  });
}

function cellToEngine(cell: Scalar | Failure): BaseValueObject {
  if (cell instanceof Failure) return ErrorValueObject.create(errorType(cell.code));
  if (typeof cell === 'number') return NumberValueObject.create(cell);
  if (typeof cell === 'boolean') return BooleanValueObject.create(cell);
  return StringValueObject.create(cell ?? '');
}

const known: ReadonlySet<string> = new Set(Object.values(ErrorType));

function errorType(code: string): ErrorType {
  return known.has(code) ? (code as ErrorType) : ErrorType.VALUE;
}

/** What a cell shows while its data is on the way. */
export const onTheWay = ErrorType.CONNECT;
