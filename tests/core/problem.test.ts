import { describe, expect, it } from 'vitest';
import { Problem, THERE } from '../../src/core/problem';
import { letGo } from '../let-go';

describe('Problem', () => {
  it('names the argument, then says what is wrong and what would do', () => {
    expect(new Problem('invalid', { argument: 'height' }, 'it is blank; enter it').message).toBe(
      'height: it is blank; enter it',
    );
  });

  it('names table, row and column where the slip lies in a table, and not the argument', () => {
    const place = { argument: 'stock', table: 'Bottom stock', row: 3, column: 'Thick' };
    expect(new Problem('invalid', place, 'it is blank').message).toBe('row 3 of Bottom stock, Thick: it is blank');
  });

  it('leaves out what is not known of the place', () => {
    expect(new Problem('invalid', { argument: 'stock', table: 'Bottom stock' }, 'no').message).toBe('Bottom stock: no');
    expect(new Problem('invalid', { argument: 'outline', row: 2 }, 'no').message).toBe('row 2 of outline: no');
  });

  it('says both of its places in the words of a host', () => {
    const [place, there] = [2, 1].map((row) => ({ argument: 'stock', table: 'Bottom stock', row }));
    const problem = new Problem('invalid', place!, `"Cork" is in ${THERE} already`, there);
    expect(problem.message).toBe('row 2 of Bottom stock: "Cork" is in row 1 of Bottom stock already');
    expect(problem.inWords(({ row = 0 }) => `Shelf, row ${row + 3}`)).toBe(
      'Shelf, row 5: "Cork" is in Shelf, row 4 already',
    );
  });

  it('is an Error that keeps its code, place and reason', () => {
    const problem = new Problem('unavailable', { argument: 'height' }, 'no mix');
    expect(problem).toBeInstanceOf(Error);
    expect(problem).toMatchObject({ name: 'Problem', code: 'unavailable', reason: 'no mix' });
  });

  it('holds nothing of the table in which it was found', async () => {
    const read = (table: readonly unknown[]): Problem => {
      try {
        table.forEach(() => {
          throw new Problem('invalid', { argument: 'stock' }, 'it is blank');
        });
      } catch (error) {
        if (error instanceof Problem) return error;
      }
      throw new Error('No problem was found.');
    };
    const found = ((table: readonly unknown[]) => ({ problem: read(table), table: new WeakRef(table) }))([{}]);
    expect(await letGo(found.table)).toBe(true);
    expect(found.problem.stack).toBe('Problem: stock: it is blank');
  });
});
