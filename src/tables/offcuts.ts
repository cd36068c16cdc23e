import { SMALLEST_OFFCUT } from '../core/cutting/sheet/leftover';
import { number, optional, table, text } from './schema';

/** A side of an offcut, mm. */
const SIDE = { unit: 'mm', least: SMALLEST_OFFCUT, most: 100_000, format: '0' };

export const offcutsTable = table({
  name: 'Offcuts',
  argument: 'offcuts',
  meaning: 'One row for each rectangle left of a sheet, sound all over, that you would cut from before a whole one',
  key: 'code',
  columns: {
    code: text({ heading: 'Offcut', meaning: 'Code by which you find it on the shelf' }),
    stock: text({ heading: 'Stock', meaning: 'Code of the sheet that it was cut from' }),
    place: optional(text({ heading: 'Place', meaning: 'Where you have put it' })),
    length: number({ heading: 'Length', meaning: 'Along the sheet that it was cut from', ...SIDE }),
    width: number({ heading: 'Width', meaning: 'Across the sheet that it was cut from', ...SIDE }),
  },
});
