import { describe, expect, it } from 'vitest';
import { keptLays } from '../../../../src/core/cutting/rows/kept-lays';
import { Lays } from '../../../../src/core/cutting/rows/lay';
import { packRows } from '../../../../src/core/cutting/rows/pack-rows';
import { Memory } from '../../../../src/core/memory';
import { shared } from '../../../../src/core/shared';
import type { Ring } from '../../../../src/core/geometry/ring';
import { soleLike, tee } from '../outlines';

const memory = () => shared('outlines as they lie in rows', () => new Memory(0));
const copyOf = (ring: Ring): Ring => ring.map(([x, y]) => [x, y] as const);

describe('keptLays', () => {
  it('are those of the last time for the same outline let out by as much, and no others', () => {
    const lays = keptLays(soleLike(), 2);
    expect(keptLays(copyOf(soleLike()), 2)).toBe(lays);
    expect(keptLays(soleLike(), 1.5)).not.toBe(lays);
    expect(keptLays(tee, 2)).not.toBe(lays);
    expect(lays.at(0).box).toEqual(Lays.of(soleLike(), 2).at(0).box);
  });

  it('change nothing of how rows are laid, in whatever order they are', () => {
    const jobs = [3, 9, 5].map((count) => ({
      pieces: [240, 255].map((length) => {
        return { key: String(length), ring: soleLike(length, 40), count, way: { kind: 'any' as const } };
      }),
      format: { length: 900, width: 500, knifeRoom: count === 9 ? 4 : 3, edgeTrim: 5 },
    }));
    const lay = () => jobs.map(({ pieces, format }) => packRows(pieces, format));
    const alone = jobs.map(({ pieces, format }) => {
      memory().forget();
      return packRows(pieces, format);
    });
    lay();
    expect(memory().bytes).toBeGreaterThan(0);
    expect(lay()).toEqual(alone);
  });
});
