import { describe, expect, it } from 'vitest';
import { Problem } from '../../src/core/problem';

describe('Problem', () => {
  it('names the argument, then says what is wrong and what would do', () => {
    expect(new Problem('invalid', { argument: 'height' }, 'it is blank; enter it').message).toBe(
      'height: it is blank; enter it',
    );
  });

  it('names table, row and column where the slip lies in a table, and not the argument', () => {
    const place = { argument: 'stock', table: 'Bottom stock', row: 3, column: 'Thick' };
    expect(new Problem('invalid', place, 'it is blank').message).toBe('Bottom stock, row 3, Thick: it is blank');
  });

  it('leaves out what is not known of the place', () => {
    expect(new Problem('invalid', { argument: 'stock', table: 'Bottom stock' }, 'no').message).toBe('Bottom stock: no');
    expect(new Problem('invalid', { argument: 'outline', row: 2 }, 'no').message).toBe('outline, row 2: no');
  });

  it('is an Error that keeps its code, place and reason', () => {
    const problem = new Problem('unavailable', { argument: 'height' }, 'no mix');
    expect(problem).toBeInstanceOf(Error);
    expect(problem).toMatchObject({ name: 'Problem', code: 'unavailable', reason: 'no mix' });
  });
});
