import { placesAlong } from '../core/last/profile';
import { tightestCurve } from '../core/last/tightest-curve';
import { footOutline } from '../core/last/foot-outline';
import { weltStrip } from '../core/bottom/welt-strip';
import { readSide } from '../functions/arguments';
import { readCover } from '../functions/cover-arguments';
import { PROFILE_STEP, readLast } from '../functions/last-argument';
import { readFoot, readLetOut, readWelt } from '../functions/lasts-arguments';
import { cells, givenOr, optional, type WorkingOf } from './arguments';
import { graded, lastGiven, measure } from './last-given';
import { waistWidth } from './waist-width';
import { wedge } from './wedge';
import { given, step, told } from './working';

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
    const [d, side] = [readLetOut(letOut), readFoot(foot)];
    const left = side === 'left';
    const point = footOutline(inSize.outline, side, d)[row - 1];
    if (!point) return undefined;
    return {
      given: [
        ...lastGiven(last, own, size),
        measure('T', last, 'tread'),
        measure('W', last, 'waist'),
        measure('S', last, 'seat'),
        givenOr(undefined, 'Foot', side, undefined, 'foot', foot),
        givenOr('d', 'Let out all round', d, 'mm', 'let_out', letOut),
      ],
      steps: [
        ...graded(inSize),
        step('Tₛ', 'Tread in this size', undefined, inSize.tread, 'mm'),
        step('Wₛ', 'Waist in this size', undefined, inSize.waist, 'mm'),
        told(
          'Least width about the waist, to compare: a modelled curve is as wide as given at 0.43 of the length and dips a little beside it; trace the bottom where that matters',
          waistWidth(inSize),
          'mm',
        ),
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
  WEDGE: wedge,
  COVERSTRIP: ([code, table, over, under, platform, letOut, size, outlines], { row, column }) => {
    const cover = readCover(code, cells(table), over, under, platform, letOut, size, optional(outlines));
    const { strip, last, size: own } = cover;
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
    const [ring, l, w, start] = readWelt(cells(outline), lap, width, from);
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
