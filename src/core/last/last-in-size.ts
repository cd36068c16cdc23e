import type { Ring } from '../geometry/ring';
import { roundedRing } from '../geometry/rounded-ring';
import { Problem } from '../problem';
import { convertSize } from '../sizes/convert';
import { gradePerSize } from '../sizes/grade';
import type { SizeSystem } from '../sizes/systems';
import { gradedOutline } from './graded-outline';
import { heelInSize } from './heel-in-size';
import type { Last } from './last';
import type { MeasuredLast } from './measured-last';
import { measuredProfile } from './measured-profile';
import { fittedProfile, modelProfile } from './model-profile';
import { outlineModel, type OutlineMeasures } from './outline-model';
import type { Profile } from './profile';

/** No last is narrower, mm. */
const LEAST = 10;

/** A last in one size: its measures in mm, its bottom from the side and from above (left foot, x along the bottom). */
export interface LastInSize extends OutlineMeasures {
  readonly heelHeight: number;
  readonly toeSpring: number;
  readonly profile: Profile;
  readonly outline: Ring;
}

/**
 * A last graded to a size: length and widths grow separately, toe spring is held, the heel height within a group of
 * sizes (common practice). Measured gaps keep their shape: they are stretched along the ground with the length, and
 * upward with the heel.
 * @param size in `system`
 * @param measured what was measured in the base size
 */
export function lastInSize(last: Last, size: number, system: SizeSystem, measured: MeasuredLast = {}): LastInSize {
  const own = convertSize(size, system, last.system);
  const sizes = own - last.baseSize;
  const per = gradePerSize(last.system);
  const measures = {
    length: last.length + sizes * per.length,
    tread: last.tread + sizes * per.tread,
    waist: last.waist + sizes * per.seat,
    seat: last.seat + sizes * per.seat,
    swing: last.swing,
    heelHeight: heelInSize(last, own),
    toeSpring: last.toeSpring,
  };
  if (Math.min(measures.length, measures.tread, measures.waist, measures.seat) < LEAST) {
    throw new Problem(
      'invalid',
      { argument: 'size' },
      `graded down to size ${size} the last would be less than ${LEAST} mm wide; check the size and the base size`,
    );
  }
  return {
    ...measures,
    profile: profileOf(last, measures, measured),
    outline: roundedRing(measured.outline ? gradedOutline(measured.outline, last, measures) : outlineModel(measures)),
  };
}

function profileOf(
  last: Last,
  measures: OutlineMeasures & { readonly heelHeight: number; readonly toeSpring: number },
  { gaps }: MeasuredLast,
): Profile {
  const upward = last.heelHeight > 0 ? measures.heelHeight / last.heelHeight : 1;
  if (gaps) {
    const along = measures.length / last.length;
    return measuredProfile(
      gaps.map(({ x, z }) => ({ x: x * along, z: z * upward })),
      measures.length,
    );
  }
  const model = { ...measures, seatPitch: last.seatPitch };
  return last.waistHeight === undefined ? modelProfile(model) : fittedProfile(model, last.waistHeight * upward);
}
