import type { IAccessor } from '@univerjs/core';
import { SheetsSelectionsService } from '@univerjs/sheets';
import { MoveSelectionEnterAndTabCommand } from '@univerjs/sheets-ui';
import { KeyCode } from '@univerjs/ui';

/** Where the grid keeps the cell at which a row of Tabs began, to which Enter goes back; it does not export it. */
interface BeginningOfTabs {
  remove(of: { unitId: string; sheetId: string; keycode: KeyCode }): unknown;
  getCurrentBySearch: unknown;
}

/**
 * Enter after Tabs goes on below the cell at which they began. The grid remembers that cell even where the maker has gone
 * elsewhere since, by mouse or name box: here it is forgotten then, so that Enter goes on below the cell that was left.
 */
export function forgetTabsLeft(): void {
  const move = MoveSelectionEnterAndTabCommand.handler;
  /** Where the last Tab or Enter led. */
  let led = '';
  MoveSelectionEnterAndTabCommand.handler = (accessor, params) => {
    const selections = accessor.get(SheetsSelectionsService);
    const left = selected(selections) !== led;
    const watched: IAccessor = {
      ...accessor,
      get: ((...asked: Parameters<IAccessor['get']>) => {
        const service: unknown = accessor.get(...asked);
        if (left && isBeginningOfTabs(service)) forget(service, selections);
        return service;
      }) as IAccessor['get'],
    };
    const done = move(watched, params);
    led = selected(selections);
    return done;
  };
}

function forget(tabs: BeginningOfTabs, selections: SheetsSelectionsService): void {
  const { unitId, sheetId } = selections.currentSelectionParam ?? {};
  if (unitId !== undefined && sheetId !== undefined) tabs.remove({ unitId, sheetId, keycode: KeyCode.TAB });
}

function selected(selections: SheetsSelectionsService): string {
  const { unitId, sheetId } = selections.currentSelectionParam ?? {};
  const { actualRow, actualColumn } = selections.getCurrentLastSelection()?.primary ?? {};
  return [unitId, sheetId, actualRow, actualColumn].join(' ');
}

function isBeginningOfTabs(service: unknown): service is BeginningOfTabs {
  return typeof service === 'object' && service !== null && 'getCurrentBySearch' in service && 'addOrUpdate' in service;
}
