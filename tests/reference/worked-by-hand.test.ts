import { describe, expect, it } from 'vitest';
import { BY_HAND, rampShoe } from '../../src/help/ramp-shoe';
import { loadBundle } from '../bundle';

/**
 * One style worked wholly by hand, from measurements to order; src/help/worked-by-hand.ts tells it step by step. The
 * last is a ramp, so that every figure is school arithmetic: gap 40 up to x 60, straight to 0 at x 160, 60 wide, square.
 * All values here are derived by hand from the inputs below.
 */
const { call } = loadBundle();

const plan = rampShoe;

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
    expect(column(pieces, 'Thick')).toEqual([...BY_HAND.thick]);
    expect(column(pieces, 'Cut')).toEqual(new Array<number>(10).fill(20));
  });

  it('reaches with each lift to where the bottom stands at its lower face and the 0.1 that it is skived to', () => {
    const pieces = table('PIECES', ...plan);
    // x = 160 − 2.5 z; the ground lift stops 5 behind the tread; platform 160 + 83.85 of forepart.
    near(column(pieces, 'Length'), BY_HAND.length, 0.01);
    near(column(pieces, 'Width'), new Array<number>(10).fill(60), 1e-6);
    near(column(pieces, 'Area'), BY_HAND.area, 0.01);
  });

  it('skives each lift at the slope of the ramp, atan(40 / 100) = 21.80°', () => {
    const pieces = table('PIECES', ...plan);
    near(column(pieces, 'Skive'), BY_HAND.skive, 0.01);
    near(column(pieces, 'Angle'), new Array<number>(8).fill(BY_HAND.angle), 0.01);
    near(column(pieces, 'Skive to'), [0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 2], 0.01);
  });

  it('needs no more sheets than the net area alone asks for', () => {
    const cutting = table('CUTTING', ...plan);
    // 20 × (9,300 + 8,535 + 7,485 + 6,435) = 635,100 mm² of sheets of 500,000: 2; and so on.
    expect(column(cutting, 'Sheets')).toEqual([...BY_HAND.sheets]);
    expect(column(cutting, 'Least')).toEqual([...BY_HAND.sheets]);
    near(column(cutting, 'Area use'), BY_HAND.areaUse, 0.01);
  });

  it('orders by sheet, kg, m² and ft²', () => {
    const order = table('ORDER', ...plan);
    expect(column(order, 'Buy')).toEqual([...BY_HAND.buy, '']);
    // 12; 0.5 m² × 3 mm × 250 kg/m³ = 0.375 kg × 20; 0.5 m² × 30; 500,000 / 92,903.04 ft² × 4.
    near(column(order, 'Price'), BY_HAND.price, 0.001);
    near(column(order, 'To pay'), [...BY_HAND.price, BY_HAND.toPay], 0.001);
  });

  it('costs stock, adhesive, sundries, work and spoilage', () => {
    const cost = table('COST', ...plan);
    const first = (heading: string) => column(cost, heading)[0] as number;
    // All sheets needed, also the one on hand: (24 + 7.5 + 15 + 21.5278) / 10.
    expect(first('Stock')).toBeCloseTo(BY_HAND.stock, 4);
    // Joints of a foot: 9,300 wedge to last, 41,295 lift to lift, 14,631 twice: 79,857 mm²; 2 faces × 2 feet / 4 m² a litre.
    expect(first('Adhesive\nml')).toBeCloseTo(BY_HAND.adhesive, 1);
    // 2 × (10 pieces + 8 skives × 2 + 10 joints) + 15 minutes.
    expect(first('Work\nmin')).toBe(BY_HAND.minutes);
    expect(first('Spoilage')).toBeCloseTo(0.05 * (6.80278 + 0.79857), 4);
    expect(first('Cost')).toBeCloseTo(6.80278 + 0.79857 + 1.5 + 43.5 + 0.38007, 3);
    expect(first('The run')).toBeCloseTo(BY_HAND.run, 2);
    // Lifts 263,695 mm³ × 250 kg/m³, platform 14,631 × 8 × 200, outsole 14,631 × 4 × 1,150, two feet.
    expect(first('Weight')).toBeCloseTo(2 * (65.924 + 23.4096 + 67.3026), 1);
  });

  it('stands 52 under the seat and 12 under the tread', () => {
    const checks = table('CHECKS', ...plan);
    const heel = checks.find((row) => String(row[1]).startsWith('Heel control'));
    expect(heel?.slice(2, 4)).toEqual([40, 40]);
    expect(heel?.[5]).toBe('52 under the seat, 12 under the tread');
  });

  it('takes five batches of two pairs of lasts, ten days', () => {
    const batches = table('BATCHES', ...plan);
    expect(column(batches, 'To batch')).toEqual([BY_HAND.batches]);
    expect(column(batches, 'Done\ndays')).toEqual([BY_HAND.days]);
  });

  it('lists the heights for the gauge, from the last downward', () => {
    const ticket = table('TICKET', 'Ramp shoe', ...plan);
    near(column(ticket, 'At back'), BY_HAND.gauge, 1e-6);
  });
});
