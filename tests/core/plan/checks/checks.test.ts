import { describe, expect, it } from 'vitest';
import { Plan } from '../../../../src/core/plan/plan';
import { inputOf, type Named, type NamedTables, ROUND, STOCKS, USUAL_TABLES } from '../../samples';

const style = (named: Named) => [{ ...USUAL_TABLES.styles[0], ...named }];
const checks = (tables: NamedTables) => new Plan(inputOf(tables)).checks;
const kinds = (tables: NamedTables, kind: string) => checks(tables).filter((check) => check.kind === kind);
const stock = (code: string, named: Named) => STOCKS.map((one) => (one.Stock === code ? { ...one, ...named } : one));

const priced: readonly Named[] = STOCKS.map((one) => ({ ...one, Price: 4 }));

describe('checks', () => {
  it('come as what to put right, then what to look at, then what holds', () => {
    const order = ['putRight', 'lookAt', 'holds'];
    const list = checks({}).map(({ verdict }) => order.indexOf(verdict));
    expect(new Set(list).size).toBe(3);
    expect(list).toEqual([...list].sort());
  });

  it('hold seat and tread against the last’s heel within 1 mm (common practice)', () => {
    expect(kinds({}, 'heelControl')).toMatchObject([
      { verdict: 'holds', found: 45, wanted: 45, seat: 45 + 14, tread: 10 + 4 },
    ]);
    const flat = { styles: style({ Raise: 'none', Lifts: '' }) };
    expect(kinds(flat, 'heelControl')).toMatchObject([{ verdict: 'putRight', found: 0, wanted: 45 }]);
    const wide = { ...flat, rates: [{ Item: 'heel control', Value: 50, Unit: 'limit' }] };
    expect(kinds(wide, 'heelControl')).toMatchObject([{ verdict: 'holds' }]);
  });

  it('keep the maker’s limits whatever else is wrong', () => {
    const lifted = { styles: style({ Raise: 'none', Lifts: '' }) };
    const limit = { Item: 'Heel control', Value: 50, Unit: 'limit' };
    const noDensity = stock('Rubber 4', { Price: 3, 'Sold by': 'kg', Density: '' });
    expect(kinds({ ...lifted, rates: [limit], stock: noDensity }, 'problem')).toHaveLength(1);
    expect(kinds({ ...lifted, rates: [limit], stock: noDensity }, 'heelControl')).toMatchObject([{ verdict: 'holds' }]);
    const misspelt = { Item: 'Heel contol', Value: 3, Unit: 'limit' };
    expect(kinds({ ...lifted, rates: [misspelt, limit] }, 'problem')).toHaveLength(1);
    expect(kinds({ ...lifted, rates: [misspelt, limit] }, 'heelControl')).toMatchObject([{ verdict: 'holds' }]);
  });

  it('compare making with buying only where every sheet has its price', () => {
    const bought = style({ 'Bought price': 9 });
    const but = (named: Named) => priced.map((one) => (one.Stock === 'Rubber 4' ? { ...one, ...named } : one));
    const choice = (named: Named) => kinds({ styles: bought, stock: but(named) }, 'makeOrBuy');
    expect(choice({})).toMatchObject([{ wanted: 9 }]);
    expect(choice({ Price: '' })).toEqual([]);
    expect(choice({ 'Sold by': 'kg', Density: '' })).toEqual([]);
    expect(choice({ Width: 60 })).toEqual([]);
  });

  it('ask for a shank from the limit on, and not in a wedge', () => {
    const heel = style({ Raise: 'heel', Platform: '', 'Top piece': 'Rubber 6', 'Most rasping': 3 });
    expect(kinds({ styles: heel }, 'shank')).toMatchObject([{ verdict: 'lookAt', found: 45, wanted: 30 }]);
    expect(kinds({ styles: [{ ...heel[0], Shank: 'yes' }] }, 'shank')).toEqual([]);
    expect(kinds({ styles: heel, rates: [{ Item: 'Heel without shank', Value: 46, Unit: 'limit' }] }, 'shank')).toEqual(
      [],
    );
    expect(kinds({}, 'shank')).toEqual([]);
  });

  it('find a high heel of cork without a core to hold its nails, and not one of leather (common practice)', () => {
    const heel = style({ Raise: 'heel', Platform: '', 'Top piece': 'Rubber 6', 'Most rasping': 3 });
    expect(kinds({ styles: heel }, 'heelHold')).toMatchObject([
      { verdict: 'putRight', found: 45, wanted: 30, material: 'cork' },
    ]);
    expect(kinds({ styles: [{ ...heel[0], 'Heel core': 'wood' }] }, 'heelHold')).toEqual([]);
    expect(kinds({ styles: [{ ...heel[0], Lifts: 'Bend 4' }] }, 'heelHold')).toEqual([]);
    const limit = { Item: 'Heel fixing', Value: 46, Unit: 'limit' };
    expect(kinds({ styles: heel, rates: [limit] }, 'heelHold')).toEqual([]);
    expect(kinds({}, 'heelHold')).toEqual([]);
  });

  it('look at a bend against the maker’s own tube: R = F t / 2 outside (ISO 4708:2015, 7.6)', () => {
    const sole = (tube: unknown) => ({
      styles: style({ Sole: 'Bend 4' }),
      stock: stock('Bend 4', { 'Smallest tube': tube }),
    });
    const outside = (tube: unknown) =>
      kinds(sole(tube), 'bend').filter((check) => check.kind === 'bend' && check.side === 'over');
    expect(outside(20)).toMatchObject([{ verdict: 'holds', wanted: 10 }]);
    expect(outside(2000)).toMatchObject([{ verdict: 'lookAt', wanted: 1000 }]);
    expect(kinds(sole(''), 'tubeUnknown')).toHaveLength(2);
  });

  it('find bare foam and cork on the ground, and not a moulded face', () => {
    const bare = { styles: style({ Outsole: '' }) };
    expect(kinds(bare, 'bareGround')).toMatchObject([{ part: 'platform', material: 'foam' }]);
    expect(kinds({ ...bare, stock: stock('Foam 10', { 'Moulded face': 'yes' }) }, 'bareGround')).toEqual([]);
    expect(kinds({}, 'bareGround')).toEqual([]);
    const board = { styles: [{ Style: 'Betony', Last: 'Round', Insole: 'Board 2' }] };
    expect(kinds(board, 'bareGround')).toMatchObject([{ part: 'insole', material: 'board' }]);
  });

  it('find a skive wider than its piece has room for', () => {
    const steep = {
      styles: [{ Style: 'Betony', Last: 'Round', Sole: 'Bend 4', 'Sole skive': 1, 'Sole skive to': 0.2 }],
    };
    expect(kinds(steep, 'skiveWide')).toMatchObject([{ verdict: 'putRight', part: 'sole' }]);
  });

  it('trust the plain model to 50 mm of heel (common practice)', () => {
    const at = (heel: number) => ({ lasts: [{ ...ROUND, 'Heel height': heel }], styles: style({ 'Most rasping': 3 }) });
    expect(kinds(at(50), 'plainModel')).toEqual([]);
    expect(kinds(at(51), 'plainModel')).toMatchObject([{ verdict: 'lookAt', found: 51, wanted: 50 }]);
  });

  it('hold a first gap against the heel height, and the edges against each other', () => {
    const measured = (inside: number, outside: number) => ({
      lasts: [{ ...ROUND, Measured: 'G' }],
      outlines: (['inside', 'outside'] as const).flatMap((edge) =>
        [
          [0, edge === 'inside' ? inside : outside],
          [80, 22],
          [160, 0],
        ].map(([x, y]) => ({ Code: 'G', Role: `gap ${edge}`, x, y })),
      ),
    });
    expect(kinds(measured(45, 45), 'gapsAgainstHeel')).toEqual([]);
    expect(kinds(measured(48, 48), 'gapsAgainstHeel')).toMatchObject([{ verdict: 'putRight', found: 48, wanted: 45 }]);
    expect(kinds(measured(48, 42), 'twist')).toMatchObject([{ found: 6, wanted: 4 }]);
  });

  it('miss prices, coverage and the rate of work', () => {
    // Cork 6 and Cork 4 (45 from seven of 6 and one of 4), Foam 10, Rubber 4.
    expect(kinds({}, 'price')).toHaveLength(4);
    expect(kinds({ rates: [] }, 'coverage')).toHaveLength(1);
    expect(kinds({ rates: [] }, 'workRate')).toHaveLength(1);
    expect(kinds({}, 'workRate')).toEqual([]);
  });

  it('tell of a bought unit that would cost less', () => {
    const bought = (price: number) => ({ stock: priced, styles: style({ 'Bought price': price }) });
    expect(kinds(bought(1), 'makeOrBuy')).toMatchObject([{ verdict: 'lookAt' }]);
    expect(kinds(bought(10_000), 'makeOrBuy')).toMatchObject([{ verdict: 'holds', breakEven: undefined }]);
  });

  it('find leather soles to be paired, sizes without a last, and orders that come late', () => {
    expect(kinds({ styles: style({ Sole: 'Bend 4' }) }, 'leatherPairs')).toMatchObject([{ wanted: 0.3, part: 'sole' }]);
    expect(kinds({ lasts: [{ ...ROUND, 'Pairs on hand': 0 }] }, 'lasts')).toHaveLength(3);
    const late = {
      pairage: [{ Style: 'Betony', Due: 101, 38: 9 }],
      rates: [{ Item: 'Start', Value: 100, Unit: 'day of start' }],
    };
    // Five rounds of two days: done on day 110.
    expect(kinds(late, 'late')).toMatchObject([{ verdict: 'putRight', found: 110, wanted: 101 }]);
  });
});
