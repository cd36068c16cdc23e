import { coveredParts } from '../../bottom/covered-parts';
import type { StyleRun } from '../runs';
import type { Check } from './check';

/** A platform that stays bare over a covered heel, since the style asks for that. */
export function bareEdge({ style, sizes }: StyleRun): readonly Check[] {
  const platform = sizes[0]?.bottom.layers.some(({ part }) => part === 'platform');
  const parts = coveredParts(style);
  return platform && parts.lifts && !parts.platform
    ? [{ kind: 'bareEdge', subject: style.code, verdict: 'holds' }]
    : [];
}
