import { describe, expect, it } from 'vitest';
import { sameRing } from '../../../src/core/geometry/same-ring';
import { rectangle } from '../../core/cutting/outlines';

describe('sameRing', () => {
  const ring = rectangle(30, 20);

  it('is of the same points in the same order, and not of what is a hair off or begins elsewhere', () => {
    expect(sameRing(ring, ring)).toBe(true);
    expect(sameRing(ring, structuredClone(ring))).toBe(true);
    expect(sameRing(ring, rectangle(30, 20 + 1e-9))).toBe(false);
    expect(sameRing(ring, rectangle(30 + 1e-9, 20))).toBe(false);
    expect(sameRing(ring, [...ring.slice(1), ...ring.slice(0, 1)])).toBe(false);
    expect(sameRing(ring, ring.slice(1))).toBe(false);
  });

  it('is what text of both says too', () => {
    const rings = [ring, rectangle(20, 30), [...ring, [0, 10] as const], []];
    for (const a of rings) for (const b of rings) expect(sameRing(a, b)).toBe(JSON.stringify(a) === JSON.stringify(b));
  });
});
