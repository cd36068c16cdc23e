import { atGround, atLength, type Profile } from '../last/profile';
import { Problem } from '../problem';
import { coverStrip, type CoverStrip } from './cover-strip';
import { HEADINGS, type Layer } from './layer';
import type { Style } from './style';
import { styleCell } from './style-problem';
import { wedgeEdge } from './wedge-edge';

/** The strip that covers the edges of a bottom: of wedge and platform together, of a platform alone, or of a heel. */
export function coverOf(style: Style, face: Profile, layers: readonly Layer[]): CoverStrip {
  const lifts = layers.filter(({ part }) => part === 'lift');
  const platform = style.raise === 'heel' ? [] : layers.filter(({ part }) => part === 'platform');
  const longest = lifts.reduce<Layer | undefined>(
    (best, one) => (best && best.length >= one.length ? best : one),
    undefined,
  );
  const base = platform[0] ?? longest;
  if (!base) {
    throw new Problem(
      'invalid',
      styleCell(style, HEADINGS.cover),
      'there is no wedge, heel or platform to cover; leave it blank',
    );
  }
  const { path, heightAt } = wedgeEdge(base.ring, {
    front: longest ? Math.max(...longest.ring.map(([x]) => x)) : -Infinity,
    wedgeHeight: (x) => (base.follows ? atLength(face, x) : atGround(face, x)).z,
    platform: platform.reduce((sum, { thickness, rasped = 0 }) => sum + thickness - rasped, 0),
  });
  return coverStrip(path, heightAt, style.turnOver, style.turnUnder);
}
