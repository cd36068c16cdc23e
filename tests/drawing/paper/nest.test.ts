import { describe, expect, it } from 'vitest';
import { pointToEdge } from '../../../src/core/geometry/point-to-edge';
import type { Point, Ring } from '../../../src/core/geometry/ring';
import { itemRound } from '../../../src/core/item-at';
import { type Mark, singly } from '../../../src/drawing/mark';
import { widthOf } from '../../../src/drawing/paper/letter-width';
import { nestsOf, type SizedLayer } from '../../../src/drawing/paper/nest';

/** An oval with its back at 0, as long and as wide as given. */
function oval(length: number, width: number): Ring {
  return Array.from({ length: 120 }, (_, i): Point => {
    const at = (2 * Math.PI * i) / 120;
    return [length / 2 - (length / 2) * Math.cos(at), (width / 2) * Math.sin(at)];
  });
}

/** Distance of a point from the edge of a ring. */
function offEdge([x, y]: Point, ring: Ring): number {
  return Math.sqrt(
    Math.min(
      ...ring.map(([ax, ay], i) => {
        const [bx, by] = itemRound(ring, i + 1);
        return pointToEdge(x, y, ax, ay, bx, by);
      }),
    ),
  );
}

/** Sizes 36, 36.5 … each longer and wider than the one before. */
function nest(count: number, [length, width]: Point, [longer, wider]: Point): readonly SizedLayer[] {
  return Array.from({ length: count }, (_, i) => ({
    size: 36 + i / 2,
    layer: { ring: oval(length + i * longer, width + i * wider) },
  }));
}

type Of<K extends Mark['kind']> = Extract<Mark, { kind: K }>;

function drawn(nested: readonly SizedLayer[], turn = 0) {
  return nestsOf('Sole', nested).map((one) => {
    const all = singly(one.draw(turn));
    const named = (mark: Mark): mark is Of<'text'> => mark.kind === 'text' && mark.words !== one.name;
    return {
      ...one,
      words: all.filter(named),
      leaders: all.filter((mark): mark is Of<'line'> => mark.kind === 'line' && mark.pen === 'narrow'),
      outlines: all.filter((mark): mark is Of<'area'> => mark.kind === 'area'),
    };
  });
}

/** Middle of a word, and half its extent along and across the page as it is seen. */
function placeOf({ at, words, size = 3.5, turn = 0 }: Of<'text'>): { readonly at: Point; readonly half: Point } {
  const [long, high] = [widthOf(words, size) / 2, size / 2];
  return { at, half: Math.abs(Math.sin((turn * Math.PI) / 180)) > 0.5 ? [high, long] : [long, high] };
}

describe('a nest of sizes', () => {
  // Soles grow by 3.33 mm a half size in length and about 1 in width; a lift's lengths hardly change (common practice).
  const kinds = [
    ['a sole', nest(15, [240, 80], [3.33, 1])],
    ['a lift', nest(15, [60, 60], [0.2, 0.6])],
    ['two sizes', nest(2, [240, 80], [3.33, 1])],
    ['a cover without room within', nest(9, [300, 9], [6, 0.3])],
  ] as const;

  it.each(kinds)('of %s has every size lettered once, and no two names on each other', (_, nested) => {
    const all = drawn(nested).flatMap(({ words }) => words.map(({ words: one }) => Number(one)));
    expect(all.sort((a, b) => a - b)).toEqual(nested.map(({ size }) => size));
    for (const { words } of drawn(nested)) {
      const places = words.map(placeOf);
      places.forEach(({ at: [x, y], half: [a, b] }, i) => {
        for (const { at, half } of places.slice(i + 1)) {
          expect(Math.abs(x - at[0]) > a + half[0] || Math.abs(y - at[1]) > b + half[1]).toBe(true);
        }
      });
    }
  });

  it.each(kinds)('of %s has each name’s leader end on its own outline and on no other', (_, nested) => {
    for (const { words, leaders, outlines } of drawn(nested)) {
      expect(leaders).toHaveLength(words.length);
      leaders.forEach(({ points: [, end] }, i) => {
        const off = outlines.map(({ rings }) => offEdge(end!, rings[0]!));
        expect(off[i]).toBeLessThan(1e-6);
        for (const [k, one] of off.entries()) if (k !== i) expect(one).toBeGreaterThan(0.05);
      });
    }
  });

  it('has half sizes dashed beside whole ones, and drawn apart where all would run together', () => {
    const pens = (of: readonly SizedLayer[]) => drawn(of).map(({ outlines }) => outlines.map(({ pen }) => pen));
    expect(pens(nest(3, [240, 80], [3.33, 1]))).toEqual([['narrow', 'dashed', 'narrow']]);
    const close = drawn(nest(7, [60, 60], [0.2, 0.4]));
    expect(close.map(({ name }) => name)).toEqual(['Sole, whole sizes', 'Sole, half sizes']);
    expect(close.map(({ words }) => words.map(({ words: one }) => one))).toEqual([
      ['36', '37', '38', '39'],
      ['36.5', '37.5', '38.5'],
    ]);
    expect(pens(nest(7, [60, 60], [0.2, 0.4]))[1]).toEqual(['narrow', 'narrow', 'narrow']);
  });

  it('of one size is none', () => {
    expect(nestsOf('Sole', nest(1, [240, 80], [3, 1]))).toEqual([]);
  });
});
