import { describe, expect, it } from 'vitest';
import { type Bottom, buildBottom } from '../../../src/core/bottom/bottom';
import { gauges } from '../../../src/core/bottom/gauge';
import { area } from '../../../src/core/geometry/area';
import { box } from '../../../src/core/geometry/box';
import { mirror } from '../../../src/core/geometry/mirror';
import { outline } from '../../../src/core/geometry/outline';
import { lastInSize } from '../../../src/core/last/last-in-size';
import { sentence } from '../../tables/sentence';
import { rampLast } from '../ramp';
import { findSample, lastOf, type Named, styleOf } from '../samples';

const last = lastInSize(lastOf(), 38, 'EU');
const low = lastInSize(lastOf({ 'Heel height': 20 }), 38, 'EU');
const build = (named: Named, on = last) => buildBottom(styleOf(named), on, findSample);

/** Every way to raise and to lay, with every part that may be added, freely combined. */
const WAYS: readonly Named[] = [
  { Raise: 'none' },
  ...['wedge', 'heel'].flatMap((Raise) =>
    ['flat', 'bent', 'block'].map((Laying) => ({ Raise, Laying, Lifts: 'Cork 6, Cork 4', 'Most rasping': 3 })),
  ),
];
const ADDED: readonly Named[] = [
  {},
  { Insole: 'Board 2', Welt: 'Bend 4', Midsole: 'Bend 4', Sole: 'Bend 4', 'Sole skive': 20, 'Sole skive to': 2 },
  { Sole: 'Bend 4', 'Sole ends': 'down the breast', Outsole: 'Rubber 4', 'Top piece': 'Rubber 6' },
  { Platform: 'Foam 10, Cork 6', Outsole: 'Rubber 4', 'Projection toe': 4, Projection: 1 },
  { Platform: 'Foam 10, Cork 4', 'Finished heel': 90, Outsole: 'Rubber 4', 'Most rasping': 3 },
  // Of a block alone, which then goes on under the tread.
  { 'Finished heel': 90, Outsole: 'Rubber 4', Sole: 'Bend 4' },
];
const isBuilt = (way: Named, more: Named) =>
  !more['Finished heel'] || (way.Raise === 'wedge' && (more.Platform !== undefined || way.Laying === 'block'));
// So stout a platform does not go into the hollow of a last: it lies flat, under a wedge.
const combinations = WAYS.flatMap((way) =>
  ADDED.filter((more) => isBuilt(way, more)).map((more): [string, Named] => {
    const named = { ...way, ...more };
    return [Object.values(named).join(', '), named];
  }),
);

const sum = (bottom: Bottom, zone: 'underSeat' | 'underTread') =>
  bottom.layers
    .filter((layer) => layer[zone] && layer.part !== 'insole' && layer.part !== 'lift')
    .reduce((total, { thickness, rasped = 0 }) => total + thickness - rasped, 0);

describe.each(combinations)('a bottom of %s', (_title, named) => {
  const bottom = build(named);
  const welt = named.Welt ? 4 : 0;

  it('stands higher under the seat than under the tread by the last’s heel, where anything raises it', () => {
    const { seatStack, treadStack } = bottom;
    expect(seatStack - treadStack).toBeCloseTo(named.Raise === 'none' ? 0 : last.heelHeight, 9);
  });

  it('stands as high as its layers and lifts add up to', () => {
    expect(bottom.seatStack).toBeCloseTo(sum(bottom, 'underSeat') + bottom.liftHeight + welt, 9);
    expect(bottom.treadStack).toBeCloseTo(sum(bottom, 'underTread') + welt + bottom.through, 9);
    expect(bottom.through > 0).toBe(named['Finished heel'] !== undefined && named.Platform === undefined);
  });

  if (named['Finished heel'])
    it('reaches the finished heel that it is asked for', () => {
      expect(bottom.seatStack).toBeCloseTo(90, 9);
    });

  it('has lifts that build their height and what is rasped off', () => {
    const { lifts } = bottom;
    expect(lifts !== undefined).toBe(named.Raise !== 'none');
    if (!lifts) return;
    const pitch = named.Laying === 'bent' ? Math.cos(((last.profile.slope[0] as number) * Math.PI) / 180) : 1;
    const built = bottom.layers
      .filter(({ part }) => part === 'lift')
      .reduce((total, { thickness }) => total + thickness, 0);
    expect(built).toBeCloseTo(lifts.built, 6);
    expect(built - lifts.rasped).toBeCloseTo(bottom.liftHeight * pitch, 1);
    expect(lifts.rasped).toBeLessThanOrEqual(3 + 1e-9);
  });

  it('has sound outlines, each numbered once, of an area that its mirror image shares', () => {
    const items = bottom.layers.map(({ item }) => item);
    expect([...items].sort((a, b) => a - b)).toEqual(items.map((_, i) => i + 1));
    for (const { ring, length, width } of bottom.layers) {
      expect(outline(ring, 'piece')).toEqual(ring);
      expect(area(mirror(ring))).toBeCloseTo(area(ring), 6);
      const { left, right, bottom: low, top } = box(ring);
      expect([length, width]).toEqual([right - left, top - low]);
    }
  });

  it('has skives that leave something and take something, some in all but blocks and what has no ends', () => {
    const skived = bottom.layers.flatMap(({ skive, thickness }) => (skive ? [{ skive, thickness }] : []));
    const skiveless = named.Laying === 'block' || named.Raise === 'none';
    if (!skiveless || named['Sole skive']) expect(skived.length).toBeGreaterThan(0);
    else expect(skived).toEqual([]);
    for (const { skive, thickness } of skived) {
      expect(skive.edge).toBeGreaterThanOrEqual(0);
      expect(skive.edge).toBeLessThan(thickness + 1e-9);
      expect(skive.width).toBeGreaterThan(0);
      expect(skive.angle).toBeGreaterThan(0);
      expect(skive.angle).toBeLessThan(90);
    }
  });

  it('has gauge heights that fall from layer to layer and begin at the whole stack', () => {
    const heights = gauges(bottom);
    for (const place of ['back', 'tread'] as const) {
      const list = bottom.layers.flatMap(({ item, part }) => {
        const height = heights.get(item)?.[place];
        return height === undefined ? [] : [{ part, height }];
      });
      const insole = list[0]?.part === 'insole' ? 2 : 0;
      const whole = place === 'back' ? bottom.seatStack : bottom.treadStack;
      // A heel leaves nothing of its own under the tread.
      expect(list.length > 0).toBe(whole > 0);
      if (list.length > 0) expect(list[0]?.height).toBeCloseTo(whole + insole, 6);
      list.slice(1).forEach(({ height }, i) => expect(height).toBeLessThan((list[i]?.height as number) + 1e-9));
    }
  });
});

describe('the top piece of a heel', () => {
  const HEEL: Named = {
    Raise: 'heel',
    Lifts: 'Cork 11, Cork 6',
    Laying: 'block',
    'Top piece': 'Rubber 6',
    'Most rasping': 5,
    'Lasted substance': 1.2,
    'Heel taper': 4,
    'Rounding allowance': 2,
    Projection: 0,
  };
  const topPiece = (named: Named) =>
    build({ ...HEEL, ...named }, rampLast).layers.find(({ part }) => part === 'topPiece');

  it('is the ground face with its own allowance: 60 + 2 × (1.2 − 4 + 2) wide, 0.8 + … 65.88 long (worked by hand)', () => {
    const piece = topPiece({});
    expect(piece?.width).toBeCloseTo(58.4, 6);
    // The breast stands at a quarter of 265.5: 60 and 12 / 13 of 6.375 before the back.
    expect(piece?.length).toBeCloseTo(60 + (6.375 * 12) / 13 - 0.8, 2);
    expect(piece?.rounding).toBe(2);
  });

  it('of a covered heel is trimmed flush with the cover’s outside: as wide as without it, its core narrower by it', () => {
    expect(topPiece({ Cover: 'Calf 1' })?.width).toBeCloseTo(58.4, 6);
    const lowest = (named: Named) =>
      build({ ...HEEL, ...named }, rampLast).layers.findLast(({ part }) => part === 'lift');
    expect((lowest({})?.width ?? 0) - (lowest({ Cover: 'Calf 1' })?.width ?? 0)).toBeCloseTo(2 * 1.2, 6);
  });
});

describe('buildBottom', () => {
  it('makes a 45 mm last on 10 mm of platform finish at 55 mm (derived)', () => {
    const { seatStack, treadStack } = build({
      Raise: 'wedge',
      Lifts: 'Cork 6, Cork 4',
      Platform: 'Foam 10',
      'Most rasping': 2,
    });
    expect([seatStack, treadStack]).toEqual([55, 10]);
  });

  it('builds a platform of 26 for a finished heel of 75 on a last of 45 and an outsole of 4 (derived): stacks 75 and 30', () => {
    const { platform, seatStack, treadStack } = build({
      Raise: 'wedge',
      Lifts: 'Cork 6, Cork 4',
      Platform: 'Foam 10, Cork 4, Cork 6',
      'Finished heel': 75,
      Outsole: 'Rubber 4',
      'Most rasping': 2,
    });
    expect(platform?.built).toBeGreaterThanOrEqual(26);
    expect((platform?.built ?? 0) - (platform?.rasped ?? 0)).toBeCloseTo(26, 9);
    expect([seatStack, treadStack]).toEqual([expect.closeTo(75, 9), expect.closeTo(30, 9)]);
  });

  it('takes a platform too high to be mixed exactly down by what is rasped off: 20 to 19 under 45 for 64 (derived)', () => {
    const bottom = build({
      Raise: 'wedge',
      Lifts: 'Cork 6, Cork 4',
      Platform: 'Foam 10',
      'Finished heel': 64,
      'Most rasping': 2,
    });
    expect(bottom.platform).toMatchObject({ built: 20, rasped: 1 });
    expect([bottom.seatStack, bottom.treadStack]).toEqual([64, 19]);
  });

  it('lays lifts the stoutest next to the ground, and puts a top piece under them: 39 of 4 + 6 × 6 less 1 (derived)', () => {
    const bottom = build({ Raise: 'heel', Lifts: 'Cork 4, Cork 6', 'Top piece': 'Rubber 6', 'Most rasping': 3 });
    const stack = bottom.layers.map(({ part, thickness }) => `${part} ${thickness}`);
    expect(stack).toEqual(['lift 4', ...new Array<string>(6).fill('lift 6'), 'topPiece 6']);
    expect(bottom.liftHeight).toBe(45 - 6);
  });

  it('narrows a heel’s lifts to the ground, a side by their share of its height', () => {
    const lifts = (taper: number) =>
      build({ Raise: 'heel', Lifts: 'Cork 6, Cork 4', 'Heel taper': taper, 'Most rasping': 3 }).layers.filter(
        ({ part }) => part === 'lift',
      );
    const [straight, narrowed] = [lifts(0), lifts(4)];
    narrowed.forEach(({ width, lift }, i) => {
      const a = 2 * 4 * Math.max(0, 1 - (lift?.upper ?? 0) / 45);
      expect((straight[i]?.width ?? 0) - width).toBeCloseTo(a, 0);
    });
  });

  it('carries a sole to the back, or ends it down the breast with a flap as long as the breast is high', () => {
    const run = (how: string) =>
      build({ Raise: 'heel', Lifts: 'Cork 6, Cork 4', Sole: 'Bend 4', 'Sole ends': how, 'Most rasping': 3 });
    const [whole, down] = [run('at the back'), run('down the breast')];
    expect(whole.liftHeight).toBe(45);
    // The sole adds 4 mm under the tread alone, so that the heel must make up for it.
    expect(down.liftHeight).toBe(49);
    expect([whole.seatStack, down.seatStack]).toEqual([49, 49]);
  });

  it('covers what the cover takes: a covered wedge of straight sides is cut smaller by the cover, a side', () => {
    const plain = { Raise: 'wedge', Lifts: 'Cork 6, Cork 4', 'Most rasping': 2 };
    const width = (bottom: Bottom) => bottom.layers.find(({ part }) => part === 'lift')?.width ?? 0;
    expect(width(build(plain, rampLast)) - width(build({ ...plain, Cover: 'Calf 1' }, rampLast))).toBeCloseTo(
      2 * 1.2,
      6,
    );
  });

  it('keeps a block’s lifts unskived and takes the same ones', () => {
    const lifts = (Laying: string) =>
      build({ Raise: 'wedge', Laying, Lifts: 'Cork 6, Cork 4', 'Most rasping': 2 }).layers.map(
        ({ length, thickness }) => [length, thickness],
      );
    expect(lifts('block')).toEqual(lifts('flat'));
    expect(
      build({ Raise: 'wedge', Laying: 'block', Lifts: 'Cork 6, Cork 4', 'Most rasping': 2 }).layers.some(
        ({ skive }) => skive,
      ),
    ).toBe(false);
  });

  it('says in words of Styles what does not come out', () => {
    const slip = (named: Named, on = last) => sentence(() => build(named, on));
    const flat = lastInSize(lastOf({ 'Heel height': 0 }), 38, 'EU');
    expect(slip({ Raise: 'wedge', Lifts: 'Cork 6' }, flat)).toContain(
      "row 1 of Styles, Raise: the last's heel of 0 mm leaves nothing",
    );
    expect(slip({ Raise: 'heel' })).toContain('row 1 of Styles, Lifts: a heel needs stock for its lifts');
    // Eight of 6 are 48, seven are 42.
    expect(slip({ Raise: 'wedge', Lifts: 'Cork 6', 'Most rasping': 0 })).toContain(
      'allow 3.0 mm (Most rasping in Styles) or add a thickness',
    );
    // Of 45 to 50, and to 61, the platform is 5 and 16.
    const stout = { Raise: 'wedge', Lifts: 'Cork 6, Cork 11', Platform: 'Cork 11', 'Most rasping': 3 };
    expect(slip({ ...stout, 'Finished heel': 50 })).toMatch(
      /6 mm too high with 1 of 11; take a thinner sheet, or leave Platform blank and set Laying to block: wedge and platform are then sawn from Cork 11 as one$/,
    );
    expect(slip({ ...stout, 'Finished heel': 61 })).toMatch(
      /5 mm too low with 1 of 11, 6 mm too high with 2 of 11; add a thickness, or lower Finished heel by 5 mm, or leave/,
    );
    expect(build({ ...stout, Platform: '', Laying: 'block', 'Finished heel': 50 }).through).toBe(5);
    expect(slip({ Raise: 'wedge', Lifts: 'Cork 4', 'Skive to': 4, 'Most rasping': 3 })).toContain(
      'row 1 of Styles, Skive to: lift',
    );
    expect(slip({ Raise: 'none', Cover: 'Calf 1' })).toContain('there is no wedge, heel or platform to cover');
    expect(slip({ 'Finished heel': 30 })).toContain('name stock for it, or leave Finished heel blank');
    expect(slip({ Raise: 'wedge', Lifts: 'Cork 6', Platform: 'Foam 10', 'Finished heel': 45 })).toContain(
      'stands 45 mm high already',
    );
    expect(
      slip(
        { Raise: 'heel', Lifts: 'Cork 6', 'Top piece': 'Rubber 6' },
        lastInSize(lastOf({ 'Heel height': 6 }), 38, 'EU'),
      ),
    ).toContain('leaves nothing for lifts');
    expect(slip({ Sole: 'Bend 4', 'Sole skive': 20, 'Sole skive to': 4 })).toContain(
      'row 1 of Styles, Sole skive to: 4 mm cannot be skived to 4 mm',
    );
  });

  it('comes out on low and small lasts too', () => {
    const child = lastInSize(
      lastOf({ 'Base size': 24, 'Bottom length': 158, 'Heel height': 8, Tread: 62, Waist: 44, Seat: 44 }),
      24,
      'EU',
    );
    for (const on of [low, child]) {
      const bottom = build({ Raise: 'wedge', Lifts: 'Cork 4', Outsole: 'Rubber 4', 'Most rasping': 2 }, on);
      expect(bottom.seatStack - bottom.treadStack).toBeCloseTo(on.heelHeight, 9);
    }
  });

  it('says so where a taper leaves nothing of a small heel', () => {
    const small = lastInSize(lastOf({ Seat: 20, Waist: 18, Tread: 60 }), 38, 'EU');
    const told = sentence(() =>
      build(
        {
          Raise: 'heel',
          Lifts: 'Cork 6, Cork 4',
          'Heel taper': 20,
          'Lasted substance': 0,
          'Rounding allowance': 0,
          'Most rasping': 3,
        },
        small,
      ),
    );
    expect(told).toContain('row 1 of Styles, Heel taper:');
  });
});
