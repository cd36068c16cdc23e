import { type Place, Problem } from '../problem';
import type { Style } from './style';

/** Columns that a problem of the calculation is about whatever part it was met in. */
const OWN_COLUMNS: Readonly<Record<string, string>> = {
  skive_to: 'Skive to',
  most_rasping: 'Most rasping',
  heel_taper: 'Heel taper',
};

/** The cell of Styles that a problem of a style lies in. */
export function styleCell(style: Style, column: string): Place {
  return { argument: 'styles', table: 'Styles', row: style.row, column };
}

/**
 * Says of a problem of the calculation which cell of Styles it comes from.
 * @param own columns by the argument that a problem names; all others are of `column`
 */
export function within<T>(style: Style, column: string, work: () => T, own = OWN_COLUMNS): T {
  try {
    return work();
  } catch (error) {
    // What names a cell already, such as that of a stock, lies there.
    if (!(error instanceof Problem) || error.place.table !== undefined) throw error;
    throw new Problem(error.code, styleCell(style, own[error.place.argument] ?? column), error.reason);
  }
}
