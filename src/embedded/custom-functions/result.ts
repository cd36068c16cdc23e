import { greatestOf } from '../../core/numerics/extremes';
import { Failure, type Scalar } from './arguments';

/** A function's answer as cells: one value, or rows of equal length that spill. */
export type Answer = Scalar | Failure | readonly (readonly (Scalar | Failure)[])[];

/**
 * What a custom function returned, as cells. Numbers that are none become errors, nothing becomes blank text, and rows
 * shorter than the longest end in #N/A, as in the office suite.
 */
export function answerFrom(returned: unknown): Answer {
  if (!Array.isArray(returned)) return cellFrom(returned);
  const rows = (returned.every(Array.isArray) ? returned : [returned]) as readonly (readonly unknown[])[];
  const columns = Math.max(0, greatestOf(rows.map((row) => row.length)));
  if (columns === 0) return new Failure('#CALC!', 'The answer is an empty table.');
  return rows.map((row) =>
    Array.from({ length: columns }, (_, at) => (at < row.length ? cellFrom(row[at]) : new Failure('#N/A'))),
  );
}

/** What a custom function threw, or rejected with. */
export function failureFrom(thrown: unknown): Failure {
  if (thrown instanceof Failure) return thrown;
  const code = property(thrown, 'code');
  const message = property(thrown, 'message') ?? String(thrown);
  return new Failure(code?.startsWith('#') ? code : '#VALUE!', message || undefined);
}

function cellFrom(value: unknown): Scalar | Failure {
  if (value === null || value === undefined) return '';
  if (typeof value === 'number') {
    if (Number.isNaN(value)) return new Failure('#VALUE!', 'The answer is not a number.');
    return Number.isFinite(value) ? value : new Failure('#NUM!', 'The answer is beyond every number.');
  }
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  if (value instanceof Failure || property(value, 'code')?.startsWith('#')) return failureFrom(value);
  return new Failure('#VALUE!', 'The answer is of a kind that no cell can show.');
}

function property(value: unknown, name: 'code' | 'message'): string | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const found: unknown = Reflect.get(value, name);
  return typeof found === 'string' ? found : undefined;
}
