import { describe, expect, it } from 'vitest';
import { doubledRows } from '../../../../src/core/plan/checks/doubled-rows';
import type { PairageRow } from '../../../../src/core/plan/inputs';

const row = (at: number, more: Partial<PairageRow> = {}): PairageRow => ({
  row: at,
  style: 'Betony',
  customer: 'Lock Lane shop',
  due: 46_000,
  pairs: new Map([
    [37, 1],
    [38, 2],
  ]),
  ...more,
});
const told = (...rows: PairageRow[]) =>
  doubledRows(rows).map((check) => (check.kind === 'doubledRow' ? `${check.row} as ${check.above}` : check.kind));

describe('a row of pairs that stands there already', () => {
  it('is told with the row that it repeats, however its words are written', () => {
    expect(told(row(1), row(2, { style: 'Teasel' }), row(3), row(4))).toEqual(['3 as 1', '4 as 1']);
    expect(told(row(1), row(2, { style: 'BETONY', customer: 'lock lane shop' }))).toEqual(['2 as 1']);
    const turned = new Map([
      [38, 2],
      [37, 1],
    ]);
    expect(told(row(1), row(2, { pairs: turned }))).toEqual(['2 as 1']);
    expect(told(row(1, { customer: undefined }), row(2, { customer: undefined }))).toEqual(['2 as 1']);
  });

  it('is none where anything differs, or nothing is ordered', () => {
    for (const more of [
      { customer: 'Harbour theatre' },
      { due: 46_014 },
      { due: undefined },
      { system: 'UK' as const },
      { cut: true },
      { pairs: new Map([[37, 1]]) },
    ])
      expect(told(row(1), row(2, more)), JSON.stringify(more)).toEqual([]);
    expect(told(row(1, { pairs: new Map() }), row(2, { pairs: new Map() }))).toEqual([]);
  });
});
