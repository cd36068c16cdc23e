import type { IWorkbookData } from '@univerjs/core';
import { snapshotVersion } from '../../host/grid/snapshot';
import { withTodaysFormulas } from '../../host/grid/todays-formulas';

/**
 * The workbook in what was saved, its formulas with today's names of functions; undefined where its version or its shape
 * is not ours.
 */
export function workbookIn(saved: unknown): IWorkbookData | undefined {
  if (!isRecord(saved) || saved['version'] !== snapshotVersion) return undefined;
  const workbook = saved['workbook'];
  if (!isRecord(workbook) || typeof workbook['id'] !== 'string' || typeof workbook['name'] !== 'string')
    return undefined;
  const { sheets, sheetOrder, styles } = workbook;
  if (!isRecord(sheets) || !isRecord(styles) || !Array.isArray(sheetOrder) || sheetOrder.length === 0) return undefined;
  const whole = sheetOrder.every((id) => typeof id === 'string' && isSheet(sheets[id]));
  return whole ? withTodaysFormulas(workbook as unknown as IWorkbookData) : undefined;
}

function isSheet(sheet: unknown): boolean {
  if (!isRecord(sheet) || typeof sheet['name'] !== 'string' || !isRecord(sheet['cellData'])) return false;
  return Object.values(sheet['cellData']).every((row) => isRecord(row) && Object.values(row).every(isRecord));
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
