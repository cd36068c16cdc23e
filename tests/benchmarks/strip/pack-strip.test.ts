import { describe, expect, it } from 'vitest';
import { packStrip, type Strip } from './pack-strip';
import { moved } from '../../../src/core/geometry/moved';
import { sharedArea } from '../../core/cutting/oracle';
import { rectangle, soleLike, tee } from '../../core/cutting/outlines';

const pieces = [
  { ring: rectangle(40, 20), count: 4, turns: [0, 90] },
  { ring: tee, count: 6, turns: [0, 90, 180, 270] },
  { ring: soleLike(90, 20), count: 5, turns: [0, 180] },
];
const task = { pieces, width: 100, evaluations: 300_000, seed: 4 } as const;
const token = { stopped: false };

describe('packStrip', () => {
  it('lays every piece free of the others, within the width', () => {
    const { length, placements } = packStrip(task, token);
    const rings = placements.map(({ piece, turn, x, y }) => moved(pieces[piece]!.ring, turn, x, y));
    expect(placements.map(({ piece }) => piece).filter((piece) => piece === 1)).toHaveLength(6);
    rings.forEach((ring, i) => {
      for (const [x, y] of ring) expect(Math.min(x, y, length - x, 100 - y)).toBeGreaterThan(-1e-6);
      for (let j = 0; j < i; j++) expect(sharedArea(ring, rings[j]!)).toBeLessThan(1e-3);
    });
  });

  it('gives the same strip for the same seed, and never a longer one on the way', () => {
    const lengths: number[] = [];
    const first = packStrip(task, token, ({ length }) => lengths.push(length));
    expect(packStrip(task, token)).toEqual(first);
    expect(lengths).toEqual([...lengths].sort((a, b) => b - a));
  });

  it('refuses a piece that no turn brings within the width', () => {
    const wide = { ...task, pieces: [...pieces, { ring: rectangle(140, 120), count: 1, turns: [0, 90] }] };
    expect(() => packStrip(wide, token)).toThrow('wider than the strip');
  });

  it('carries on from a strip that was found before', () => {
    const first: Strip = packStrip(task, token);
    expect(packStrip({ ...task, seed: 9, from: first }, token).length).toBeLessThanOrEqual(first.length);
  });

  it('stops within a thousand evaluations and a move of being told', () => {
    let asked = 0;
    const stop = {
      get stopped() {
        return ++asked > 20;
      },
    };
    expect(packStrip({ ...task, evaluations: 1e9 }, stop).spent).toBeLessThan(100_000);
  });
});
