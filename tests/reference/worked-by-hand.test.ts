import { describe, expect, it } from 'vitest';
import { loadBundle } from '../bundle';

/**
 * One style worked wholly by hand, from measurements to order; src/help/worked-by-hand.html tells it step by step. The
 * last is a ramp, so that every figure is school arithmetic: gap 40 up to x 60, straight to 0 at x 160, 60 wide, square.
 * All values here are derived by hand from the inputs below.
 */
const { call } = loadBundle();

const pairage = [
  ['Style', 38],
  ['Ramp shoe', 10],
];
const styles = [
  [
    'Style',
    'Last',
    'Raise',
    'Lifts',
    'Platform',
    'Outsole',
    'Lasted substance',
    'Projection',
    'Rough edge',
    'Edge left',
    'Rasping',
    'Front slant',
  ],
  ['Ramp shoe', 'Ramp', 'wedge', 'Cork 7, Cork 3', 'Foam 8', 'Rubber 4', 0, 0, 0, 0.1, 0, 0],
];
const lasts = [
  [
    'Last',
    'System',
    'Base size',
    'Bottom length',
    'Heel height',
    'Tread',
    'Waist',
    'Seat',
    'Measured',
    'Pairs on hand',
    'Days on last',
  ],
  // The bottom is 60 + √(100² + 40²) = 167.70 long to the tread, which lies at two thirds of its length.
  ['Ramp', 'EU', 38, 251.55, 40, 60, 60, 60, 'Ramp', 2, 2],
];
const stock = [
  [
    'Stock',
    'Material',
    'Thick',
    'Width',
    'Length',
    'Price',
    'Sold by',
    'On hand',
    'Density',
    'Knife room',
    'Edge trim',
  ],
  ['Cork 7', 'cork', 7, 500, 1000, 12, 'sheet', 1, 250, 0, 0],
  ['Cork 3', 'cork', 3, 500, 1000, 20, 'kg', 0, 250, 0, 0],
  ['Foam 8', 'foam', 8, 500, 1000, 30, 'm²', 0, 200, 0, 0],
  ['Rubber 4', 'rubber', 4, 500, 1000, 4, 'ft²', 0, 1150, 0, 0],
];
const rates = [
  ['Item', 'For', 'Value', 'Counts'],
  ['Work', '', 30, 'money an hour'],
  ['Adhesive', '', 10, 'money a litre'],
  ['Adhesive', '', 4, 'm² a litre'],
  ['Spoilage', '', 0.05, 'share spoiled'],
  ['Cutting', '', 1, 'minutes a piece'],
  ['Skiving', '', 2, 'minutes a skive'],
  ['Gluing', '', 1, 'minutes a joint'],
  ['Finishing', '', 15, 'minutes a pair'],
  ['Sock', '', 1.5, 'money a pair'],
];
const outlines = [
  ['Code', 'Role', 'x', 'y'],
  ...[
    [0, 40],
    [60, 40],
    [60, 40],
    [160, 0],
  ].map(([x, y]) => ['Ramp', 'gap', x, y]),
  ...[
    [0, -30],
    [251.55, -30],
    [251.55, 30],
    [0, 30],
  ].map(([x, y]) => ['Ramp', 'bottom', x, y]),
];
const plan = [pairage, styles, lasts, stock, rates, outlines];

const table = (name: string, ...args: unknown[]) => call(name, ...args) as (string | number)[][];
/** Values of one column, without the heading. */
const column = (cells: (string | number)[][], heading: string) => {
  const at = (cells[0] as string[]).findIndex((one) => String(one).startsWith(heading));
  return cells.slice(1).map((row) => row[at]);
};
const near = (found: unknown, wanted: readonly number[], within: number) =>
  wanted.forEach((value, i) => expect(Math.abs(Number((found as unknown[])[i]) - value)).toBeLessThanOrEqual(within));

describe('a style worked by hand from measurements to order', () => {
  it('has four lifts of 7 and four of 3 on platform and outsole', () => {
    const pieces = table('PIECES', ...plan);
    expect(column(pieces, 'Piece')).toEqual([...new Array<string>(8).fill('Lift'), 'Platform', 'Outsole']);
    // From the last downward: 40 = 4 × 7 + 4 × 3, the stoutest next to the ground.
    expect(column(pieces, 'Thick')).toEqual([3, 3, 3, 3, 7, 7, 7, 7, 8, 4]);
    expect(column(pieces, 'Cut')).toEqual(new Array<number>(10).fill(20));
  });

  it('reaches with each lift to where the bottom stands at its lower face and the kept edge of 0.1', () => {
    const pieces = table('PIECES', ...plan);
    // x = 160 − 2.5 z; the ground lift stops 5 behind the tread; platform 160 + 83.85 of forepart.
    near(column(pieces, 'Length'), [67.25, 74.75, 82.25, 89.75, 107.25, 124.75, 142.25, 155, 243.85, 243.85], 0.01);
    near(column(pieces, 'Width'), new Array<number>(10).fill(60), 1e-6);
    near(column(pieces, 'Area'), [40.35, 44.85, 49.35, 53.85, 64.35, 74.85, 85.35, 93, 146.31, 146.31], 0.01);
  });

  it('skives each lift at the slope of the ramp, atan(40 / 100) = 21.80°', () => {
    const pieces = table('PIECES', ...plan);
    near(column(pieces, 'Skive'), [7.25, 7.25, 7.25, 7.25, 17.25, 17.25, 17.25, 12.5], 0.01);
    near(column(pieces, 'Angle'), new Array<number>(8).fill(21.8), 0.01);
    near(column(pieces, 'Edge left'), [0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 2], 0.01);
  });

  it('needs no more sheets than the net area alone asks for', () => {
    const cutting = table('CUTTING', ...plan);
    // 20 × (9,300 + 8,535 + 7,485 + 6,435) = 635,100 mm² of sheets of 500,000: 2; and so on.
    expect(column(cutting, 'Sheets')).toEqual([2, 1, 1, 1]);
    expect(column(cutting, 'Least')).toEqual([2, 1, 1, 1]);
    near(column(cutting, 'Area use'), [63.51, 75.36, 58.524, 58.524], 0.01);
  });

  it('orders by sheet, kg, m² and ft²', () => {
    const order = table('ORDER', ...plan);
    expect(column(order, 'Buy')).toEqual([1, 1, 1, 1, '']);
    // 12; 0.5 m² × 3 mm × 250 kg/m³ = 0.375 kg × 20; 0.5 m² × 30; 500,000 / 92,903.04 ft² × 4.
    near(column(order, 'Price'), [12, 7.5, 15, 21.5278], 0.001);
    near(column(order, 'To pay'), [12, 7.5, 15, 21.5278, 56.0278], 0.001);
  });

  it('costs stock, adhesive, sundries, work and spoilage', () => {
    const cost = table('COST', ...plan);
    const first = (heading: string) => column(cost, heading)[0] as number;
    // All sheets needed, also the one on hand: (24 + 7.5 + 15 + 21.5278) / 10.
    expect(first('Stock')).toBeCloseTo(6.80278, 4);
    // Joints of a foot: 9,300 wedge to last, 41,295 lift to lift, 14,631 twice: 79,857 mm²; 2 faces × 2 feet / 4 m² a litre.
    expect(first('Glue\nml')).toBeCloseTo(79.857, 1);
    // 2 × (10 pieces + 8 skives × 2 + 10 joints) + 15 minutes.
    expect(first('Work\nmin')).toBe(87);
    expect(first('Spoilage')).toBeCloseTo(0.05 * (6.80278 + 0.79857), 4);
    expect(first('Cost')).toBeCloseTo(6.80278 + 0.79857 + 1.5 + 43.5 + 0.38007, 3);
    expect(first('The run')).toBeCloseTo(529.814, 2);
    // Lifts 263,695 mm³ × 250 kg/m³, platform 14,631 × 8 × 200, outsole 14,631 × 4 × 1,150, two feet.
    expect(first('Weight')).toBeCloseTo(2 * (65.924 + 23.4096 + 67.3026), 1);
  });

  it('stands 52 under the seat and 12 under the tread', () => {
    const checks = table('CHECKS', ...plan);
    const heel = checks.find((row) => String(row[1]).startsWith('Heel height'));
    expect(heel?.slice(2, 4)).toEqual([40, 40]);
    expect(heel?.[5]).toBe('52 under the seat, 12 under the tread');
  });

  it('takes five rounds of two pairs of lasts, ten days', () => {
    const rounds = table('ROUNDS', ...plan);
    expect(column(rounds, 'Round\nlast')).toEqual([5]);
    expect(column(rounds, 'Done\ndays')).toEqual([10]);
  });

  it('lists the heights for the gauge, from the last downward', () => {
    const ticket = table('TICKET', 'Ramp shoe', ...plan);
    near(column(ticket, 'At back'), [52, 49, 46, 43, 40, 33, 26, 19, 12, 4], 1e-6);
  });
});
