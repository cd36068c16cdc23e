import { describe, expect, it } from 'vitest';
import { fittingTurn, mustFit } from '../../../../src/core/cutting/sheet/fitting-turn';
import { allows, endsMaySwap, wholeTurn } from '../../../../src/core/cutting/sheet/way';
import { rectangle } from '../outlines';

describe('allows', () => {
  it.each([
    [{ kind: 'any' }, 37.5, true],
    [{ kind: 'endForEnd' }, 180, true],
    [{ kind: 'endForEnd' }, -180, true],
    [{ kind: 'endForEnd' }, 90, false],
    [{ kind: 'oneWay' }, 360, true],
    [{ kind: 'oneWay' }, 180, false],
    [{ kind: 'within', degrees: 10 }, 190, true],
    [{ kind: 'within', degrees: 10 }, -10, true],
    [{ kind: 'within', degrees: 10 }, 10.1, false],
    [{ kind: 'within', degrees: 0 }, 180, true],
  ] as const)('a piece that may lie %o by %d°: %s', (way, turn, wanted) => {
    expect(allows(way, turn)).toBe(wanted);
  });

  it('lets all but pieces that lie one way be turned end for end', () => {
    expect(endsMaySwap({ kind: 'oneWay' })).toBe(false);
    expect(endsMaySwap({ kind: 'within', degrees: 3 })).toBe(true);
  });

  it('brings degrees into one turn', () => {
    expect([-90, 450, 720, 0].map(wholeTurn)).toEqual([270, 90, 0, 0]);
  });
});

describe('fittingTurn', () => {
  const format = { length: 300, width: 200, knifeRoom: 4, edgeTrim: 10 };

  it('prefers to lie along, then across, then aslant', () => {
    expect(fittingTurn(rectangle(280, 180), format, { kind: 'any' })).toBe(0);
    expect(fittingTurn(rectangle(150, 250), format, { kind: 'any' })).toBe(90);
    const aslant = fittingTurn(rectangle(310, 5), format, { kind: 'any' });
    expect(aslant).toBeGreaterThan(0);
    expect(fittingTurn(rectangle(150, 250), format, { kind: 'endForEnd' })).toBeUndefined();
    expect(fittingTurn(rectangle(281, 20), format, { kind: 'within', degrees: 10 })).toBeUndefined();
  });

  it('names a piece that fits nowhere, with what would do', () => {
    expect(() => mustFit(rectangle(400, 50), format, { kind: 'within', degrees: 5 }, 'runner')).toThrow(
      /runner: the piece measures 400 × 50 mm and the sheet 280 × 180 mm.*within 5°.*larger sheet/,
    );
  });
});
