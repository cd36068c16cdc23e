import { ICommandService, type IDisposable, type Injector } from '@univerjs/core';
import { SheetsSelectionsService } from '@univerjs/sheets';

/** Changes by which other cells come to stand where the selection is. */
const MOVES_CELLS = /^sheet\.mutation\.(insert-row|insert-col|remove-rows|remove-col|move-)/;

/**
 * Reads the selected cells anew once others stand there: after rows and columns are taken out or put in, the grid's line for
 * formulas and its sums of the selection would go on to show what was there before.
 */
export function readSelectionAnew(injector: Injector): IDisposable {
  const selections = injector.get(SheetsSelectionsService);
  let waits = false;
  return injector.get(ICommandService).onCommandExecuted(({ id }) => {
    if (waits || !MOVES_CELLS.test(id)) return;
    waits = true;
    // After all the mutations of the step, and after the grid has laid its rows and columns out.
    setTimeout(() => {
      waits = false;
      const now = selections.getCurrentSelections();
      if (now.length > 0) selections.setSelections([...now]);
    });
  });
}
