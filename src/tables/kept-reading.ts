import { bytesOfRecords } from '../core/bytes';
import { Memo } from '../core/memo';
import { planMemory } from '../core/plan/plan-memory';
import { shared } from '../core/shared';
import { alike } from './alike';
import type { Cells } from './cell';
import { type Reading, readTable } from './read';
import type { Columns, Table } from './schema';

const readings = new Memo<Reading<Columns>>(planMemory, 'table', ({ rows }) => bytesOfRecords(3 * rows.length));

/** What was read last of each table, by its argument. */
const latest = shared('tables read last', () => new Map<string, Reading<Columns>>());

/**
 * Reads a table once for the same cells. Where only some rows are others than before, those of the other rows stay the
 * very same records, so that what was made of them need not be made anew.
 * @param content of the cells
 */
export function keptReading<C extends Columns>(table: Table<C>, cells: Cells, content: string): Reading<C> {
  const reading = readings.get(`${table.argument} ${content}`, () => {
    const read = readTable(table, cells);
    const before = new Map(latest.get(table.argument)?.rows.map((row) => [row.row, row]));
    const rows = read.rows.map((row) => {
      const known = before.get(row.row);
      return known && alike(known, row) ? known : row;
    });
    return { ...read, rows };
  }) as Reading<C>;
  latest.set(table.argument, reading);
  return reading;
}
