import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mirror } from '../../../src/core/geometry/mirror';
import { moved } from '../../../src/core/geometry/moved';
import { OutlineIndex } from '../../../src/core/geometry/outline-index';
import type { Ring } from '../../../src/core/geometry/ring';
import { anyOutline, soleLike } from '../cutting/outlines';

const copy = (ring: Ring): Ring => ring.map(([x, y]) => [x, y]);

describe('OutlineIndex', () => {
  it('counts outlines as they are met, and knows them and the other foot’s again', () => {
    const outlines = new OutlineIndex();
    const [small, large] = [soleLike(240), soleLike(270)];
    expect(outlines.find(small)).toEqual({ number: 0, mirrored: false });
    expect(outlines.find(large)).toEqual({ number: 1, mirrored: false });
    expect(outlines.find(mirror(large))).toEqual({ number: 1, mirrored: true });
    expect(outlines.find(copy(small))).toEqual({ number: 0, mirrored: false });
  });

  it('tells outlines apart that differ by a hair, have a corner more or lie elsewhere', () => {
    const outlines = new OutlineIndex();
    const ring = soleLike();
    const [[x, y], ...rest] = ring as [Ring[0], ...Ring];
    const others: readonly Ring[] = [
      ring,
      [[x + 1e-9, y], ...rest],
      [...rest],
      moved(ring, 0, 0, 1),
      [...ring].reverse(),
    ];
    expect(others.map((one) => outlines.find(one).number)).toEqual([0, 1, 2, 3, 4]);
  });

  it('finds the same as a comparison with every outline met before', () => {
    fc.assert(
      fc.property(
        fc.array(anyOutline, { minLength: 1, maxLength: 4 }),
        fc.array(fc.nat(15), { maxLength: 20 }),
        (base, picks) => {
          const outlines = new OutlineIndex();
          const met: string[] = [];
          for (const pick of picks) {
            const ring = base[pick % base.length] as Ring;
            const given = pick > 7 ? mirror(ring) : copy(ring);
            const seen = (one: Ring) => met.indexOf(JSON.stringify(one));
            const { number, mirrored } = outlines.find(given);
            const [same, other] = [seen(given), seen(mirror(given))];
            if (same >= 0) expect([number, mirrored]).toEqual([same, false]);
            else if (other >= 0) expect([number, mirrored]).toEqual([other, true]);
            else met.push(JSON.stringify(given));
          }
        },
      ),
      { seed: 8 },
    );
  });
});
