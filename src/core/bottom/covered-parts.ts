import { Problem } from '../problem';
import type { Style } from './style';
import { styleCell } from './style-problem';

/** Which pieces of a bottom a cover goes round, where they are there. */
export interface CoveredParts {
  readonly lifts: boolean;
  readonly platform: boolean;
}

/**
 * What the cover of a style goes round: all there is, or of a heel on a platform one of the two.
 * @throws Problem where the one that is asked for is not there, or is covered with the other as one.
 */
export function coveredParts(style: Style): CoveredParts {
  const { raise, platform, cover, covered } = style;
  if (cover === undefined) return { lifts: false, platform: false };
  if (covered === 'heel and platform') return { lifts: true, platform: true };
  if (raise === 'wedge') {
    throw new Problem(
      'invalid',
      styleCell(style, 'Covered'),
      'a wedge and the platform under it are covered as one; leave it blank',
    );
  }
  if (covered === 'heel' ? raise !== 'heel' : platform.length === 0) {
    throw new Problem('invalid', styleCell(style, 'Covered'), `there is no ${covered} to cover; leave it blank`);
  }
  return { lifts: covered === 'heel', platform: covered === 'platform' };
}
