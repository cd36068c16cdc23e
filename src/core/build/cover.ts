import type { Profile } from '../last/profile';
import { Problem } from '../problem';
import { coverStrip, type CoverStrip } from './cover-strip';
import type { Layer } from './layer';
import type { Style } from './style';
import { styleCell } from './style-problem';
import { wedgeEdge } from './wedge-edge';

/** The strip that covers the edges of a bottom's wedge and platform. */
export function coverOf(style: Style, under: Profile, layers: readonly Layer[]): CoverStrip {
  const platform = layers.find(({ part }) => part === 'platform');
  const ground = layers.find(({ part, item }) => part === 'lift' && item === 1);
  const base = platform ?? ground;
  if (!base) {
    throw new Problem('invalid', styleCell(style, 'Cover'), 'there is no wedge or platform to cover; leave it blank');
  }
  const { path, heightAt } = wedgeEdge(base.ring, under, {
    front: ground ? Math.max(...ground.ring.map(([x]) => x)) : 0,
    platform: platform?.thickness ?? 0,
  });
  return coverStrip(path, heightAt, style.turnOver, style.turnUnder);
}
