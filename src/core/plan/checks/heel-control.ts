import type { Bottom } from '../../bottom/bottom';
import type { Limits } from '../limits';

/** What stands at the back less what stands under the tread, held against the last's heel height, mm. */
export interface HeelControl {
  readonly found: number;
  readonly wanted: number;
  readonly holds: boolean;
}

export function heelControl(
  { seatStack, treadStack, last: { heelHeight } }: Pick<Bottom, 'seatStack' | 'treadStack' | 'last'>,
  limits: Pick<Limits, 'heelControl'>,
): HeelControl {
  const found = seatStack - treadStack;
  return { found, wanted: heelHeight, holds: Math.abs(found - heelHeight) <= limits.heelControl + 1e-9 };
}
