import { describe, expect, it } from 'vitest';
import { byCode, fold } from '../../../src/core/plan/codes';

describe('a code', () => {
  it('is the same with other capitals and blanks at its ends, not within', () => {
    expect(fold(' Cork 6 ')).toBe(fold('CORK 6'));
    expect(fold('Cork 6')).not.toBe(fold('Cork6'));
  });

  it('leads to the first record that has it', () => {
    const records = [
      { code: 'Cork 6', at: 1 },
      { code: 'cork 6 ', at: 2 },
      { code: 'Foam 10', at: 3 },
    ];
    const found = byCode(records);
    expect(found.get(fold('CORK 6'))?.at).toBe(1);
    expect(found.get(fold('Foam 10'))?.at).toBe(3);
    expect(found.size).toBe(2);
  });
});
