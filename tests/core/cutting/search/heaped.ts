import { Arrangement } from '../../../../src/core/cutting/search/arrangement';
import { Effort } from '../../../../src/core/cutting/search/effort';
import { Overlaps } from '../../../../src/core/cutting/search/overlaps';
import { Random } from '../../../../src/core/cutting/search/random';
import { Space } from '../../../../src/core/cutting/search/space';
import { inTurns } from '../../../../src/core/cutting/search/turned-outline';
import type { Ring } from '../../../../src/core/geometry/ring';

/** Pieces, one of each ring, all laid on one spot of a rectangle. */
export function heaped(rings: readonly Ring[], length: number, width: number, evaluations = 3e5) {
  const shapes = rings.flatMap((ring, kind) => inTurns(ring, kind, [0], rings.length));
  const effort = new Effort(evaluations, { stopped: false });
  const choices = rings.map((_, i) => [i]);
  const arrangement = new Arrangement(new Overlaps(shapes), new Space([length], [width]), choices, effort);
  rings.forEach((_, piece) => arrangement.put(piece, { shape: piece, x: length / 2, y: width / 2 }));
  arrangement.updateAllLosses();
  return { arrangement, effort, random: new Random(3) };
}
