import fc from 'fast-check';
import { expect, it } from 'vitest';
import { Columns } from '../../../../src/core/cutting/search/columns';
import { evenly } from '../../../evenly';

it('Columns hold each piece in the columns that it reaches, and in no others, wherever pieces have been before', () => {
  const put = fc.record({
    piece: fc.nat(5),
    left: evenly(-50, 350),
    length: evenly(0, 120),
  });
  fc.assert(
    fc.property(fc.array(put, { minLength: 1, maxLength: 30 }), (list) => {
      const columns = new Columns(6, 300, 40);
      const last = new Map<number, { left: number; right: number }>();
      for (const { piece, left, length } of list) {
        columns.put(piece, left, left + length);
        last.set(piece, { left, right: left + length });
      }
      columns.sizes.forEach((size, column) => {
        const held = [...columns.members.subarray(6 * column, 6 * column + size)].sort();
        const reaching = [...last].filter(
          ([, { left, right }]) => columns.at(left) <= column && columns.at(right) >= column,
        );
        expect(held).toEqual(reaching.map(([piece]) => piece).sort());
      });
    }),
    { seed: 1, numRuns: 100 },
  );
});
