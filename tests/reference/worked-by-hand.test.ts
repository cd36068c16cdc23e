import { describe, expect, it } from 'vitest';
import { BY_HAND, rampShoe } from '../../src/help/ramp-shoe';
import { loadBundle } from '../bundle';

/**
 * One style worked wholly by hand, from measurements to order; src/help/worked-by-hand.ts tells it step by step. The
 * last is a ramp, so that every figure is school arithmetic: gap 45 up to x 60, straight to 0 at x 168, 60 wide, square.
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
  it('has seven lifts of 6 and one of 4 on platform and outsole', () => {
    const pieces = table('PIECES', ...plan);
    expect(column(pieces, 'Piece')).toEqual([...new Array<string>(8).fill('Lift'), 'Platform', 'Outsole']);
    // From the last downward: 46 = 7 × 6 + 4, 1 of it rasped off, the stoutest next to the ground.
    expect(column(pieces, 'Thick')).toEqual([...BY_HAND.thick]);
    expect(column(pieces, 'Cut')).toEqual(new Array<number>(10).fill(20));
  });

  it('reaches with each lift to where the bottom stands at its lower face and the 0.1 that it is skived to', () => {
    const pieces = table('PIECES', ...plan);
    // x = 168 − 2.4 z; the ground lift stops 5 behind the tread; platform 168 + 88.5 of forepart.
    near(column(pieces, 'Length'), BY_HAND.length, 0.01);
    near(column(pieces, 'Width'), new Array<number>(10).fill(60), 1e-6);
    near(column(pieces, 'Area'), BY_HAND.area, 0.01);
  });

  it('skives each lift at the slope of the ramp, atan(45 / 108) = 22.62°', () => {
    const pieces = table('PIECES', ...plan);
    near(column(pieces, 'Skive'), BY_HAND.skive, 0.01);
    near(column(pieces, 'Angle'), new Array<number>(8).fill(BY_HAND.angle), 0.01);
    near(column(pieces, 'Skive to'), BY_HAND.skiveTo, 0.01);
  });

  it('needs no more sheets than the net area alone asks for', () => {
    const cutting = table('CUTTING', ...plan);
    // 20 × 52,893.6 = 1,057,872 mm² of sheets of 500,000: 3; and so on.
    expect(column(cutting, 'Sheets')).toEqual([...BY_HAND.sheets]);
    expect(column(cutting, 'Least')).toEqual([...BY_HAND.sheets]);
    near(column(cutting, 'Area use'), BY_HAND.areaUse, 0.01);
  });

  it('orders by sheet, kg, m² and ft²', () => {
    const order = table('ORDER', ...plan);
    expect(column(order, 'Buy')).toEqual([...BY_HAND.buy, '']);
    // 12; 0.5 m² × 4 mm × 250 kg/m³ = 0.5 kg × 20; 0.5 m² × 30; 500,000 / 92,903.04 ft² × 4.
    near(column(order, 'Price'), BY_HAND.price, 0.001);
    near(column(order, 'To pay'), [...BY_HAND.price, BY_HAND.toPay], 0.001);
  });

  it('costs stock, adhesive, sundries, work and spoilage', () => {
    const cost = table('COST', ...plan);
    const first = (heading: string) => column(cost, heading)[0] as number;
    // All sheets needed, also those on hand: (36 + 10 + 15 + 21.5278) / 10.
    expect(first('Stock')).toBeCloseTo(BY_HAND.stock, 4);
    // Joints of a foot: 9,780 wedge to last, 47,275.2 lift to lift, 15,390 twice: 87,835.2 mm²; 2 faces × 2 feet / 4 m² a litre.
    expect(first('Adhesive\nml')).toBeCloseTo(BY_HAND.adhesive, 1);
    // 2 × (10 pieces + 8 skives × 2 + 10 joints) + 15 minutes.
    expect(first('Work\nmin')).toBe(BY_HAND.minutes);
    expect(first('Spoilage')).toBeCloseTo(0.05 * (8.25278 + 0.87835), 4);
    expect(first('Cost')).toBeCloseTo(8.25278 + 0.87835 + 1.5 + 43.5 + 0.45656, 3);
    expect(first('The run')).toBeCloseTo(BY_HAND.run, 2);
    // From the side the lifts are 6 × (6 · x + 14.16 · 6.1 / 2) with x 141.6, 127.2 … 69.6 where their upper faces meet the
    // bottom, 4 · 60 + 9.36 · 4.1 / 2 of the uppermost and 5 · 156 + 7 · 7.0833 / 2 of the ground lift: 5,124.708 mm².
    // × 60 × 250 kg/m³, platform 15,390 × 10 × 200, outsole 15,390 × 4 × 1,150, two feet.
    expect(first('Weight')).toBeCloseTo(2 * (76.8706 + 30.78 + 70.794), 1);
  });

  it('has room for an eleventh pair, which costs adhesive, sundries, work and spoiled adhesive', () => {
    const further = table('FILLUP', ...plan);
    expect([column(further, 'Style')[0], column(further, 'Size')[0]]).toEqual(['Ramp shoe', 38]);
    // As in Cost, without stock and what is spoiled of it: 0.87835 + 1.5 + 43.5 + 0.05 × 0.87835.
    expect(column(further, 'Beyond stock')[0]).toBeCloseTo(45.92227, 4);
  });

  it('stands 59 at the back and 14 under the tread', () => {
    const checks = table('CHECKS', ...plan);
    const heel = checks.find((row) => String(row[1]).startsWith('Heel control'));
    expect(heel?.slice(2, 4)).toEqual([45, 45]);
    expect(heel?.[5]).toBe('59 at the back, 14 under the tread');
  });

  it('takes five batches of two pairs of lasts, ten days', () => {
    const batches = table('BATCHES', ...plan);
    expect(column(batches, 'To batch')).toEqual([BY_HAND.batches]);
    expect(column(batches, 'Done\ndays')).toEqual([BY_HAND.days]);
  });

  it('lists the heights for the gauge as the steps change them', () => {
    const heights = column(table('TICKET', 'Ramp shoe', ...plan), 'At back').filter((height) => height !== '');
    // 4 + 7 × 6 of lifts, 1 of it rasped off, 10 of platform, 4 of outsole.
    const changes = heights.filter((height, i) => i === 0 || Math.abs(Number(height) - Number(heights[i - 1])) > 1e-6);
    expect(changes).toHaveLength(BY_HAND.gauge.length);
    near(changes, BY_HAND.gauge, 1e-6);
  });
});
