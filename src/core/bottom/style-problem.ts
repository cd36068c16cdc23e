import { type Place, Problem } from '../problem';
import type { Style } from './style';

/** Columns that a problem of the calculation is about whatever part it was met in. */
const OWN_COLUMNS: Readonly<Record<string, string>> = {
  edge_left: 'Edge left',
  rasping: 'Rasping',
  heel_taper: 'Heel taper',
};

/** The cell of Styles that a problem of a style lies in. */
export function styleCell(style: Style, column: string): Place {
  return { argument: 'styles', table: 'Styles', row: style.row, column };
}

/** Says of a problem of the calculation which cell of Styles it comes from. */
export function within<T>(style: Style, column: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    throw new Problem(error.code, styleCell(style, OWN_COLUMNS[error.place.argument] ?? column), error.reason);
  }
}
