import {
  CommandType,
  ICommandService,
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
} from '@univerjs/core';
import { SetWorksheetActiveOperation } from '@univerjs/sheets';
import { whenSheetEditorFocused } from '@univerjs/sheets-ui';
import { ILayoutService, IShortcutService, type KeyCode, MetaKeys } from '@univerjs/ui';

/** Keys that the grid has no names for, by their numbers. */
const [PAGE_UP, PAGE_DOWN] = [33, 34] as readonly number[] as readonly [KeyCode, KeyCode];
const TURN = 'solebench.operation.turn-to-sheet';

/**
 * Ctrl+PageDown and Ctrl+PageUp turn to the next sheet and the one before, without those that are hidden; with Alt as well,
 * since some browsers keep the keys with Ctrl to themselves.
 */
export function turnSheetsByKeys(injector: Injector): void {
  const shortcuts = injector.get(IShortcutService);
  injector.get(ICommandService).registerCommand({
    id: TURN,
    type: CommandType.OPERATION,
    handler: (_accessor, params?: { readonly by: 1 | -1 }) => params !== undefined && turn(injector, params.by),
  });
  for (const [key, by] of [
    [PAGE_UP, -1],
    [PAGE_DOWN, 1],
  ] as const)
    for (const held of [MetaKeys.CTRL_COMMAND, MetaKeys.ALT])
      shortcuts.registerShortcut({
        id: TURN,
        binding: key | held,
        preconditions: whenSheetEditorFocused,
        staticParameters: { by },
      });
}

function turn(injector: Injector, by: 1 | -1): boolean {
  const workbook = injector.get(IUniverInstanceService).getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
  if (!workbook) return false;
  const shown = workbook.getSheets().filter((sheet) => !sheet.isSheetHidden());
  const next = shown[shown.indexOf(workbook.getActiveSheet()) + by];
  if (!next) return false;
  const params = { unitId: workbook.getUnitId(), subUnitId: next.getSheetId() };
  const turned = injector.get(ICommandService).syncExecuteCommand(SetWorksheetActiveOperation.id, params);
  injector.get(ILayoutService).focus();
  return turned;
}

/** Where the tabs of the sheets stand. */
export const TABS = '[data-u-comp="slide-tab-bar"]';

/**
 * A click on a tab leaves the focus with the sheet that it shows, so that keys go on there: on the tab, what was typed and
 * undo went nowhere. A second click renames.
 */
export function tabsLeaveFocus(grid: HTMLElement, injector: Injector): void {
  grid.addEventListener('click', ({ detail, target }) => {
    if (detail !== 1 || !(target instanceof Element) || !target.closest('[data-u-comp="slide-tab-item"]')) return;
    injector.get(ILayoutService).focus();
  });
}

/** Puts the focus on the tab of the sheet that is shown, from which the arrow keys go to the others. */
export function enterTabs(grid: HTMLElement): boolean {
  const tab = grid.querySelector<HTMLElement>('[data-u-comp="slide-tab-item"][aria-selected="true"]');
  if (!tab || tab.offsetParent === null) return false;
  tab.focus();
  return true;
}
