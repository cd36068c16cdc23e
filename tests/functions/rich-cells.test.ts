import { describe, expect, it } from 'vitest';
import { type CellError, loadBundle } from '../bundle';
import { planArguments } from '../demo-cells';

/** Cells as newer versions of the office suite hand them over: its maker's "Custom functions and data types" (2026). */
const formatted = (basicValue: number) => ({ type: 'FormattedNumber', basicValue, numberFormat: '0.0 "mm"' });
const double = (basicValue: number) => ({ type: 'Double', basicType: 'Double', basicValue, numberFormat: 'd mmm' });
const error = (basicValue: string) => ({ type: 'Error', basicType: 'Error', basicValue, errorType: 'Div0' });

const suite = (sets: readonly string[]) => ({
  Office: {
    context: {
      requirements: { isSetSupported: (name: string, version: string) => sets.includes(`${name} ${version}`) },
    },
  },
});
const plain = loadBundle();

function sentence(work: () => unknown): string {
  try {
    work();
  } catch (thrown) {
    return `${(thrown as CellError).code} ${(thrown as CellError).message}`;
  }
  return 'none';
}

describe('cells that come with more than their value', () => {
  it('are taken for their number, whatever its format', () => {
    expect(plain.call('HEELHEIGHT', formatted(45), double(8), null)).toBe(53);
    expect(plain.call('PAIRS', 3, [[formatted(1), double(2)]])).toEqual([[1, 2]]);
  });

  it('say a direction in degrees as a number, with its format or as text', () => {
    const outline = [
      [0, 0],
      [260, 0],
      [240, 90],
      [20, 90],
    ];
    const pieces = (direction: unknown) => plain.call('PIECESPERSHEET', outline, 640, 950, 4, 10, direction, null);
    for (const fifteen of [formatted(15), '15', ' 15 ']) expect(pieces(fifteen)).toBe(pieces(15));
    expect(pieces('end for end')).toBe(pieces(0));
    expect(sentence(() => pieces('120'))).toContain('direction: "120" is not possible; give 90 or less');
  });

  it('that show an error are told of with their place', () => {
    expect(sentence(() => plain.call('HEELHEIGHT', error('#DIV/0!'), 8, null))).toBe(
      '#VALUE! last_heel: the cell shows #DIV/0!; put that one right first',
    );
    expect(sentence(() => plain.call('PAIRS', 3, [[1, error('#N/A')]]))).toBe(
      '#VALUE! size_curve: the cell shows #N/A; put that one right first',
    );
    const [pairage, ...others] = planArguments();
    const broken = pairage!.map((row, at) => (at === 1 ? [error('#REF!'), ...row.slice(1)] : row));
    expect(sentence(() => plain.call('PIECES', broken, ...others))).toMatch(
      /^#VALUE! row 1 of Pairage, Style: the cell shows #REF!; put that one right first/,
    );
    // An order goes on without the row, and says so.
    expect(JSON.stringify(plain.call('ORDER', broken, ...others))).toContain(
      'row 1 of Pairage, Style: the cell shows #REF!; put that one right first',
    );
  });

  it('that show an error in a column of the maker’s own spoil nothing', () => {
    const [pairage, ...others] = planArguments();
    const noted = pairage!.map((row, at) => [...row, at === 0 ? 'My notes' : error('#N/A')]);
    expect(plain.call('ORDER', noted, ...others)).toEqual(plain.call('ORDER', pairage, ...others));
  }, 60_000);
});

describe('answers with a unit', () => {
  it('are plain numbers where the host cannot show formats', () => {
    for (const bundle of [
      plain,
      loadBundle(suite([])),
      loadBundle(suite(['ExcelApi 1.19'])),
      loadBundle({ Office: {} }),
    ]) {
      expect(bundle.call('HEELHEIGHT', 45, 8, null)).toBe(53);
    }
  });

  // FormattedNumberCellValue is to be given up for DoubleCellValue from ExcelApi 1.19 on: its maker's pages on both (2026).
  it.each([
    ['FormattedNumber', ['CustomFunctionsRuntime 1.4'], {}],
    ['Double', ['CustomFunctionsRuntime 1.4', 'ExcelApi 1.19'], { basicType: 'Double' }],
  ])('show it as %s where the host can, and keep all digits', (type, sets, more) => {
    const { call } = loadBundle(suite(sets));
    const shown = (basicValue: number, numberFormat: string) => ({ type, ...more, basicValue, numberFormat });
    expect(call('HEELHEIGHT', 45, 8.04, null)).toEqual(shown(53.04, '0.0 "mm"'));
    expect(call('SKIVEANGLE', 7, 1, 6)).toEqual(shown(45, '0.0"°"'));
    expect(call('UNIT', 12, 'iron', 'mm')).toEqual(shown(6.35, 'General "mm"'));
    expect(call('LAYERS', 45, 7, null)).toBe(7);
    // An answer is an argument too.
    expect(call('HEELHEIGHT', call('HEELHEIGHT', 45, 8, null), 4, null)).toMatchObject({ basicValue: 57 });
    expect(sentence(() => call('HEELHEIGHT', 'x', 8, null))).toMatch(/^#VALUE! last_heel/);
  });
});
