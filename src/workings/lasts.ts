import type { Last } from '../core/last/last';
import type { LastInSize } from '../core/last/last-in-size';
import { placesAlong } from '../core/last/profile';
import { tightestCurve } from '../core/last/tightest-curve';
import { letOutSmooth } from '../core/geometry/let-out-smooth';
import { mirror } from '../core/geometry/mirror';
import { weltStrip } from '../core/bottom/welt-strip';
import { readLength, readLengthOr, readOutline, readSide } from '../functions/arguments';
import { readCover } from '../functions/cover-arguments';
import { PROFILE_STEP, readLast } from '../functions/last-argument';
import { readWedge } from '../functions/wedge-arguments';
import { type Cell, type Cells, isBlank } from '../tables/cell';
import { lastsTable } from '../tables/lasts';
import { cells, givenOr, type WorkingOf } from './arguments';
import { given, type Given, step, type Step, told } from './working';

const { columns } = lastsTable;

/** A measure of a last with its place in Lasts. */
function measure(symbol: string | undefined, last: Last, column: keyof typeof columns): Given {
  const { heading, meaning, unit } = columns[column] as { heading: string; meaning: string; unit?: string };
  const value = last[column as keyof Last];
  const from = { argument: 'lasts', row: last.row, column: heading };
  if (value === undefined) return given(symbol, meaning, 'blank', undefined, from);
  return given(symbol, meaning, value as number | string, unit, from);
}

/** A last's code and size, and the measures of it that shape its bottom. */
function lastGiven(last: Last, size: number, cell: Cell): readonly Given[] {
  return [
    given(undefined, 'Last', last.code, undefined, 'last'),
    givenOr(undefined, 'Size', size, undefined, 'size', cell),
    measure(undefined, last, 'baseSize'),
    measure(undefined, last, 'length'),
    measure(undefined, last, 'heelHeight'),
    ...(last.measured === undefined ? [] : [measure(undefined, last, 'measured')]),
  ];
}

/** The measures of a last in the size asked for. */
function graded({ heelHeight, length }: LastInSize): readonly Step[] {
  return [
    step('Lₛ', 'Bottom length in this size', undefined, length, 'mm'),
    step('Hₛ', 'Heel height in this size, held within its group of sizes', undefined, heelHeight, 'mm'),
  ];
}

const HOW = {
  model: 'modelled from length, heel and seat pitch',
  fitted: 'modelled through its waist height',
  measured: 'measured',
};

export const lasts: Readonly<Record<string, WorkingOf>> = {
  PROFILE: ([code, table, size, outlines], { row, column }) => {
    const { last, size: own, inSize } = readLast(code, cells(table), size, optional(outlines));
    const { profile } = inSize;
    const point = placesAlong(profile, PROFILE_STEP)[row - 1];
    if (!point) return undefined;
    const along = step(
      's',
      `Length along the bottom: a row every ${PROFILE_STEP} mm, the last row at the toe`,
      undefined,
      point.s,
      'mm',
    );
    const slope = step('θ', `Slope of the bottom there, ${HOW[profile.source]}`, undefined, point.slope, '°');
    const more = [
      [],
      [slope, step('x', 'Length along the ground', '∫ cos(θ) ds', point.x, 'mm')],
      [
        slope,
        step('z', 'Height over the ground: the heel’s, less what the bottom falls', 'Hₛ − ∫ sin(θ) ds', point.z, 'mm'),
      ],
      [slope],
    ][column];
    if (!more) return undefined;
    return {
      given: lastGiven(last, own, size),
      steps: [...graded(inSize), along, ...more],
      source: 'derived: the bottom’s slope as a function of the length along it, so that tape lengths come out exactly',
    };
  },
  OUTLINE: ([code, table, size, foot, letOut, outlines], { row, column }) => {
    const { last, size: own, inSize } = readLast(code, cells(table), size, optional(outlines));
    const d = readLengthOr(letOut, 'let_out', 0, { least: -20, most: 100 });
    const left = isBlank(foot) || String(foot).trim().toLowerCase() === 'left';
    const out = letOutSmooth(inSize.outline, d);
    const point = (left ? out : mirror(out))[row - 1];
    if (!point) return undefined;
    return {
      given: [
        ...lastGiven(last, own, size),
        measure('T', last, 'tread'),
        measure('W', last, 'waist'),
        measure('S', last, 'seat'),
        givenOr(undefined, 'Foot', left ? 'left' : 'right', undefined, 'foot', foot),
        givenOr('d', 'Let out all round', d, 'mm', 'let_out', letOut),
      ],
      steps: [
        ...graded(inSize),
        step('Tₛ', 'Tread in this size', undefined, inSize.tread, 'mm'),
        told(
          `Point ${row} of a smooth curve through seat, waist and tread${left ? '' : ', mirrored'}: ${column === 0 ? 'along the bottom' : 'to the foot’s outside'}`,
          point[column],
          'mm',
        ),
      ],
      source: 'derived: widths at seat line, waist and tread line; or the traced bottom in Outlines',
    };
  },
  TIGHTESTRADIUS: ([code, table, place, size, outlines]) => {
    const { last, size: own, inSize } = readLast(code, cells(table), size, optional(outlines));
    const side = readSide(place);
    const curve = tightestCurve(inSize.profile, side);
    if (!curve) return undefined;
    return {
      given: [...lastGiven(last, own, size), givenOr(undefined, 'Side of the curve', side, undefined, 'side', place)],
      steps: [
        ...graded(inSize),
        step(
          's',
          'Where the slope changes most, up to the tread line, along the bottom from the back',
          undefined,
          curve.s,
          'mm',
        ),
        step('κ', 'Greatest change of slope there, radians for each mm', undefined, curve.curvature),
        step('R', 'Radius of the curve', '1 / κ', curve.radius, 'mm'),
      ],
      source: 'derived: a curve’s radius is one over the change of its slope',
    };
  },
  WEDGE: (args, at) => wedge(args, at.row, at.column),
  COVERSTRIP: ([code, table, over, under, platform, letOut, size, outlines], { row, column }) => {
    const cover = readCover(code, cells(table), over, under, platform, letOut, size, optional(outlines));
    const { strip, last } = cover;
    const own = isBlank(size) ? last.baseSize : Number(size);
    const from = [
      ...lastGiven(last, own, size),
      given('o', 'Turned over the upper edge', cover.over, 'mm', 'turn_over'),
      given('u', 'Turned under the lower edge', cover.under, 'mm', 'turn_under'),
      givenOr('p', 'Platform under the wedge', cover.platform, 'mm', 'platform', platform),
    ];
    const source = 'derived: the strip’s baseline is the plan edge, not the slope';
    const station = strip.stations[row - 1];
    if (station) {
      const steps = [
        step('b', 'Place along the strip, which is the length along the plan edge', undefined, station.at, 'mm'),
        step(
          'h',
          'Height of the edge there: platform, and the wedge as high as the bottom stands',
          undefined,
          station.height,
          'mm',
        ),
        step('w', 'Width to cut', 'h + o + u', station.width, 'mm'),
      ];
      return { given: from, source, steps: steps.slice(0, column + 1) };
    }
    const length = step('l', 'Length of the strip: the plan edge', undefined, strip.length, 'mm');
    const label = row - 1 - strip.stations.length;
    if (row === 0 || column !== 1 || label > 1) return undefined;
    if (label === 0) return { given: from, source, steps: [length] };
    return {
      given: from,
      source,
      steps: [
        length,
        step('A', 'Area of the covered edge', undefined, strip.wall, 'mm²'),
        step('B', 'Area of the strip with its turns', 'A + l · (o + u)', strip.area, 'mm²'),
      ],
    };
  },
  WELTSTRIP: ([outline, lap, width, from], { row, column }) => {
    const ring = readOutline(cells(outline));
    const l = readLength(lap, 'lap', { most: 200 });
    const w = readLengthOr(width, 'width', 12, { above: 0, most: 100 });
    const start = readLengthOr(from, 'from', undefined);
    const strip = weltStrip(ring, l, w, start);
    if (row !== 1) return undefined;
    const inseam = step(
      'i',
      start === undefined
        ? 'Inseam: the edge of the outline all round'
        : 'Inseam: the edge of the outline forward of that place',
      undefined,
      strip.inseam,
      'mm',
    );
    const more = [
      step('c', 'Length to cut', 'i + l', strip.length, 'mm'),
      undefined,
      step(
        'o',
        start === undefined
          ? 'Outer edge: a full turn, w further out'
          : 'Outer edge: half a turn round the toe, w further out',
        start === undefined ? 'i + 2 · π · w' : 'i + π · w',
        strip.outer,
        'mm',
      ),
    ][column];
    return {
      given: [
        given('n', 'Points of the outline', ring.length, undefined, 'outline'),
        given('l', 'Lap', l, 'mm', 'lap'),
        givenOr('w', 'Width of the strip', w, 'mm', 'width', width),
        start === undefined
          ? given(undefined, 'Where it begins and ends', 'all round')
          : given(undefined, 'Where it begins and ends, from the back', start, 'mm', 'from'),
      ],
      steps: more ? [inseam, more] : [inseam],
      source: 'derived: a full turn of a strip w wide is 2πw longer outside',
    };
  },
};

function optional(argument: Cell): Cells | null {
  return isBlank(argument) ? null : cells(argument);
}

function wedge(args: readonly Cell[], row: number, column: number) {
  const [code, table, thicknesses, platform, laying, skiveTo, rasping, size, outlines] = args;
  const all = readWedge(
    code,
    cells(table),
    cells(thicknesses),
    platform,
    laying,
    skiveTo,
    rasping,
    size,
    optional(outlines),
  );
  const { last, inSize, rule, mix, height, flat, bent } = all;
  const own = isBlank(size) ? last.baseSize : Number(size);
  const from = [
    ...lastGiven(last, own, size),
    ...rule.thicknesses.map((one) => given(undefined, 'Thickness on offer', one, 'mm', 'thicknesses')),
    givenOr('p', 'What lies under the wedge', rule.platform, 'mm', 'platform', platform),
    givenOr('e', 'Thickness that fronts are skived to', rule.skiveTo, 'mm', 'skive_to', skiveTo),
    givenOr(undefined, 'The most that may be rasped off', rule.rasping, 'mm', 'most_rasping', rasping),
  ];
  const mixed = mix.counts.map((count, i) => `${count} × ${rule.thicknesses[i]}`).join(' + ');
  const start = [
    ...graded(inSize),
    step(
      'h',
      bent ? 'Height that the layers are to reach, square to the pitched seat' : 'Height that the lifts are to reach',
      undefined,
      height,
      'mm',
    ),
    told('Fewest lifts that reach it, then the least rasping', mixed),
  ];
  const layer = bent?.[row - 1];
  if (layer) {
    const skive = step(
      'w',
      'Skive: from where its under face meets the ground to its end',
      undefined,
      layer.skiveWidth,
      'mm',
    );
    const t = step('t', 'Its thickness, the thinnest next to the last', undefined, layer.thickness, 'mm');
    const steps = [
      [step('k', 'Counted from the last downward', undefined, layer.number)],
      [t],
      [
        step(
          'l',
          'Where it ends along the last: what it is skived to still fits over the ground',
          undefined,
          layer.front,
          'mm',
        ),
      ],
      [step('x', 'The same place along the ground', undefined, layer.groundFront, 'mm')],
      [skive],
      [
        skive,
        t,
        step('q', 'Thickness left at its end', undefined, layer.edge, 'mm'),
        ...(layer.skiveWidth > 0
          ? [step('α', 'Angle of the skive', 'atan((t − q) / w)', layer.skiveAngle, '°')]
          : [step('α', 'Angle of the skive: none', undefined, 0, '°')]),
      ],
      [
        t,
        step('θ', 'Slope of the last where it begins to taper', undefined, layer.slope, '°'),
        step('u', 'Its substance measured upright', 't / cos(θ)', layer.upright, 'mm'),
      ],
    ][column];
    return (
      steps && {
        given: from,
        steps: [...start, ...steps],
        source: 'derived: a bent layer follows the bottom and the ground cuts it off',
      }
    );
  }
  const lift = flat[row - 1];
  if (!lift) return undefined;
  const lower = step(
    'a',
    'Its lower face over the ground face of the wedge: all lifts below it',
    undefined,
    lift.lower,
    'mm',
  );
  const t = step('t', 'Its thickness, the stoutest next to the ground', undefined, lift.thickness, 'mm');
  const front = step(
    'l',
    lift.number === 1
      ? 'The ground lift ends where what it is skived to fits under the bottom, 5 to 15 mm behind the tread'
      : 'It ends where the bottom stands at a + e',
    undefined,
    lift.front,
    'mm',
  );
  const back = step('b', 'Its upper face meets the bottom here', undefined, lift.skiveFrom, 'mm');
  const width = step('w', 'Width of the skive', 'l − b', lift.skiveWidth, 'mm');
  const left = step('q', 'Thickness left at its front', undefined, lift.edge, 'mm');
  const steps = [
    [step('k', 'Counted from the ground up', undefined, lift.number)],
    [t],
    [lower, step('f', 'From this height over the ground', 'p + a', lift.from, 'mm')],
    [lower, t, step('g', 'To this height over the ground', 'p + a + t', lift.to, 'mm')],
    [lower, front],
    [lower, t, front, back, width],
    [
      t,
      front,
      back,
      width,
      left,
      ...(lift.skiveWidth > 0
        ? [step('α', 'Angle of the skive', 'atan((t − q) / w)', lift.skiveAngle, '°')]
        : [step('α', 'Angle of the skive: none', undefined, 0, '°')]),
    ],
    [lower, front, left],
    [
      front,
      back,
      step(
        'd',
        'The flat skive stands proud of the curved bottom by at most this, to be rasped',
        undefined,
        lift.proud,
        'mm',
      ),
    ],
  ][column];
  return (
    steps && {
      given: from,
      steps: [...start, ...steps],
      source: 'derived: level lifts fill the space between the bottom and the ground',
    }
  );
}
