import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import type { Act, Step } from '../../../src/core/steps/step';
import { operation } from '../../../src/core/steps/operation';
import { furtherWork, timesOf } from '../../../src/core/steps/times';
import { USUAL_TIMES } from '../../../src/core/steps/usual-times';
import type { Named } from '../samples';
import { bench, built, stepsFor } from './samples';

const SOLE: Named = { Sole: 'Bend 4' };
const sole = built(SOLE, 0);
const size = area(sole.bottom.layers[0]?.ring ?? []);
const the = (steps: readonly Step[], act: Act) => {
  const found = steps.find(({ acts }) => acts.includes(act));
  if (!found) throw new Error(`There is no ${act}.`);
  return found;
};
const minutes = (steps: readonly Step[]) => steps.reduce((sum, step) => sum + step.minutes, 0);
const millilitres = (steps: readonly Step[]) => steps.reduce((sum, { adhesive = NaN }) => sum + adhesive, 0);

describe('minutes', () => {
  const rates = ['minutes a piece', 'minutes a skive', 'minutes a joint'].map((Unit, i) => ({
    Item: Unit,
    Value: 10 ** i,
    Unit,
  }));

  it('are of every piece, skive and joint of both feet (derived)', () => {
    expect(minutes(stepsFor(sole, ...rates))).toBe(2 * (1 + 100));
    expect(minutes(stepsFor(built({ ...SOLE, 'Sole skive': 20 }, 0), ...rates))).toBe(2 * (1 + 10 + 100));
  });

  it('count no joint where a welt is sewn, and its skived ends as a skive (derived)', () => {
    const welted = stepsFor(built({ ...SOLE, Welt: 'Bend 4' }, 0), ...rates);
    expect(minutes(welted)).toBe(2 * (2 * 1 + 10 + 100));
  });

  it('by the pair are spread over the steps of their kind, and count nothing without one', () => {
    const of = (Step: string) => ({ Item: 'Hand work', Value: 30, Unit: 'minutes a pair', Step });
    const list = stepsFor(sole, of('prepare'));
    const preparing = list.filter(({ kind }) => kind === 'prepare');
    expect(preparing.length).toBeGreaterThan(1);
    for (const step of preparing) expect(step.minutes).toBeCloseTo(30 / preparing.length, 9);
    expect(minutes(list)).toBeCloseTo(30, 9);
    expect(minutes(stepsFor(sole, of('cover')))).toBe(0);
  });

  it('of finishing go to the edges alone: pulling the last takes no share, unless no edge is finished', () => {
    const finishing = { Item: 'Edge finishing', Value: 30, Unit: 'minutes a pair', Step: 'finish' };
    const two = stepsFor(built({ Sole: 'Bend 4', Outsole: 'Rubber 4' }, 0), finishing);
    const [edges, out] = [two.filter(({ acts }) => acts.includes('sand edge')), the(two, 'last out')];
    // Leather is inked and waxed, rubber sanded: two steps of 15 (worked by hand).
    expect(edges.map((step) => step.minutes)).toEqual([15, 15]);
    expect(out.minutes).toBe(0);
    const felt = stepsFor(built({ Sole: 'Felt 2' }, 0), finishing);
    expect(the(felt, 'last out').minutes).toBe(30);
  });

  it('by the pair without a kind of step are of the whole shoe', () => {
    const row = { Item: 'Hand work', Value: 30, Unit: 'minutes a pair' };
    expect(minutes(stepsFor(sole, row))).toBe(0);
    expect(furtherWork('Betony', bench(row).rates)).toEqual({ minutes: 30, items: ['Hand work'] });
    expect(furtherWork('Betony', bench({ ...row, Step: 'finish' }).rates)).toEqual({ minutes: 0, items: [] });
  });
});

describe('adhesive', () => {
  it('is both faces × coats / coverage, both feet: two coats are usual on leather (a maker’s sheet), unless one is given (derived)', () => {
    const coverage = { Value: 4, Unit: 'm² a litre' };
    expect(millilitres(stepsFor(sole, coverage))).toBeCloseTo((2 * 2 * 2 * size) / 4 / 1000, 6);
    // The lasted bottom is leather as the sole is: both have one coat where leather has.
    const once = { Value: 1, Unit: 'coats', For: 'leather' };
    expect(millilitres(stepsFor(sole, coverage, once))).toBeCloseTo((2 * 2 * size) / 4 / 1000, 6);
    expect(the(stepsFor(sole, coverage), 'coat').usualCoats).toBe(true);
    expect(the(stepsFor(sole, coverage, once), 'coat').usualCoats).toBe(false);
  });

  it('is not known without a coverage', () => {
    expect(stepsFor(sole).find(({ coated }) => coated)?.adhesive).toBeUndefined();
  });

  it('has the coats that are usual for it and how absorbent its face is; of polychloroprene where none is named', () => {
    const coats = (Adhesive: string, code = 'Bend 4') => [
      ...the(stepsFor(built({ Sole: code, Adhesive }, 0)), 'coat').coats,
    ];
    expect(coats('')).toEqual([2, 2]);
    expect(coats('', 'Rubber 4')).toEqual([2, 1]);
    expect(coats('polychloroprene')).toEqual([2, 2]);
    expect(coats('polychloroprene', 'Rubber 4')).toEqual([2, 1]);
    expect(coats('hot melt')).toEqual([1, 1]);
  });
});

describe('times', () => {
  it('are the maker’s where they are given, else the usual ones of the adhesive, told apart', () => {
    const own = [
      { Item: 'Open', Value: 12, Unit: 'minutes open' },
      { Item: 'Press', Value: 8, Unit: 'minutes pressed' },
      { Item: 'Flash-off', Value: 7, Unit: 'minutes waited' },
      { Item: 'Cure', Value: 90, Unit: 'minutes waited' },
    ];
    const [given, usual] = [stepsFor(sole, ...own), stepsFor(sole)];
    expect(the(given, 'coat')).toMatchObject({
      open: { value: 12, usual: false },
      wait: { value: 2 * 7, usual: false },
    });
    expect(the(given, 'press').pressed).toEqual({ value: 8, usual: false });
    expect(the(given, 'cure').wait).toEqual({ value: 90, usual: false });
    // Polychloroprene: a maker's sheet for shoes, and notes of a repair trade's bonding class.
    expect(the(usual, 'coat')).toMatchObject({
      open: { value: 20, usual: true },
      wait: { value: 2 * 10, usual: true },
    });
    expect(the(usual, 'cure').wait).toEqual({ value: 45, usual: true });
  });

  it('are those of the only piece of an operation, and the style’s where it has none', () => {
    const { rates } = bench(
      { Item: 'Drying', Value: 100, Unit: 'minutes waited', For: 'leather' },
      { Item: 'Drying', Value: 30, Unit: 'minutes waited' },
    );
    const drying = (pieces: typeof sole.bottom.layers) =>
      timesOf([operation('wait', ['dry'], pieces)], sole.style, rates)[0]?.wait;
    expect(drying(sole.bottom.layers.slice(0, 1))).toEqual({ value: 100, usual: false });
    expect(drying([])).toEqual({ value: 30, usual: false });
  });

  it('count each coat’s time to dry', () => {
    const twice = { Value: 2, Unit: 'coats' };
    expect(the(stepsFor(sole, twice), 'coat').wait?.value).toBe(20);
  });

  it('are taken for the shortest open film and the longest press of what is joined', () => {
    const two = built({ Sole: 'Foam 10', Outsole: 'Rubber 4' }, 0);
    const list = stepsFor(
      two,
      { Value: 15, Unit: 'minutes open' },
      { Value: 25, Unit: 'minutes open', For: 'rubber' },
      { Value: 5, Unit: 'minutes pressed' },
      { Value: 9, Unit: 'minutes pressed', For: 'rubber' },
    );
    expect(the(list, 'coat').open?.value).toBe(15);
    expect(the(list, 'press').pressed?.value).toBe(9);
  });

  it('ask for heat with an adhesive that is joined by it, within what is usual or at the maker’s degrees', () => {
    const warm = (Adhesive: string, ...rates: readonly Named[]) =>
      the(stepsFor(built({ ...SOLE, Adhesive }, 0), ...rates), 'join').warm;
    expect(warm('polyurethane')).toEqual({ least: 60, most: 80, usual: true });
    expect(warm('polychloroprene')).toBeUndefined();
    expect(warm('polyurethane', { Value: 65, Unit: 'degrees warmed' })).toEqual({
      least: 65,
      most: 65,
      usual: false,
    });
  });

  it('of every usual adhesive are sound: it is open for some time, pressed, and cures', () => {
    for (const { flashOff, open, pressed, cure, warm, coats, absorbent } of Object.values(USUAL_TIMES)) {
      expect(flashOff).toBeGreaterThanOrEqual(0);
      expect(Math.min(open, pressed, cure, coats, absorbent)).toBeGreaterThan(0);
      expect(warm.most).toBeGreaterThan(warm.least);
    }
  });
});
