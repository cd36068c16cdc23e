import {
  type Injector,
  IResourceLoaderService,
  IUniverInstanceService,
  type IWorkbookData,
  UniverInstanceType,
  type Workbook,
} from '@univerjs/core';

/** The workbook as the grid would open it again. */
export function wholeWorkbook(injector: Injector): IWorkbookData {
  const workbook = injector.get(IUniverInstanceService).getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
  if (!workbook) throw new Error('The grid has no workbook.');
  return injector.get(IResourceLoaderService).saveUnit(workbook.getUnitId()) as IWorkbookData;
}
