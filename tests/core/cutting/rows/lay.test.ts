import { describe, expect, it } from 'vitest';
import { Lays } from '../../../../src/core/cutting/rows/lay';
import { clearance } from '../../../../src/core/cutting/rows/reach';
import { mirror } from '../../../../src/core/geometry/mirror';
import { soleLike } from '../outlines';

describe('Lays', () => {
  it('are those of the mirrored outline, mirrored, in every turn', () => {
    const { mirrored } = Lays.of(soleLike(), 2);
    const own = Lays.of(mirror(soleLike()), 2);
    const probe = Lays.of(soleLike(120, 20), 2).at(0).sides;
    for (const turn of [0, 37, 90, 180, 217, 270]) {
      const [found, wanted] = [mirrored.at(turn), own.at(turn)];
      expect(found.turn).toBe(turn);
      for (const side of ['left', 'bottom', 'right', 'top'] as const) {
        expect(found.box[side]).toBeCloseTo(wanted.box[side], 9);
        for (const at of [-60, -5.5, 20]) {
          expect(clearance(found.sides[side], probe.top, at)).toBeCloseTo(
            clearance(wanted.sides[side], probe.top, at),
            6,
          );
        }
      }
    }
  });

  it('are prepared once', () => {
    const lays = Lays.of(soleLike(), 2);
    expect(lays.at(90)).toBe(lays.at(90));
    expect(lays.mirrored.mirrored).toBe(lays);
  });
});
