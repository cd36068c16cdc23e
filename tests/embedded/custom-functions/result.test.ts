import { describe, expect, it } from 'vitest';
import { Failure } from '../../../src/embedded/custom-functions/arguments';
import { answerFrom, failureFrom } from '../../../src/embedded/custom-functions/result';

describe('answerFrom', () => {
  it('keeps values and makes blank text of nothing', () => {
    expect([1.5, 'x', false, null, undefined].map(answerFrom)).toEqual([1.5, 'x', false, '', '']);
  });

  it('makes errors of what no cell can show', () => {
    expect(answerFrom(NaN)).toEqual(new Failure('#VALUE!', 'The answer is not a number.'));
    expect(answerFrom(-Infinity)).toMatchObject({ code: '#NUM!' });
    expect(answerFrom({ a: 1 })).toMatchObject({ code: '#VALUE!' });
    expect(answerFrom([])).toMatchObject({ code: '#CALC!' });
    expect(answerFrom([[]])).toMatchObject({ code: '#CALC!' });
  });

  it('fills rows up to the longest, and takes a list for one row', () => {
    expect(answerFrom([[1, 2], [3]])).toEqual([
      [1, 2],
      [3, new Failure('#N/A')],
    ]);
    expect(answerFrom([1, 'x'])).toEqual([[1, 'x']]);
  });

  it('keeps errors in a table', () => {
    const error = Object.assign(new Error('too thin'), { code: '#N/A' });
    expect(answerFrom([[1, error]])).toEqual([[1, new Failure('#N/A', 'too thin')]]);
  });
});

describe('failureFrom', () => {
  it('keeps the code and sentence of the host’s errors', () => {
    expect(failureFrom(Object.assign(new Error('why'), { code: '#N/A' }))).toEqual(new Failure('#N/A', 'why'));
  });

  it('makes #VALUE! of anything else, with what it says', () => {
    expect(failureFrom(new Error('why'))).toEqual(new Failure('#VALUE!', 'why'));
    expect(failureFrom('why')).toEqual(new Failure('#VALUE!', 'why'));
    expect(failureFrom(Object.assign(new Error(''), { code: 7 }))).toEqual(new Failure('#VALUE!'));
  });
});
