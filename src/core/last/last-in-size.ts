import type { Ring } from '../geometry/ring';
import { convertSize } from '../sizes/convert';
import { gradePerSize } from '../sizes/grade';
import type { SizeSystem } from '../sizes/systems';
import type { Last } from './last';
import { type Gap, measuredProfile } from './measured-profile';
import { modelProfile } from './model-profile';
import { outlineModel, type OutlineMeasures } from './outline-model';
import type { Profile } from './profile';

/** A last in one size: its measures in mm, its bottom from the side and from above (left foot, x along the bottom). */
export interface LastInSize extends OutlineMeasures {
  readonly heelHeight: number;
  readonly toeSpring: number;
  readonly profile: Profile;
  readonly outline: Ring;
}

/**
 * A last graded to a size: length and widths grow separately, heel height and toe spring are held (common practice).
 * Measured gaps keep their heights and are stretched along the ground with the length.
 * @param size in `system`
 * @param gaps of the base size, where the last was measured
 */
export function lastInSize(last: Last, size: number, system: SizeSystem, gaps?: readonly Gap[]): LastInSize {
  const sizes = convertSize(size, system, last.system) - last.baseSize;
  const per = gradePerSize(last.system);
  const length = last.length + sizes * per.length;
  const measures = {
    length,
    tread: last.tread + sizes * per.tread,
    waist: last.waist + sizes * per.seat,
    seat: last.seat + sizes * per.seat,
    swing: last.swing,
    heelHeight: last.heelHeight,
    toeSpring: last.toeSpring,
  };
  const stretch = length / last.length;
  const profile = gaps
    ? measuredProfile(
        gaps.map(({ x, z }) => ({ x: x * stretch, z })),
        length,
      )
    : modelProfile({ ...measures, seatPitch: last.seatPitch });
  return { ...measures, profile, outline: outlineModel(measures) };
}
