import { describe, expect, it } from 'vitest';
import { madeOwn, restOfExample } from '../../../src/host/grid/example-rest';

const example = (value: string | number, now: string | number | null = value) => ({
  v: now,
  custom: { example: value },
});

describe('the rest of an example row', () => {
  const line = { 0: example('Foam 10'), 1: example('foam'), 2: { v: null }, 3: example(10), 9: example(200) };

  it('is what the maker did not write when another code is typed at its head', () => {
    expect(restOfExample(line, { 0: { v: 'Bend 5' } })).toEqual([1, 3, 9]);
    expect(restOfExample(line, { 0: { v: 'Bend 5' }, 1: { v: 'leather' }, 3: { v: 10 } })).toEqual([9]);
    // The grid tells of what was written once it stands in the cells.
    expect(restOfExample({ ...line, 0: example('Foam 10', 'Bend 5') }, { 0: { v: 'Bend 5' } })).toEqual([1, 3, 9]);
  });

  it('is what the maker did not write when a row with the same code is pasted over it', () => {
    expect(restOfExample(line, { 0: { v: 'Foam 10' }, 1: { v: 'foam' }, 3: { v: 12 } })).toEqual([9]);
    expect(restOfExample(line, { 0: { v: 'Foam 10' }, 1: { v: 'foam' }, 3: {} })).toEqual([9]);
    expect(restOfExample(line, { 0: { v: 'Foam 10' }, 2: { v: 'note' } })).toEqual([1, 3, 9]);
  });

  it('is nothing where its code stays, or goes without another', () => {
    expect(restOfExample(line, { 0: { v: 'Foam 10' } })).toEqual([]);
    expect(restOfExample(line, { 0: { v: null } })).toEqual([]);
    expect(restOfExample(line, { 3: { v: 12 } })).toEqual([]);
  });

  it('is nothing in a row of which the maker has another value, and in a row of no example', () => {
    expect(restOfExample({ ...line, 3: example(10, 12) }, { 0: { v: 'Foam 12' } })).toEqual([]);
    expect(restOfExample({ 0: { v: 'Foam 10' }, 1: { v: 'foam' } }, { 0: { v: 'Bend 5' } })).toEqual([]);
    expect(restOfExample(undefined, { 0: { v: 'Bend 5' } })).toEqual([]);
  });
});

describe('an example typed anew', () => {
  const line = { 0: example('Foam 10'), 1: example('foam'), 2: { v: null }, 3: example(10) };

  it('is the maker’s, cell by cell, and other content and what goes is as before', () => {
    expect(madeOwn(line, { 0: { v: 'Foam 10' }, 3: { v: 10 } })).toEqual([
      [0, null],
      [3, null],
    ]);
    expect(madeOwn(line, { 0: { v: 'Foam 12' }, 1: { v: null }, 2: { v: 'x' } })).toEqual([]);
    expect(madeOwn(undefined, { 0: { v: 'Foam 10' } })).toEqual([]);
  });
});
