import { describe, expect, it } from 'vitest';
import { costByMaterial, costPicture } from '../../src/drawing/cost-picture';
import { standalone } from '../../src/drawing/standalone';
import { css, demoPlan } from './demo-plan';

const { plan, money } = demoPlan();
const { orders } = plan;

// The first plan of the demo, hides and all, takes its time on a busy machine.
describe('the picture of cost by material', { timeout: 60_000 }, () => {
  it('is as it was looked at', async () => {
    const drawn = costPicture({ orders, money, shown: 'cork' }, 92);
    await expect(standalone(drawn, 'Cost by material', css)).toMatchFileSnapshot('snapshots/cost.svg');
  });

  it('sums what is to be paid, dearest material first', () => {
    const costs = costByMaterial(orders);
    const toPay = orders.reduce((sum, line) => sum + (line.toPay ?? 0), 0);
    expect(costs.reduce((sum, one) => sum + one.toPay, 0)).toBeCloseTo(toPay, 9);
    expect(costs.map((one) => one.toPay)).toEqual(costs.map((one) => one.toPay).sort((a, b) => b - a));
    expect(costPicture({ orders, money }, 92).label).toContain(`to buy ${toPay.toFixed(2)}`);
  });

  it('says which stock has no price instead of leaving it out in silence', () => {
    const lacking = orders.map((line, i) => (i === 0 ? { ...line, sheetPrice: undefined, toPay: undefined } : line));
    const { facts, label } = costPicture({ orders: lacking, money }, 92);
    expect(label).toContain('Stock without a price is left out');
    expect(facts.some(([, value]) => value.includes(`without a price: ${orders[0]?.cutting.stock.code}`))).toBe(true);
  });
});
