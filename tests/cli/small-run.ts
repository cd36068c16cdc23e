import { writeBook } from '../../src/exchange/xlsx/write';
import { bookOfGrid } from '../../src/host/grid/book-of-grid';
import { snapshotOf } from '../../src/host/grid/snapshot';
import { planningWorkbook } from '../../src/workbook/planning-workbook';

const sheet = (code: string, material: string, nominal: number, more: object = {}) => ({
  code,
  material,
  nominal,
  width: 500,
  length: 1000,
  price: 14,
  soldBy: 'sheet',
  density: 240,
  ...more,
});

/** An invented run of one flat sandal, quickly worked out, in which nothing is to be put right. */
export const smallRun = planningWorkbook({
  name: 'Quay run',
  note: 'Invented for tests.',
  money: '€',
  sizes: [38, 39, 40],
  pairage: [{ style: 'Woodruff', customer: 'Quay shop', 38: 3, 39: 4, 40: 3 }],
  styles: [
    {
      code: 'Woodruff',
      last: 'Sandal 0',
      sole: 'Foam 18',
      outsole: 'Rubber 4',
      lastedSubstance: 0,
      projection: 2,
      roundingAllowance: 2,
    },
  ],
  lasts: [
    {
      code: 'Sandal 0',
      system: 'EU',
      baseSize: 38,
      length: 255,
      heelHeight: 0,
      toeSpring: 12,
      tread: 88,
      waist: 64,
      seat: 62,
      swing: 4,
      pairsOnHand: 2,
      daysOnLast: 2,
    },
  ],
  lastSizes: [],
  // Five soles lie on a sheet of foam if they lie crosswise, which rows do not.
  stock: [
    sheet('Foam 18', 'foam', 18, { width: 384, length: 384, direction: 'any way' }),
    sheet('Rubber 4', 'rubber', 4, { width: 1200, density: 1100 }),
  ],
  rates: [{ item: 'Work', value: 30, unit: 'money an hour' }],
  outlines: [],
  offcuts: [],
  ticket: { style: 'Woodruff' },
});

/** The run as a file that was never worked out. */
export const smallFile = (plan = smallRun): Uint8Array => writeBook(bookOfGrid(snapshotOf(plan, 'workbook')));
