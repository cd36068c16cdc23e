import {
  ICommandService,
  type Injector,
  type IRange,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
  type Worksheet,
} from '@univerjs/core';
import { deserializeRangeWithSheet, IDefinedNamesService } from '@univerjs/engine-formula';
import {
  ScrollToCellOperation,
  SetSelectionsOperation,
  SetWorksheetActiveOperation,
  SheetsSelectionsService,
} from '@univerjs/sheets';
import { ILayoutService } from '@univerjs/ui';
import { goalOf } from './goal-typed';
import { showNotice } from './notices';

const BOX = '[data-u-comp="defined-name"]';

/** Has a click into the box select what stands in it, as Tab does: what is typed takes its place. */
export function selectOnClick(): void {
  let fresh: EventTarget | null = null;
  document.addEventListener('focusin', ({ target }) => (fresh = target));
  document.addEventListener('click', ({ target }) => {
    // A second click sets the caret.
    if (target === fresh && target instanceof HTMLInputElement && target.closest(BOX)) target.select();
    fresh = null;
  });
}

/** Has Enter in the box go where the grid's own does not: it takes a cell of another sheet for one of the sheet that is shown. */
export function goToWhatIsTyped(injector: Injector): void {
  document.addEventListener(
    'keydown',
    (event) => {
      const { key, target, isComposing } = event;
      if (key !== 'Enter' || isComposing || !(target instanceof HTMLInputElement) || !target.closest(BOX)) return;
      const workbook = injector
        .get(IUniverInstanceService)
        .getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
      if (!workbook) return;
      const shown = workbook.getSheets().filter((sheet) => !sheet.isSheetHidden());
      const names = Object.values(injector.get(IDefinedNamesService).getDefinedNameMap(workbook.getUnitId()) ?? {});
      const goal = goalOf(
        target.value,
        shown.map((sheet) => sheet.getName()),
        names.map(({ name, formulaOrRefString }) => ({ name, reference: formulaOrRefString })),
      );
      if (!goal) return;
      event.preventDefault();
      event.stopPropagation();
      const sheet = shown.find((one) => one.getName() === goal.sheet);
      if (!sheet) showNotice(`There is no sheet “${goal.sheet}”.`);
      else if (!select(injector, workbook, sheet, goal.cells))
        showNotice(`${goal.sheet} has no cell ${goal.cells}; it ends at row ${sheet.getRowCount()}.`);
      // What leads nowhere stays in the box, to be put right.
      else injector.get(ILayoutService).focus();
    },
    true,
  );
}

/** @returns whether the sheet has such cells */
function select(injector: Injector, workbook: Workbook, sheet: Worksheet, cells: string | undefined): boolean {
  const range = cells === undefined ? undefined : deserializeRangeWithSheet(cells).range;
  if (range && (range.endRow >= sheet.getRowCount() || range.endColumn >= sheet.getColumnCount())) return false;
  const of = { unitId: workbook.getUnitId(), subUnitId: sheet.getSheetId() };
  const commands = injector.get(ICommandService);
  if (workbook.getActiveSheet() !== sheet) commands.syncExecuteCommand(SetWorksheetActiveOperation.id, of);
  const goal = range ?? injector.get(SheetsSelectionsService).getCurrentLastSelection()?.range ?? cell(0, 0);
  const { startRow: row, startColumn: column } = goal;
  const primary = {
    ...cell(row, column),
    actualRow: row,
    actualColumn: column,
    isMerged: false,
    isMergedMainCell: false,
  };
  const selections = [{ range: goal, primary, style: null }];
  commands.syncExecuteCommand(SetSelectionsOperation.id, { ...of, selections });
  commands.syncExecuteCommand(ScrollToCellOperation.id, { unitId: of.unitId, range: goal });
  return true;
}

function cell(row: number, column: number): IRange {
  return { startRow: row, endRow: row, startColumn: column, endColumn: column };
}
