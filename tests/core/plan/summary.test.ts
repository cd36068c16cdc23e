import { describe, expect, it } from 'vitest';
import { type Check, problemCheck } from '../../../src/core/plan/checks/check';
import { summary } from '../../../src/core/plan/summary';
import { Problem } from '../../../src/core/problem';

const order = (buy: number, toPay?: number) => ({ buy, toPay }) as never;
const cost = (pairs: number, hours: number, whole: number) => ({ run: { pairs }, hours, whole }) as never;
const row = (due: number | undefined, pairs: number) => ({ due, pairs });
const check = (kind: string, verdict: string) => ({ kind, verdict, subject: 'A' }) as unknown as Check;
const nothing = { asked: [], orders: [], costs: [], notOrdered: [], notCosted: [], checks: [] };

describe('summary', () => {
  it('adds up pairs, money and hours', () => {
    const costs = [cost(10, 5, 200), cost(2, 3, 50)];
    const { pairs, toPay, whole, hours } = summary({
      ...nothing,
      costs,
      orders: [order(1, 12.5), order(2), order(0, 0)],
    });
    expect({ pairs, toPay, whole, hours }).toEqual({ pairs: 12, toPay: 12.5, whole: 250, hours: 8 });
  });

  it('has the first day on which pairs are due, not that of a row without any', () => {
    expect(summary({ ...nothing, asked: [row(20, 1), row(10, 0), row(15, 2), row(undefined, 1)] }).due).toBe(15);
    expect(summary(nothing).due).toBeUndefined();
  });

  it('has no next day where one cannot be read: that may be the first', () => {
    const slip = (column: string) =>
      problemCheck(new Problem('invalid', { argument: 'pairage', row: 2, column }, 'wrong'));
    const asked = [row(20, 1), row(undefined, 2)];
    expect(summary({ ...nothing, asked, checks: [slip('Due')] }).due).toBeUndefined();
    expect(summary({ ...nothing, asked, checks: [slip('Style')] }).due).toBe(20);
  });

  it('says what comes next: put right, be in time, order, cut', () => {
    const orders = [order(3), order(0), order(2)];
    const late = check('late', 'putRight');
    const slip = new Problem('invalid', { argument: 'lasts' }, 'wrong');
    expect(summary({ ...nothing, orders, checks: [late, check('lasts', 'putRight')] }).next).toMatchObject({
      kind: 'putRight',
      check: { kind: 'lasts' },
    });
    expect(summary({ ...nothing, orders, checks: [late, check('price', 'lookAt')] })).toMatchObject({
      putRight: 1,
      next: { kind: 'late' },
    });
    expect(summary({ ...nothing, orders, checks: [problemCheck(slip)] }).next).toMatchObject({
      check: { problem: slip },
    });
    expect(summary({ ...nothing, orders }).next).toEqual({ kind: 'buy', stocks: 2, sheets: 5 });
    expect(summary({ ...nothing, orders: [order(1)] }).next).toEqual({ kind: 'buy', stocks: 1, sheets: 1 });
    expect(summary({ ...nothing, orders: [order(0)] }).next).toEqual({ kind: 'cut' });
  });
});
