import type { Point, Ring } from '../geometry/ring';
import { atGround, type Profile } from '../last/profile';
import { Problem } from '../problem';
import { coverStrip, type CoverStrip } from './cover-strip';
import type { Layer } from './layer';
import type { Style } from './style';
import { styleCell } from './style-problem';

/** The strip that covers the edges of a bottom's wedge and platform. */
export function coverOf(style: Style, under: Profile, layers: readonly Layer[]): CoverStrip {
  const platform = layers.find(({ part }) => part === 'platform');
  const ground = layers.find(({ part, item }) => part === 'lift' && item === 1);
  const base = platform ?? ground;
  if (!base) {
    throw new Problem('invalid', styleCell(style, 'Cover'), 'there is no wedge or platform to cover; leave it blank');
  }
  const front = ground ? Math.max(...ground.ring.map(([x]) => x)) : 0;
  const below = platform?.thickness ?? 0;
  const heightAt = (x: number) => below + (ground && x <= front ? atGround(under, x).z : 0);
  const path = platform ? closedFromBack(base.ring) : backAndSides(base.ring);
  return coverStrip(path, heightAt, style.turnOver, style.turnUnder);
}

/** The ring from its rearmost point all the way round, that point again at the end: the seam stands at the back. */
function closedFromBack(ring: Ring): readonly Point[] {
  const back = ring.reduce((best, [x], i) => (x < (ring[best] as Point)[0] ? i : best), 0);
  const turned = [...ring.slice(back), ...ring.slice(0, back)];
  return [...turned, turned[0] as Point];
}

/** A wedge's edge without its front: from one end of the longest straight cut round the back to the other. */
function backAndSides(ring: Ring): readonly Point[] {
  const n = ring.length;
  let start = 0;
  let longest = -1;
  ring.forEach(([x, y], i) => {
    const [nx, ny] = ring[(i + 1) % n] as Point;
    const length = Math.hypot(nx - x, ny - y);
    if (length > longest) [longest, start] = [length, (i + 1) % n];
  });
  return [...ring.slice(start), ...ring.slice(0, start)];
}
