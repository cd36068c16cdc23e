import type { PlaceWords } from '../core/problem';
import type { Cells } from '../tables/cell';
import { answer } from './answer';
import { addressesIn, argumentCells } from './argument-cells';

/**
 * Answers as `answer` does; sentences name the sheets' own cells where the host tells where the tables stand.
 * @param tables in the order of INPUT_TABLES, then what the host hands over behind all arguments
 */
export function answerAt<T>(tables: readonly unknown[], work: (where: PlaceWords) => T): T {
  const where = argumentCells(tables as readonly (Cells | null | undefined)[], addressesIn(tables.at(-1)));
  return answer(() => work(where), where);
}
