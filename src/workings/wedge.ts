import type { BentLayer } from '../core/bottom/bent-layers';
import type { WedgeLift } from '../core/bottom/wedge';
import { readWedge, type WedgeRead } from '../functions/wedge-arguments';
import type { Cell } from '../tables/cell';
import { cells, givenOr, optional, type WorkingOf } from './arguments';
import { graded, lastGiven } from './last-given';
import { given, type Given, step, type WorkedStep, told } from './working';

const BENT = 'derived: a bent layer follows the bottom and the ground cuts it off';
const FLAT = 'derived: level lifts fill the space between the bottom and the ground';

/** Of WEDGE: row by row its lifts, flat ones from the ground up or bent ones from the last downward. */
export const wedge: WorkingOf = (args, { row, column }) => {
  const [code, lasts, thicknesses, platform, laying, skiveTo, rasping, size, outlines] = args;
  const one = readWedge(
    code,
    cells(lasts),
    cells(thicknesses),
    platform,
    laying,
    skiveTo,
    rasping,
    size,
    optional(outlines),
  );
  const layer = one.bent?.[row - 1];
  const lift = one.flat[row - 1];
  const own = (layer && ofBent(layer)[column]) ?? (lift && ofFlat(lift)[column]);
  if (!own) return undefined;
  return { given: figuresOf(one, args), steps: [...heightOf(one), ...own], source: layer ? BENT : FLAT };
};

function figuresOf({ last, size, rule }: WedgeRead, args: readonly Cell[]): readonly Given[] {
  const [, , , platform, , skiveTo, rasping, sizeGiven] = args;
  return [
    ...lastGiven(last, size, sizeGiven),
    ...rule.thicknesses.map((one) => given(undefined, 'Thickness on offer', one, 'mm', 'thicknesses')),
    givenOr('p', 'What lies under the wedge', rule.platform, 'mm', 'platform', platform),
    givenOr('e', 'Thickness that fronts are skived to', rule.skiveTo, 'mm', 'skive_to', skiveTo),
    givenOr(undefined, 'The most that may be rasped off', rule.rasping, 'mm', 'most_rasping', rasping),
  ];
}

function heightOf({ inSize, rule, mix, height, bent }: WedgeRead): readonly WorkedStep[] {
  const mixed = mix.counts.map((count, i) => `${count} × ${rule.thicknesses[i]}`).join(' + ');
  const what = bent
    ? 'Height that the layers are to reach, square to the pitched seat'
    : 'Height that the lifts are to reach';
  return [
    ...graded(inSize),
    step('h', what, undefined, height, 'mm'),
    told('Fewest lifts that reach it, then the least rasping', mixed),
  ];
}

function angleOf({ skiveWidth, skiveAngle }: Pick<BentLayer, 'skiveWidth' | 'skiveAngle'>): WorkedStep {
  return skiveWidth > 0
    ? step('α', 'Angle of the skive', 'atan((t − q) / w)', skiveAngle, '°')
    : step('α', 'Angle of the skive: none', undefined, 0, '°');
}

/** Steps to each column of a bent layer. */
function ofBent(layer: BentLayer): readonly (readonly WorkedStep[])[] {
  const mm = (symbol: string, what: string, value: number) => step(symbol, what, undefined, value, 'mm');
  const skive = mm('w', 'Skive: from where its under face meets the ground to its end', layer.skiveWidth);
  const t = mm('t', 'Its thickness, the thinnest next to the last', layer.thickness);
  return [
    [step('k', 'Counted from the last downward', undefined, layer.number)],
    [t],
    [mm('l', 'Where it ends along the last: what it is skived to still fits over the ground', layer.front)],
    [mm('x', 'The same place along the ground', layer.groundFront)],
    [skive],
    [skive, t, mm('q', 'Thickness left at its end', layer.edge), angleOf(layer)],
    [
      t,
      step('θ', 'Slope of the last where it begins to taper', undefined, layer.slope, '°'),
      step('u', 'Its substance measured upright', 't / cos(θ)', layer.upright, 'mm'),
    ],
  ];
}

/** Steps to each column of a flat lift. */
function ofFlat(lift: WedgeLift): readonly (readonly WorkedStep[])[] {
  const mm = (symbol: string, what: string, value: number) => step(symbol, what, undefined, value, 'mm');
  const lower = mm('a', 'Its lower face over the ground face of the wedge: all lifts below it', lift.lower);
  const t = mm('t', 'Its thickness, the stoutest next to the ground', lift.thickness);
  const ends =
    lift.number === 1
      ? 'The ground lift ends where what it is skived to fits under the bottom, 5 to 15 mm behind the tread'
      : 'It ends where the bottom stands at a + e';
  const front = mm('l', ends, lift.front);
  const back = mm('b', 'Its upper face meets the bottom here', lift.skiveFrom);
  const width = step('w', 'Width of the skive', 'l − b', lift.skiveWidth, 'mm');
  const left = mm('q', 'Thickness left at its front', lift.edge);
  const proud = 'The flat skive stands proud of the curved bottom by at most this, to be rasped';
  return [
    [step('k', 'Counted from the ground up', undefined, lift.number)],
    [t],
    [lower, step('f', 'From this height over the ground', 'p + a', lift.from, 'mm')],
    [lower, t, step('g', 'To this height over the ground', 'p + a + t', lift.to, 'mm')],
    [lower, front],
    [lower, t, front, back, width],
    [t, front, back, width, left, angleOf(lift)],
    [lower, front, left],
    [front, back, mm('d', proud, lift.proud)],
  ];
}
