import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { writeBook } from '../exchange/xlsx/write';
import { bookOfGrid } from '../host/grid/book-of-grid';
import { snapshotOf } from '../host/grid/snapshot';
import { blank } from '../workbook/blank';
import { demo } from '../workbook/demo';
import { loadFunctions } from './functions-bundle';
import { workOut } from './headless-grid';

/** Entry of tables.cjs: writes the demo and the blank tables as workbook files, worked out, beside the built files. */
const functions = loadFunctions(__dirname);

async function write(): Promise<void> {
  for (const [name, plan] of [
    ['demo', demo],
    ['blank-tables', blank],
  ] as const) {
    const { workbook } = await workOut(snapshotOf(plan, 'workbook'), functions);
    writeFileSync(join(__dirname, `${name}.xlsx`), writeBook(bookOfGrid(workbook)));
  }
}

write().catch((error: unknown) => {
  console.error(error);
  process.exitCode = 1;
});
