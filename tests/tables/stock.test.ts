import { describe, expect, it } from 'vitest';
import { Problem } from '../../src/core/problem';
import { priceOfSheet } from '../../src/core/stock/price';
import { lastOf, type Named, stockOf, styleOf } from '../core/samples';

describe('a stock from its row', () => {
  it('is as thick as measured, less what is sanded off', () => {
    expect(stockOf({ Thick: 7 }).thickness).toBe(7);
    expect(stockOf({ Thick: 7, Measured: 7.2 }).thickness).toBe(7.2);
    expect(stockOf({ Thick: 7, Measured: 7.2, 'Face loss': 0.7 }).thickness).toBeCloseTo(6.5, 9);
    expect(stockOf({ Thick: '12 iron' }).thickness).toBeCloseTo(6.35, 9);
    expect(() => stockOf({ Thick: 4, 'Face loss': 4 })).toThrow('4 mm sanded off leave less than 0.1 mm');
  });

  it('is, where nothing is said, sold by the sheet, one at a time, laid any way, 4 mm apart', () => {
    expect(stockOf({})).toMatchObject({
      soldBy: 'sheet',
      pack: 1,
      minimum: 0,
      onHand: 0,
      direction: 'any way',
      knifeRoom: 4,
      edgeTrim: 10,
      mouldedFace: false,
      usableShare: 1,
    });
  });
});

describe('a hide known by its area alone', () => {
  const blank = (own: Named) => {
    try {
      return stockOf({ Width: '', Length: '', ...own });
    } catch (error) {
      return error instanceof Problem ? error.reason : error;
    }
  };

  it('is told how to enter it where it is sold by area, and what is sold otherwise is not', () => {
    expect(blank({ 'Sold by': 'ft²' })).toBe(
      'it is blank; enter a number in mm, or name the outline of a traced hide under Outline; a hide of which you know the area alone is a rectangle of that area, such as 1000 × 929 for 10 ft², with its Usable share',
    );
    expect(blank({ 'Sold by': 'm²' })).toBe(blank({ 'Sold by': 'ft²' }));
    expect(blank({})).toBe('it is blank; enter a number in mm, or name the outline of a traced hide under Outline');
  });

  it('costs what its area costs, as such a rectangle: 10 ft² at 9 are 90, and its Usable share is not paid for less (1 ft² = 0.09290304 m²)', () => {
    const hide = stockOf({ Length: 1000, Width: 929, 'Sold by': 'ft²', Price: 9, 'Usable share': 0.8 });
    expect(Math.abs((priceOfSheet(hide) ?? NaN) - 90)).toBeLessThan(0.01);
  });
});

describe('a style from its row', () => {
  it('is, where nothing is said, flat, with 2.5 mm of lasted substance and 2 mm to rasp a side (common practice)', () => {
    expect(styleOf()).toMatchObject({
      raise: 'none',
      laying: 'flat',
      lastedSubstance: 2.5,
      roundingAllowance: 2,
      skiveTo: 1,
      shank: false,
    });
  });
});

describe('a last from its row', () => {
  it('keeps the pairs on hand of single sizes beside those of all', () => {
    const last = lastOf({ 'Pairs on hand': 2, 38: 4, '39,5': 1 });
    expect(last.pairsOnHand).toBe(2);
    expect([...last.pairsBySize]).toEqual([
      [38, 4],
      [39.5, 1],
    ]);
  });

  it('refuses a base size that its system does not have', () => {
    expect(() => lastOf({ 'Base size': 5 })).toThrow('row 1 of Lasts, Base size: 5 is no size of EU');
    expect(lastOf({ System: 'UK', 'Base size': 5 }).baseSize).toBe(5);
  });
});
