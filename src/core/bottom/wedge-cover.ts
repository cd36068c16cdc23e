import { cut } from '../geometry/cut';
import { letOutSmooth } from '../geometry/let-out-smooth';
import { groundOutline } from '../last/ground-outline';
import type { LastInSize } from '../last/last-in-size';
import { atGround } from '../last/profile';
import { Problem } from '../problem';
import { coverStrip, type CoverStrip } from './cover-strip';
import { wedgeFront } from './flat-lifts';
import { wedgeEdge } from './wedge-edge';

/** What a cover goes over. */
export interface WedgeCoverRule {
  /** mm over the upper edge and under the lower one. */
  readonly turnOver: number;
  readonly turnUnder: number;
  /** Thickness of a platform under the wedge, 0 for none, mm. */
  readonly platform: number;
  /** Edge of the build beyond the last's, mm. */
  readonly letOut: number;
}

/** What is kept at a wedge's front where its material is not known: cork and foam, mm (common practice). */
const KEPT_EDGE = 1;

/**
 * The strip that covers the edge of a wedge under a last, and of a platform under it (derived).
 * @throws Problem where there is neither.
 */
export function wedgeCover({ outline, profile, heelHeight }: LastInSize, rule: WedgeCoverRule): CoverStrip {
  const { turnOver, turnUnder, platform, letOut } = rule;
  if (platform === 0 && heelHeight === 0) {
    throw new Problem('unavailable', { argument: 'last' }, 'its heel height is 0 and there is no platform to cover');
  }
  const ring = letOutSmooth(groundOutline(outline, profile), letOut);
  const front = heelHeight > 0 ? wedgeFront(profile, KEPT_EDGE) : 0;
  const base = platform > 0 ? ring : cut(ring, ({ 0: x }) => front - x);
  const { path, heightAt } = wedgeEdge(base, { front, wedgeHeight: (x) => atGround(profile, x).z, platform });
  return coverStrip(path, heightAt, turnOver, turnUnder);
}
