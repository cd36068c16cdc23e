import { Problem, type Place } from '../problem';
import type { Style } from './style';

/** The cell of Styles that a problem of a style lies in. */
export function styleCell(style: Style, column: string): Place {
  return { argument: 'styles', table: 'Styles', row: style.row, column };
}

/** Says of a problem of the calculation which cell of Styles it comes from. */
export function within<T>(style: Style, column: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof Problem) throw new Problem(error.code, styleCell(style, column), error.reason);
    throw error;
  }
}
