import { describe, expect, it } from 'vitest';
import { Plan } from '../../../../src/core/plan/plan';
import { checkInWords } from '../../../../src/tables/check-in-words';
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
    expect(choice({})).toMatchObject([{ kind: 'makeOrBuy' }]);
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
    expect(kinds(sole(''), 'tubeUnknown')).toHaveLength(1);
    // Expanded cork rounds a tube of 60 thicknesses: over a curve of 30 of them, stretched 1 in 61, nobody need try.
    const low = { ...sole(''), lasts: [{ ...ROUND, 'Heel height': 8 }] };
    expect(kinds(sole(''), 'tubeUnknown')[0]).toMatchObject({
      strain: expect.toSatisfy((one: number) => one > 1 / 61) as number,
    });
    expect(kinds(low, 'tubeUnknown')).toEqual([]);
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

  it('judge heights in all sizes and name the worst where they differ (derived: groups that are 3 mm apart)', () => {
    const groups = { 'Size groups': '36-37, 38-39', 'Heel per group': 3 };
    // Base size 38 of a heel of 45: 42 in 37, 45 in 38 and 39, on 14 of platform and outsole.
    const grouped = { lasts: [{ ...ROUND, ...groups }], styles: style({ 'Most rasping': 3 }) };
    expect(kinds(grouped, 'highBuild')).toMatchObject([{ found: 59, size: 38 }]);
    expect(kinds({}, 'highBuild')).toMatchObject([{ found: 59, size: undefined }]);
    const high = {
      lasts: [{ ...ROUND, ...groups, 'Heel height': 49, 'Base size': 37 }],
      styles: style({ 'Most rasping': 3 }),
    };
    // Only 38 and 39, at 52, are higher than the plain model serves.
    expect(kinds(high, 'plainModel')).toMatchObject([{ found: 52, wanted: 50, size: 38 }]);
    const flat = { ...grouped, styles: style({ Raise: 'none', Lifts: '', Platform: '', Sole: 'Bend 4' }) };
    expect(kinds(flat, 'heelControl')).toMatchObject([{ verdict: 'putRight', found: 0, wanted: 45, size: 38 }]);
  });

  it('tell what is rasped on its piece, the most of all sizes, against what its sheets allow', () => {
    const groups = { 'Size groups': '36-37, 38-39', 'Heel per group': 3 };
    const grouped = { lasts: [{ ...ROUND, ...groups }], styles: style({ 'Most rasping': 3, Lifts: 'Cork 6' }) };
    // 45 from eight of 6 with 3 too many, which leaves 3 of the ground lift; 42 from seven.
    expect(kinds(grouped, 'rasping')).toMatchObject([
      { found: 3, wanted: 3, item: 1, left: 3, size: 38, much: undefined },
    ]);
    const stock = STOCKS.map((one) => (one.Stock === 'Cork 6' ? { ...one, 'Most rasping': 4 } : one));
    expect(
      kinds({ ...grouped, styles: style({ Lifts: 'Cork 6', 'Most rasping': 0 }), stock }, 'rasping'),
    ).toMatchObject([{ found: 3, wanted: 4 }]);
  });

  it('ask to look where most of a stout sheet goes as dust: 45 from two of 37 leave 8 of the second', () => {
    const stout = (mm: number) => STOCKS.map((one) => (one.Stock === 'Cork 6' ? { ...one, Thick: mm } : one));
    const told = (mm: number) =>
      kinds({ styles: style({ Lifts: 'Cork 6', 'Most rasping': 29, Laying: 'block' }), stock: stout(mm) }, 'rasping');
    expect(told(37)).toMatchObject([{ verdict: 'lookAt', much: { stock: 'Cork 6', share: 29 / 37 } }]);
    expect(told(37).map((check) => checkInWords(check).say)).toEqual([
      expect.stringMatching(
        /; 78\.4 % of that piece of Cork 6 goes as dust: take a thinner sheet for it, or another mix$/,
      ),
    ]);
    // A quarter of one of 60.
    expect(told(60)).toMatchObject([{ verdict: 'holds', found: 15, much: undefined }]);
  });

  it('hold the base of a heel against its height, the more the higher it is', () => {
    const heel = (taper: number) =>
      style({ Raise: 'heel', Platform: '', 'Top piece': 'Rubber 6', 'Most rasping': 4, 'Heel taper': taper });
    const [wide] = kinds({ styles: heel(0) }, 'heelBase');
    const high = [{ ...ROUND, 'Heel height': 60 }];
    const [narrow] = kinds({ styles: heel(20), lasts: high }, 'heelBase');
    expect(wide).toMatchObject({ verdict: 'holds', wanted: 15, narrow: false });
    expect(narrow).toMatchObject({ verdict: 'lookAt', narrow: true });
    if (narrow?.kind !== 'heelBase') throw new Error('There is no base.');
    expect(narrow.found).toBeCloseTo((Math.atan(narrow.width / (2 * narrow.height)) * 180) / Math.PI, 9);
    const low = { lasts: [{ ...ROUND, 'Heel height': 25 }], styles: heel(20) };
    expect(kinds(low, 'heelBase')).toEqual([]);
  });

  it('ask a thick forepart for a roll: from 20 mm under the tread on, a third of the length times tan 15° (derived)', () => {
    const thick = style({ Platform: 'Foam 10, Foam 10', 'Most rasping': 3 });
    const [found] = kinds({ styles: thick }, 'rocker');
    expect(found).toMatchObject({ verdict: 'lookAt', tread: 24, found: 8, size: 39 });
    // A size of Paris points is 2/3 cm: 39 is 252 + 6.67 long, its tread line at two thirds.
    if (found?.kind !== 'rocker') throw new Error('There is no rocker.');
    expect(found.wanted).toBeCloseTo(((252 + 20 / 3) / 3) * Math.tan(Math.PI / 12), 1);
    expect(kinds({}, 'rocker')).toEqual([]);
    const rolled = { lasts: [{ ...ROUND, 'Toe spring': 30 }], styles: thick };
    expect(kinds(rolled, 'rocker')).toMatchObject([{ verdict: 'holds', found: 30 }]);
  });

  it('find leather soles that nothing keeps along their sheet', () => {
    // 400 mm wide and 120 mm long: a sole has room across it alone.
    const across = { Width: 400, Length: 120, Direction: '' };
    expect(kinds({ styles: style({ Sole: 'Bend 4' }), stock: stock('Bend 4', across) }, 'leatherAnyWay')).toMatchObject(
      [{ subject: 'Bend 4', part: 'sole', verdict: 'lookAt' }],
    );
    const along = { Direction: 'end for end' };
    expect(kinds({ styles: style({ Sole: 'Bend 4' }), stock: stock('Bend 4', along) }, 'leatherAnyWay')).toEqual([]);
    // Of a wide sheet they come out along it; the next run may lay them across all the same.
    const wide = { Direction: '' };
    expect(kinds({ styles: style({ Sole: 'Bend 4' }), stock: stock('Bend 4', wide) }, 'leatherAnyWay')).toMatchObject([
      { subject: 'Bend 4', part: 'sole', verdict: 'lookAt' },
    ]);
    // Lifts and covers lie as they come.
    expect(kinds({ styles: style({ Lifts: 'Bend 4' }), stock: stock('Bend 4', wide) }, 'leatherAnyWay')).toEqual([]);
    const cork = { Width: 400, Length: 120 };
    expect(kinds({ styles: style({ Sole: 'Cork 4' }), stock: stock('Cork 4', cork) }, 'leatherAnyWay')).toEqual([]);
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
