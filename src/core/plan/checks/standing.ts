import { heelBase } from '../../bottom/heel-base';
import { rockerRise } from '../../bottom/rocker';
import type { Limits } from '../limits';
import type { StyleRun } from '../runs';
import type { Check } from './check';
import { worstSize } from './worst';

/** Sway grows from a heel of 40 mm on (Mika et al., Acta of Bioengineering and Biomechanics 18(3), 2016). */
const SWAYS_FROM = 40;

/** How a shoe stands and rolls: planning aids, in all sizes. */
export function standingChecks(run: StyleRun, limits: Limits): readonly Check[] {
  return [...base(run, limits), ...rolling(run, limits)];
}

/** The base against the height: the higher a heel, the wider a base it wants. */
function base({ style, sizes }: StyleRun, limits: Limits): readonly Check[] {
  const least = worstSize(sizes, ({ bottom }) => {
    const found = heelBase(bottom);
    return found && -found.tipAngle;
  });
  const bottom = least?.sizeRun.bottom;
  const found = bottom && heelBase(bottom);
  if (!found || bottom.seatStack < SWAYS_FROM) return [];
  // The weight comes down at the seat line: a base that has it in its outer quarters tips to the front or back.
  const apart = style.raise === 'heel' && Math.abs(found.ahead) > found.length / 4;
  const narrow = found.tipAngle < limits.tipAngle;
  return [
    {
      kind: 'heelBase',
      subject: style.code,
      verdict: narrow || apart ? 'lookAt' : 'holds',
      found: found.tipAngle,
      wanted: limits.tipAngle,
      width: found.width,
      area: found.area,
      ahead: found.ahead,
      height: bottom.seatStack,
      narrow,
      apart,
      size: least.size,
    },
  ];
}

/** A thick forepart does not bend with the foot: it is to roll instead. */
function rolling({ style, sizes }: StyleRun, limits: Limits): readonly Check[] {
  const short = (bottom: StyleRun['sizes'][number]['bottom']) =>
    bottom.treadStack < limits.stiffForepart ? undefined : rockerRise(bottom.last.profile) - bottom.last.toeSpring;
  const worst = worstSize(sizes, ({ bottom }) => short(bottom));
  if (!worst) return [];
  const { bottom } = worst.sizeRun;
  const lack = short(bottom) ?? 0;
  const { toeSpring, profile } = bottom.last;
  return [
    {
      kind: 'rocker',
      subject: style.code,
      verdict: lack > 0.5 ? 'lookAt' : 'holds',
      found: toeSpring,
      wanted: rockerRise(profile),
      tread: bottom.treadStack,
      size: worst.size,
    },
  ];
}
