import type { IWorkbookData } from '@univerjs/core';
import type { ISetArrayFormulaDataMutationParams } from '@univerjs/engine-formula';

/** What the grid calls the store of it. */
export const spilledStore = 'SHEET_SOLEBENCH_SPILLED_PLUGIN';

/** What the tables of one workbook spill: over which cells, and what stands in them. */
export interface Spilled {
  readonly ranges?: ISetArrayFormulaDataMutationParams['arrayFormulaRange'][string];
  readonly cells?: ISetArrayFormulaDataMutationParams['arrayFormulaCellData'][string];
}

/** What the tables of a workbook had spilled when its snapshot was taken. */
export function spilledIn({ resources }: IWorkbookData): Spilled {
  const data = resources?.find(({ name }) => name === spilledStore)?.data;
  return data ? (JSON.parse(data) as Spilled) : {};
}

/** What tables spill, as a snapshot keeps it. */
export function spilledResource(spilled: Spilled): { readonly name: string; readonly data: string } {
  return { name: spilledStore, data: JSON.stringify(spilled) };
}

/** A workbook's snapshot without what its tables spilled. */
export function withoutSpilled(workbook: IWorkbookData): IWorkbookData {
  const { resources } = workbook;
  return resources ? { ...workbook, resources: resources.filter(({ name }) => name !== spilledStore) } : workbook;
}
