import { describe, expect, it } from 'vitest';
import { finished } from '../../../../src/core/stepwise';
import { LaidBefore } from '../../../../src/core/cutting/natural/laid-before';
import { packNaturalStepwise } from '../../../../src/core/cutting/natural/pack-natural';
import type { Placements } from '../../../../src/core/cutting/sheet/layout';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import { Memory } from '../../../../src/core/memory';
import { shared } from '../../../../src/core/shared';
import type { Stepwise } from '../../../../src/core/stepwise';
import { mirror } from '../../../../src/core/geometry/mirror';
import { soleLike } from '../outlines';
import { FORMAT } from './hide';

const LENGTHS = [270, 250, 230, 200];
const format = { ...FORMAT, pairs: 'side by side' as const };

function soles(counts: readonly number[]): readonly Piece[] {
  return LENGTHS.flatMap((length, i): Piece[] => {
    const left = soleLike(length, 38);
    const same = { count: counts[i] ?? 0, way: { kind: 'endForEnd' as const }, pair: String(length) };
    return [
      { key: `${length} L`, ring: left, ...same },
      { key: `${length} R`, ring: mirror(left), ...same },
    ];
  });
}

const kept = () => shared('shapes of pieces on natural sheets', () => new Memory(0));
const steps = (counts: readonly number[]) => packNaturalStepwise(soles(counts), format);

describe('LaidBefore', () => {
  // More of one kind, fewer, none, more than a sheet takes, and as it was.
  const edits = [
    [3, 2, 2, 4],
    [3, 4, 2, 4],
    [3, 1, 2, 4],
    [3, 0, 2, 4],
    [9, 1, 2, 4],
    [3, 2, 2, 9],
    [3, 2, 2, 4],
  ];

  it('changes nothing of how sheets are laid, whatever has been laid before', () => {
    const anew = edits.map((counts) => {
      kept().forget();
      return finished(steps(counts));
    });
    kept().forget();
    expect(edits.map((counts) => finished(steps(counts)))).toEqual(anew);
  });

  it('serves two who lay the same pieces step by step at once', () => {
    const both = [
      [3, 2, 2, 4],
      [3, 4, 2, 4],
    ] as const;
    const anew = both.map((counts) => {
      kept().forget();
      return finished(steps(counts));
    });
    kept().forget();
    // What they are to share.
    finished(steps([3, 0, 0, 0]));
    const going: readonly Stepwise<readonly Placements[]>[] = both.map(steps);
    const layouts: (readonly Placements[])[] = [];
    while (layouts.filter(Boolean).length < 2) {
      going.forEach((work, i) => {
        const { done, value } = layouts[i] ? { done: false, value: undefined } : work.next();
        if (done && value) layouts[i] = value;
      });
    }
    expect(layouts).toEqual(anew);
  });

  it('counts what it holds, and forgets it', () => {
    const laid = new LaidBefore<object>();
    const sheet = laid.sheet('along');
    sheet.add('sole', [{}, {}]);
    expect(sheet.of('sole')).toEqual({ units: [[{}, {}]], full: false });
    const { bytes } = laid;
    expect(bytes).toBeGreaterThan(0);
    expect(laid.sheet('along').with('sole', 1)).toBe(sheet.with('sole', 1));
    expect(laid.sheet('across')).not.toBe(sheet);
    expect(laid.bytes).toBeGreaterThan(bytes);
    laid.forget();
    expect(laid.bytes).toBe(0);
    expect(laid.sheet('along')).not.toBe(sheet);
  });
});
