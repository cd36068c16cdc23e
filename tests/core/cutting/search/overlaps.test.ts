import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Overlaps } from '../../../../src/core/cutting/search/overlaps';
import { inTurns, type TurnedOutline } from '../../../../src/core/cutting/search/turned-outline';
import { mirror } from '../../../../src/core/geometry/mirror';
import { moved } from '../../../../src/core/geometry/moved';
import type { Ring } from '../../../../src/core/geometry/ring';
import { evenly } from '../../../evenly';
import { sharedArea } from '../oracle';
import { anyOutline, hook, rectangle, soleLike, tee } from '../outlines';

const QUARTERS = [0, 90, 180, 270];

function outlines(rings: readonly Ring[], turns: readonly number[] = [0]): readonly TurnedOutline[] {
  return rings.flatMap((ring, kind) => inTurns(ring, kind, turns, rings.length));
}

/** Loss of two outlines by their numbers at a displacement of the second from the first. */
function lossOf(overlaps: Overlaps, first: number, second: number, x: number, y: number): number {
  return overlaps.loss(overlaps.of(first, second), x, y);
}

const share = evenly(-1.1, 1.1);

describe('Overlaps', { timeout: 60_000 }, () => {
  it('finds a loss where another library finds that two outlines share ground, and nowhere else', () => {
    fc.assert(
      fc.property(
        anyOutline,
        anyOutline,
        fc.array(fc.tuple(share, share), { minLength: 8, maxLength: 8 }),
        (a, b, at) => {
          const [first, second] = outlines([a, b]) as [TurnedOutline, TurnedOutline];
          const overlaps = new Overlaps([first, second]);
          for (const [u, v] of at) {
            const x = u * (first.box.right + second.box.right);
            const y = v * (first.box.top + second.box.top);
            const shared = sharedArea(first.ring, moved(second.ring, 0, x, y));
            const loss = lossOf(overlaps, 0, 1, x, y);
            // Where they all but touch either answer may stand.
            if (shared > 1e-4) expect(loss).toBeGreaterThan(0);
            else if (shared === 0) expect(loss === 0 || nearby(first, second, x, y)).toBe(true);
          }
        },
      ),
      { seed: 5, numRuns: 20 },
    );
  });

  it.each([
    ['edges follow each other through cells of its grid', soleLike(270, 30), soleLike(110, 20)],
    ['they run level and upright', rectangle(5, 6), tee],
  ])('does so along the outline too where %s', (_, a, b) => {
    const [first, second] = outlines([a, b]) as [TurnedOutline, TurnedOutline];
    const overlaps = new Overlaps([first, second]);
    const [length, height] = [first.box.right + second.box.right, first.box.top + second.box.top];
    // As many ways out at the ends as at the sides.
    for (let degrees = 0; degrees < 360; degrees += 6) {
      const dx = length * Math.cos((degrees * Math.PI) / 180);
      const dy = height * Math.sin((degrees * Math.PI) / 180);
      let [within, beyond] = [0, 1.5];
      while (beyond - within > 1e-6) {
        const reach = (within + beyond) / 2;
        if (lossOf(overlaps, 0, 1, reach * dx, reach * dy) > 0) within = reach;
        else beyond = reach;
      }
      for (const by of [-2e-3, -2e-4, 2e-4, 2e-3]) {
        const [x, y] = [(within + by) * dx, (within + by) * dy];
        const shared = sharedArea(first.ring, moved(second.ring, 0, x, y)) > 0;
        expect(lossOf(overlaps, 0, 1, x, y) > 0).toBe(shared);
      }
    }
  });

  it('reads losses off its grid that differ little from those of the poles themselves', () => {
    const [first, second] = outlines([soleLike(270, 40), hook]) as [TurnedOutline, TurnedOutline];
    const overlaps = new Overlaps([first, second]);
    const deepest = lossOfPoles(first, second, 0, 0);
    for (let x = -120; x <= 120; x += 7) {
      for (let y = -60; y <= 60; y += 7) {
        const loss = lossOf(overlaps, 0, 1, x, y);
        if (loss > 0) expect(Math.abs(loss - lossOfPoles(first, second, x, y))).toBeLessThan(0.03 * deepest);
      }
    }
  });

  it('loses the more the deeper one square lies in the other', () => {
    const overlaps = new Overlaps(outlines([rectangle(100, 100), rectangle(100, 100)]));
    const losses = [99, 90, 75, 50, 25, 0].map((x) => lossOf(overlaps, 0, 1, x, 0));
    expect(losses).toEqual([...losses].sort((a, b) => a - b));
    expect(lossOf(overlaps, 0, 1, 100, 0)).toBe(0);
    expect(lossOf(overlaps, 0, 1, 0, -100)).toBe(0);
  });

  it('is the same when both are turned by quarters, or when either is looked at from the other', () => {
    fc.assert(
      fc.property(anyOutline, anyOutline, share, share, (a, b, u, v) => {
        const shapes = outlines([a, b], QUARTERS);
        const overlaps = new Overlaps(shapes);
        const x = u * (shapes[0]!.box.right + shapes[4]!.box.right);
        const y = v * (shapes[0]!.box.top + shapes[4]!.box.top);
        const loss = lossOf(overlaps, 0, 4, x, y);
        QUARTERS.forEach((turn, quarter) => {
          // Whole quarters by hand: (x, y) → (−y, x).
          const [tx, ty] = (
            [
              [x, y],
              [-y, x],
              [-x, -y],
              [y, -x],
            ] as const
          )[quarter]!;
          expect(shapes[quarter]!.turn).toBe(turn);
          expect(lossOf(overlaps, quarter, 4 + quarter, tx, ty)).toBeCloseTo(loss, 9);
          expect(lossOf(overlaps, 4 + quarter, quarter, -tx, -ty)).toBeCloseTo(loss, 9);
        });
        expect(overlaps.size).toBe(1);
      }),
      { seed: 7, numRuns: 30 },
    );
  });

  it('is the same of the other foot’s two, mirrored, and prepared once for both', () => {
    fc.assert(
      fc.property(anyOutline, anyOutline, share, share, (a, b, u, v) => {
        const turns = [0, 10, 90, 170, 190, 350];
        const left = [a, b].flatMap((ring, kind) => inTurns(ring, kind, turns, 4));
        const right = [a, b].flatMap((ring, kind) => inTurns(mirror(ring), 2 + kind, turns, 4, kind));
        const shapes = [...left, ...right];
        const at = (kind: number, turn: number) => shapes.findIndex((one) => one.kind === kind && one.turn === turn);
        const [shared, alone] = [
          new Overlaps(shapes),
          new Overlaps(shapes.map((one) => ({ ...one, mirrorOf: undefined }))),
        ];
        for (const turn of turns.filter((one) => one !== 90)) {
          const mirrored = (360 - turn) % 360;
          const x = u * (shapes[at(0, turn)]!.box.right + shapes[at(1, 0)]!.box.right);
          const y = v * (shapes[at(0, turn)]!.box.top + shapes[at(1, 0)]!.box.top);
          const loss = lossOf(shared, at(0, turn), at(1, 0), x, y);
          expect(lossOf(shared, at(2, mirrored), at(3, 0), x, -y)).toBeCloseTo(loss, 9);
          expect(lossOf(shared, at(3, 0), at(2, mirrored), -x, y)).toBeCloseTo(loss, 9);
          expect(lossOf(alone, at(2, mirrored), at(3, 0), x, -y) > 0).toBe(loss > 0);
        }
        // Those of both feet take no more than those of one.
        expect(shared.size).toBe(alone.size);
      }),
      { seed: 11, numRuns: 20 },
    );
  });

  it('forgets what it has prepared when that takes too much memory, and gives the same losses all the same', () => {
    const rings = [90, 110, 130, 150, 170, 190].map((length) => soleLike(length, 24));
    const shapes = outlines(rings, [0, 30, 60]);
    const [roomy, tight] = [new Overlaps(shapes), new Overlaps(shapes, 4e5)];
    let most = 0;
    for (let round = 0; round < 2; round++) {
      shapes.forEach((_, first) =>
        shapes.forEach((_, second) => {
          expect(lossOf(tight, first, second, 20, 9)).toBe(lossOf(roomy, first, second, 20, 9));
          most = Math.max(most, tight.size);
        }),
      );
    }
    expect(most).toBeLessThan(roomy.size);
    // Arrays grow by half at a time, from what they have at first.
    expect(tight.bytes).toBeLessThan(1.5 * 4e5 + 1.5e6);
    expect(tight.bytes).toBeLessThan(roomy.bytes);
  });
});

/** The loss that the paper gives for two pieces by their poles (arXiv 2509.13329, section on quantification), written anew. */
function lossOfPoles(first: TurnedOutline, second: TurnedOutline, x: number, y: number): number {
  const epsilon = 0.01 * Math.max(first.diameter, second.diameter);
  const polesOf = ({ poles }: TurnedOutline) =>
    Array.from(
      { length: poles.length / 3 },
      (_, i) => Array.from(poles.slice(3 * i, 3 * i + 3)) as [number, number, number],
    );
  const terms = polesOf(first).flatMap(([ax, ay, ra]) =>
    polesOf(second).map(([bx, by, rb]) => {
      const depth = ra + rb - Math.hypot(ax - bx - x, ay - by - y);
      return Math.min(ra, rb) * (depth >= epsilon ? depth : epsilon ** 2 / (2 * epsilon - depth));
    }),
  );
  return Math.sqrt(Math.PI * terms.reduce((sum, term) => sum + term, 0) + epsilon ** 2);
}

/** Whether two outlines that share nothing come to share ground when one is moved by a thousandth of a millimetre. */
function nearby(first: TurnedOutline, second: TurnedOutline, x: number, y: number): boolean {
  return [-1e-3, 1e-3].some((by) =>
    [
      [by, 0],
      [0, by],
    ].some(([dx, dy]) => sharedArea(first.ring, moved(second.ring, 0, x + dx!, y + dy!)) > 0),
  );
}
