import { describe, expect, it } from 'vitest';
import type { Point } from '../../../src/core/geometry/ring';
import { singly } from '../../../src/drawing/mark';
import { pieceFiles } from '../../../src/drawing/paper/piece-files';
import { strokeBeside } from '../../../src/drawing/paper/stroke-beside';
import { widthOf } from '../../../src/drawing/paper/letter-width';
import { demoJob, whole } from './jobs';

const box = { left: 10, right: 30, bottom: -20, top: -5 };
const ends = (from: Point, to: Point) =>
  singly(strokeBeside(box, 'chain', from, to, { layer: 'mark' })).map((mark) =>
    mark.kind === 'line' ? mark.points : [],
  );

describe('a line beside lettering', () => {
  it('is left out where the lettering is, upright and level, drawn either way', () => {
    expect(ends([20, 0], [20, -40])).toEqual([
      [
        [20, -40],
        [20, -20],
      ],
      [
        [20, -5],
        [20, 0],
      ],
    ]);
    expect(ends([0, -10], [50, -10])).toEqual([
      [
        [0, -10],
        [10, -10],
      ],
      [
        [30, -10],
        [50, -10],
      ],
    ]);
  });

  it('is whole where it does not lie under it, or there is none', () => {
    for (const [from, to] of [
      [
        [9, 0],
        [9, -40],
      ],
      [
        [20, -21],
        [20, -40],
      ],
      [
        [0, -4],
        [50, -4],
      ],
    ] as const) {
      expect(ends(from, to)).toEqual([[from, to]]);
    }
    expect(strokeBeside(undefined, 'chain', [20, 0], [20, -40], {})).toHaveLength(1);
  });

  it('leaves no stub shorter than a millimetre', () => {
    expect(ends([20, -4.5], [20, -40])).toHaveLength(1);
  });

  it('crosses no word in the files of a block, a lift and an outsole', () => {
    const files = whole(pieceFiles(demoJob({ styles: ['Fennel'], sizes: [38] }))).filter(({ name }) =>
      name.startsWith('Fennel'),
    );
    expect(files.length).toBeGreaterThan(5);
    let words = 0;
    for (const file of files) {
      const marks = singly(file.draw());
      const lines = marks.flatMap((mark) => (mark.kind === 'line' && mark.layer === 'mark' ? [mark.points] : []));
      for (const mark of marks) {
        if (mark.kind !== 'text' || mark.turn) continue;
        words++;
        const { at, size = 3.5, anchor } = mark;
        const half = widthOf(mark.words, size) / 2;
        const middle = anchor === 'middle' ? at[0] : at[0] + half;
        // Through the body of the letters: what merely touches is no matter.
        const under = lines.filter((points) =>
          points.slice(1).some(([x, y], i) => {
            const [px, py] = points[i]!;
            const [left, right] = [Math.min(x, px), Math.max(x, px)];
            const [low, high] = [Math.min(y, py), Math.max(y, py)];
            return (
              left < middle + 0.8 * half &&
              right > middle - 0.8 * half &&
              low < at[1] - 0.1 &&
              high > at[1] - 0.6 * size
            );
          }),
        );
        expect(under, `${file.name}: ${mark.words}`).toEqual([]);
      }
    }
    expect(words).toBeGreaterThan(30);
  });
});
