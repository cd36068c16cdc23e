import type { Style } from '../../bottom/style';
import type { StyleRun } from '../runs';
import type { Check } from './check';

/** What a sole stitch wants of a welt beyond the upper, mm (common practice: stitch, its groove and an edge outside). */
const STITCH_ROOM = 3;

/**
 * Room for the stitch on a welt at toe and tread; waists are trimmed close on purpose. The strip lies from the last's edge
 * outwards: the lasted substance stands on it, and what goes beyond the sole is trimmed off (derived).
 */
export function weltChecks({ style }: Pick<StyleRun, 'style'>): readonly Check[] {
  if (style.welt === undefined) return [];
  const found = Math.max(0, Math.min(leastProjection(style), style.weltWidth - style.lastedSubstance));
  if (found >= STITCH_ROOM) return [];
  return [{ kind: 'weltHidden', subject: style.code, verdict: 'lookAt', found, wanted: STITCH_ROOM }];
}

function leastProjection({ projection, projectionToe, projectionTread }: Style): number {
  return Math.min(projectionToe ?? projection, projectionTread ?? projection);
}
