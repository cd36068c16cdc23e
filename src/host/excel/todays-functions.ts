import { withTodaysFunctions } from '../../workbook/former-functions';
import { supports } from './requirements';
import { run } from './run';

/**
 * Gives formulas of the workbook today's names of functions where they call them by former ones; all else stays as it is.
 * @returns how many formulas have changed
 */
export async function useTodaysFunctions(): Promise<number> {
  return run(async (context) => {
    const sheets = context.workbook.worksheets.load('items/name');
    await context.sync();
    const used = sheets.items.map((sheet) => ({
      sheet,
      range: sheet.getUsedRangeOrNullObject().load('formulas, rowIndex, columnIndex'),
    }));
    await context.sync();
    const former = used.flatMap(({ sheet, range }) =>
      range.isNullObject
        ? []
        : (range.formulas as unknown[][]).flatMap((line, row) =>
            line.flatMap((formula, column) => {
              if (typeof formula !== 'string' || !formula.startsWith('=')) return [];
              const today = withTodaysFunctions(formula);
              if (today === formula) return [];
              const cell = sheet.getRangeByIndexes(range.rowIndex + row, range.columnIndex + column, 1, 1);
              return [{ cell: cell.load('rowIndex, columnIndex'), today }];
            }),
          ),
    );
    // A cell that a table spills over shows the formula too, and is none to write into.
    const parents = supports('ExcelApi', '1.12')
      ? former.map(({ cell }) => cell.getSpillParentOrNullObject().load('rowIndex, columnIndex'))
      : [];
    await context.sync();
    const own = former.filter(({ cell }, i) => {
      const parent = parents[i];
      return (
        !parent || parent.isNullObject || (parent.rowIndex === cell.rowIndex && parent.columnIndex === cell.columnIndex)
      );
    });
    for (const { cell, today } of own) cell.formulas = [[today]];
    await context.sync();
    return own.length;
  });
}
