import {
  type ICellData,
  ICommandService,
  type Injector,
  IUndoRedoService,
  IUniverInstanceService,
  type IWorkbookData,
  type Nullable,
  UniverInstanceType,
  type Workbook,
} from '@univerjs/core';
import { SetRangeValuesMutation, SetWorksheetActiveOperation } from '@univerjs/sheets';
import type { GridHost } from './grid-host';
import { withoutSpilled } from './spilled-resource';

type Rows = Readonly<Record<number, Readonly<Record<number, ICellData>>>>;
type Changed = Record<number, Record<number, Nullable<ICellData>>>;

/**
 * Brings the grid from one state of its workbook to a later one that was made elsewhere. Where only cells differ, only those
 * change, so that whoever looks at it stays where he is. Nothing of it can be undone here.
 */
export function bringUp(injector: Injector, host: GridHost, was: IWorkbookData, now: IWorkbookData): void {
  const workbook = injector.get(IUniverInstanceService).getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
  if (!workbook) throw new Error('The grid has no workbook.');
  const commands = injector.get(ICommandService);
  const unitId = workbook.getUnitId();
  if (frameOf(was) === frameOf(now)) {
    for (const id of now.sheetOrder) {
      const [before, after] = [was.sheets[id], now.sheets[id]];
      // A workbook that took the place of another has sheets of the same names and other ids.
      const subUnitId = workbook.getSheetBySheetName(after?.name ?? '')?.getSheetId();
      const cellValue = changedCells((before?.cellData ?? {}) as Rows, (after?.cellData ?? {}) as Rows);
      if (subUnitId === undefined || Object.keys(cellValue).length === 0) continue;
      commands.syncExecuteCommand(SetRangeValuesMutation.id, { unitId, subUnitId, cellValue });
    }
  } else {
    const shown = workbook.getActiveSheet()?.getName();
    host.replaceBy(now);
    const subUnitId = workbook.getSheetBySheetName(shown ?? '')?.getSheetId();
    if (subUnitId !== undefined) commands.syncExecuteCommand(SetWorksheetActiveOperation.id, { unitId, subUnitId });
  }
  injector.get(IUndoRedoService).clearUndoRedo(unitId);
}

/** All of a workbook but its cells, and the heights that follow what stands in them. */
function frameOf(workbook: IWorkbookData): string {
  const { sheets, ...rest } = withoutSpilled(workbook);
  const frames = Object.entries(sheets).map(([id, { cellData: _cells, rowData: _rows, ...frame }]) => [id, frame]);
  return JSON.stringify([rest, frames]);
}

/** Cells that differ; null for those that are blank now. What formulas come to is worked out here as there. */
export function changedCells(was: Rows, now: Rows): Changed {
  const changed: Changed = {};
  for (const row of new Set([...Object.keys(was), ...Object.keys(now)].map(Number))) {
    const [before, after] = [was[row] ?? {}, now[row] ?? {}];
    for (const column of new Set([...Object.keys(before), ...Object.keys(after)].map(Number))) {
      if (said(before[column]) === said(after[column])) continue;
      (changed[row] ??= {})[column] = after[column] ?? null;
    }
  }
  return changed;
}

function said(cell: ICellData | undefined): string {
  if (!cell) return '';
  const { v, t, ...rest } = cell;
  return JSON.stringify(cell.f || cell.si ? rest : { ...rest, v, t });
}
