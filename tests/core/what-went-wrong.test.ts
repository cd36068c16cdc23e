import { describe, expect, it } from 'vitest';
import { Problem } from '../../src/core/problem';
import { whatWentWrong } from '../../src/core/what-went-wrong';

describe('what went wrong', () => {
  it('is the sentence of an error, with the place of a problem', () => {
    expect(whatWentWrong(new Error('out of memory'))).toBe('out of memory');
    expect(whatWentWrong(new Problem('invalid', { argument: 'height' }, 'it is blank'))).toBe('height: it is blank');
  });

  it('is whatever else was thrown, in letters', () => {
    expect(whatWentWrong('stopped')).toBe('stopped');
    expect(whatWentWrong(undefined)).toBe('undefined');
  });
});
