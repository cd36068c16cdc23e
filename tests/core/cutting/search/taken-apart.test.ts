import { describe, expect, it } from 'vitest';
import { takenApart } from '../../../../src/core/cutting/search/taken-apart';

describe('takenApart', () => {
  const on = (turn: number) => ({ offcuts: [], sheets: [[{ piece: 2, x: 100, y: 50, turn }]] });

  it('lays the second of two side by side as far from the first as it lay, also end for end (by hand)', () => {
    const twos = [undefined, undefined, { first: 0, second: 1, turn: 90, x: 0, y: 80 }];
    expect(takenApart(on(0), twos).sheets).toEqual([
      [
        { piece: 0, x: 100, y: 50, turn: 90 },
        { piece: 1, x: 100, y: 130, turn: 90 },
      ],
    ]);
    expect(takenApart(on(180), twos).sheets).toEqual([
      [
        { piece: 0, x: 100, y: 50, turn: 270 },
        { piece: 1, x: 100, y: -30, turn: 270 },
      ],
    ]);
  });

  it('lays the other across the backbone as in a mirror, and what stands for itself as it is (by hand)', () => {
    const twos = [undefined, undefined, { mate: 1, bottom: 200, backbone: 205 }];
    expect(takenApart(on(30), twos).sheets).toEqual([
      [
        { piece: 2, x: 100, y: 250, turn: 30 },
        { piece: 1, x: 100, y: 160, turn: 330 },
      ],
    ]);
    expect(takenApart(on(30), [])).toEqual(on(30));
  });
});
