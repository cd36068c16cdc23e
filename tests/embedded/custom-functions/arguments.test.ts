import { describe, expect, it } from 'vitest';
import {
  addressOf,
  argumentsFor,
  CellError,
  Failure,
  liftedSize,
} from '../../../src/embedded/custom-functions/arguments';
import type { FunctionMetadata, ParameterMetadata } from '../../../src/embedded/custom-functions/metadata';

const taking = (...parameters: readonly ParameterMetadata[]): FunctionMetadata => ({ id: 'F', name: 'F', parameters });
const any = (name: string, more: Partial<ParameterMetadata> = {}): ParameterMetadata => ({
  name,
  type: 'any',
  ...more,
});
const failure = (work: () => unknown): [string, string | undefined] => {
  try {
    work();
  } catch (error) {
    if (error instanceof Failure) return [error.code, error.message];
    throw error;
  }
  throw new Error('nothing failed');
};

// The convention is that of the office suite's documentation of custom functions (options, optional and repeating
// parameters, dynamic arrays), from memory.
describe('argumentsFor', () => {
  it('hands values of type any over as they are, and a blank cell as null', () => {
    const f = taking(any('a'), any('b'), any('c'), any('d'));
    expect(argumentsFor(f, [1, 'x', true, null])).toEqual([1, 'x', true, null]);
  });

  it('fills omitted optional arguments with null', () => {
    expect(argumentsFor(taking(any('a'), any('b', { optional: true })), [1])).toEqual([1, null]);
    expect(argumentsFor(taking(any('a'), { name: 'n', type: 'number', optional: true }), [1, null])).toEqual([1, null]);
  });

  it('collects repeating arguments in a list', () => {
    const f = taking(any('a'), any('rest', { repeating: true }));
    expect(argumentsFor(f, [1, 2, 'x'])).toEqual([1, [2, 'x']]);
    expect(argumentsFor(f, [1])).toEqual([1, []]);
  });

  it('hands a range over as rows of cells, and one value as a range of one cell', () => {
    const f = taking(any('range', { dimensionality: 'matrix' }));
    expect(
      argumentsFor(f, [
        [
          [1, null],
          ['x', false],
        ],
      ]),
    ).toEqual([
      [
        [1, null],
        ['x', false],
      ],
    ]);
    expect(argumentsFor(f, [7])).toEqual([[[7]]]);
    expect(argumentsFor(taking(any('range', { dimensionality: 'matrix', optional: true })), [])).toEqual([null]);
  });

  it('makes numbers, text and truth values of what can be one', () => {
    const f = taking({ name: 'n', type: 'number' }, { name: 's', type: 'string' }, { name: 'b', type: 'boolean' });
    expect(argumentsFor(f, ['7.5', true, 'false'])).toEqual([7.5, 'TRUE', false]);
    expect(argumentsFor(f, [true, 2, 1])).toEqual([1, '2', true]);
    expect(argumentsFor(f, [null, null, null])).toEqual([0, '', false]);
  });

  it('names the argument that cannot be what is asked for', () => {
    expect(failure(() => argumentsFor(taking({ name: 'height', type: 'number' }), ['tall']))).toEqual([
      '#VALUE!',
      'height: "tall" is not a number; enter one',
    ]);
    expect(failure(() => argumentsFor(taking({ name: 'height', type: 'number' }), [' ']))[0]).toBe('#VALUE!');
    expect(failure(() => argumentsFor(taking({ name: 'bent', type: 'boolean' }), ['maybe']))[1]).toBe(
      'bent: "maybe" is not TRUE or FALSE; enter one',
    );
  });

  it('passes errors on and says where in a range they stand', () => {
    expect(failure(() => argumentsFor(taking(any('a')), [new CellError('#N/A')]))).toEqual([
      '#N/A',
      'a: the cell shows #N/A; put that one right first',
    ]);
    const f = taking(any('size_curve', { dimensionality: 'matrix' }));
    expect(
      failure(() =>
        argumentsFor(f, [
          [
            [1, 2],
            [3, new CellError('#REF!')],
          ],
        ]),
      )[1],
    ).toBe('row 2 of size_curve, column 2: the cell shows #REF!; put that one right first');
  });

  it('names a table by its title, with its row below the headings and its heading', () => {
    const stock = taking(any('stock', { dimensionality: 'matrix' }));
    const said = (block: (string | number | CellError)[][]) => failure(() => argumentsFor(stock, [block]))[1];
    expect(
      said([
        ['Stock', 'Thick\nmm'],
        ['Cork 6', new CellError('#REF!')],
      ]),
    ).toBe('row 1 of Bottom stock, Thick: the cell shows #REF!; put that one right first');
    expect(said([['Stock', new CellError('#N/A')]])).toBe(
      'headings of Bottom stock, column 2: the cell shows #N/A; put that one right first',
    );
  });

  it('names the cell of the sheet where it knows where the range stands', () => {
    const stock = taking(any('stock', { dimensionality: 'matrix' }));
    const block = [
      ['Stock', 'Thick\nmm'],
      ['Cork 6', new CellError('#REF!')],
    ];
    const corner = { sheet: 'My shelf', row: 2, column: 1 };
    expect(failure(() => argumentsFor(stock, [block], 0, 0, [corner]))[1]).toBe(
      'My shelf, C4, Thick: the cell shows #REF!; put that one right first',
    );
    expect(addressOf([['a'], ['b']], corner)).toBe("'My shelf'!B3:B4");
    expect(addressOf([['a']], { ...corner, sheet: 'Run' })).toBe('Run!B3');
    expect(addressOf(7, corner)).toBeUndefined();
    expect(addressOf([['a']], undefined)).toBeUndefined();
  });

  it('counts arguments', () => {
    const count = (f: FunctionMetadata, given: number) => failure(() => argumentsFor(f, Array(given).fill(1)))[1];
    expect(count(taking(any('a')), 2)).toContain('F takes 1 argument, not 2; here a comma separates');
    expect(count(taking(any('a'), any('b'), any('c', { optional: true })), 1)).toContain(
      'F takes 2 to 3 arguments, not 1; here a comma separates',
    );
    expect(count(taking(any('a'), any('r', { repeating: true })), 0)).toContain(
      'F takes 1 argument or more, not 0; here a comma separates',
    );
  });
});

describe('a range given for one value', () => {
  const f = taking(any('a'), any('b'), any('m', { dimensionality: 'matrix' }));

  it('makes as many calls as it has cells', () => {
    expect(liftedSize(f, [1, 2, [[1, 2, 3]]])).toEqual({ rows: 1, columns: 1 });
    expect(liftedSize(f, [[[1], [2], [3]], [[1, 2]], 1])).toEqual({ rows: 3, columns: 2 });
  });

  it('lends a single row or column to each, and gives out where another range is larger', () => {
    expect(argumentsFor(f, [[[1], [2], [3]], [[4, 5]], 0], 2, 1)).toEqual([3, 5, [[0]]]);
    expect(failure(() => argumentsFor(f, [[[1], [2], [3]], [[4], [5]], 0], 2, 0))).toEqual([
      '#N/A',
      "b: its range is smaller than another argument's",
    ]);
  });
});
