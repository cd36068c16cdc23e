import { describe, expect, it } from 'vitest';
import { compare } from '../../../src/core/plan/compare';
import { Plan } from '../../../src/core/plan/plan';
import { aspectsOf, variantsOf } from '../../../src/core/plan/variants';
import { demoPlan } from '../../drawing/demo-plan';

const { input } = demoPlan().plan;
const style = (code: string) => {
  const found = input.styles.find((one) => one.code === code);
  if (!found) throw new Error(`The demo has no ${code}.`);
  return found;
};

// The first plan of the demo, hides and all, takes its time on a busy machine.
describe('ways to build a style', { timeout: 60_000 }, () => {
  it('differ in what the style has: a slab has no lifts to lay otherwise', () => {
    expect(aspectsOf(style('Betony'))).toEqual(['laying', 'lifts', 'platform', 'outsole']);
    expect(aspectsOf(style('Clover'))).toEqual(['sole']);
  });

  it('begin with the one that is planned, which changes nothing', () => {
    for (const one of input.styles) {
      for (const aspect of aspectsOf(one)) expect(variantsOf(one, input.stock, aspect)[0]?.changes).toEqual({});
    }
  });

  it('put nothing on the ground that wears away there', () => {
    const outsoles = variantsOf(style('Betony'), input.stock, 'outsole').slice(1);
    const materials = outsoles.map(({ name }) => input.stock.find(({ code }) => code === name)?.material);
    expect(materials.length).toBeGreaterThan(1);
    expect(new Set(materials)).toEqual(new Set(['rubber', 'leather']));
  });

  it('make lifts of one material each, in every thickness that serves', () => {
    const named = variantsOf(style('Betony'), input.stock, 'lifts').map(({ changes }) => changes.lifts);
    expect(named).toContainEqual(['Foam 6', 'Foam 10']);
    expect(named.flat()).not.toContain('Kid 1');
  });

  it('come to the plan’s own cost, work and weight where nothing is changed', () => {
    const own = { ...input, pairage: input.pairage.filter((row) => row.style === 'Betony') };
    const [cost] = new Plan(own).costs;
    const [planned] = compare(input, 'Betony', variantsOf(style('Betony'), input.stock, 'laying').slice(0, 1));
    expect(planned?.result?.cost).toBeCloseTo(cost?.pair ?? 0, 9);
    expect(planned?.result?.minutes).toBeCloseTo(cost?.minutes ?? 0, 9);
    expect(planned?.result?.weight).toBeCloseTo(cost?.weight ?? 0, 9);
  });

  it('say why one cannot be built instead of leaving it out', () => {
    const [tried] = compare(input, 'Fennel', [{ name: 'thick', changes: { platform: ['Foam 18'] } }]);
    expect(tried?.result).toBeUndefined();
    expect(tried?.problem?.message).toMatch(/^row \d+ of Styles, Most rasping: no layers of 17.5 mm reach/);
  });
});
