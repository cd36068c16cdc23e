import {
  ICommandService,
  IResourceLoaderService,
  IUniverInstanceService,
  type IWorkbookData,
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
  type Workbook,
} from '@univerjs/core';
import { UniverDataValidationPlugin } from '@univerjs/data-validation';
import { UniverFormulaEnginePlugin } from '@univerjs/engine-formula';
import { UniverSheetsPlugin } from '@univerjs/sheets';
import { UniverSheetsDataValidationPlugin } from '@univerjs/sheets-data-validation';
import { CalculationMode, UniverSheetsFormulaPlugin } from '@univerjs/sheets-formula';
import { bindFunctions } from '../embedded/custom-functions/bind';
import { GridHost } from '../host/grid/grid-host';
import { noteRowsAtOnce } from '../host/grid/row-index';
import { Settled } from '../host/grid/settled';
import { keepSpilledValues } from '../host/grid/spilled-values';
import { problemOf } from '../host/problems';
import type { FunctionsBundle } from './functions-bundle';

/** Stands before the functions' names. */
const NAMESPACE = 'SOLEBENCH';

/** A workbook that was worked out, and why its cells show errors. */
export interface WorkedOut {
  readonly workbook: IWorkbookData;
  /** @param sheet by its place, from 0 */
  problemAt(sheet: number, row: number, column: number, code: string): string | undefined;
}

/** Something done with a workbook while it is in the grid. @returns whether it changed any cell */
export type InGrid = (host: GridHost) => Promise<boolean>;

/**
 * Works a workbook out with the page's own grid, without a page.
 * @param then what is to be done with it once it is worked out; where that changes it, it is worked out once more
 * @throws what a function's answer could not be put into the grid for
 */
export async function workOut(
  data: IWorkbookData,
  { metadata, associated }: FunctionsBundle,
  then?: InGrid,
): Promise<WorkedOut> {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.SILENT,
  });
  try {
    noteRowsAtOnce();
    univer.registerPlugin(UniverFormulaEnginePlugin);
    univer.registerPlugin(UniverSheetsPlugin);
    univer.registerPlugin(UniverSheetsFormulaPlugin, {
      initialFormulaComputing: CalculationMode.NO_CALCULATION,
    });
    // Drop-down lists stay, and move with rows that are put in.
    univer.registerPlugin(UniverDataValidationPlugin);
    univer.registerPlugin(UniverSheetsDataValidationPlugin);
    const injector = univer.__getInjector();
    univer.createUnit(UniverInstanceType.UNIVER_SHEET, data);
    keepSpilledValues(injector);
    const failures: unknown[] = [];
    const functions = bindFunctions(injector, NAMESPACE, metadata, associated, (error) => failures.push(error));
    const settled = new Settled(injector.get(ICommandService), () => functions.running);
    const work = async () => {
      await functions.workOutAll();
      await settled.wait();
      if (failures.length > 0) throw failures[0];
    };
    await work();
    const messageAt: ConstructorParameters<typeof GridHost>[1] = (cell, code) => functions.messageAt(cell, code);
    if (then && (await then(new GridHost(injector, messageAt)))) {
      await settled.wait();
      await work();
    }
    const unit = injector.get(IUniverInstanceService).getUnit<Workbook>(data.id, UniverInstanceType.UNIVER_SHEET);
    if (!unit) throw new Error('The grid has lost the workbook.');
    const workbook = structuredClone(injector.get(IResourceLoaderService).saveUnit(data.id)) as IWorkbookData;
    return {
      workbook,
      problemAt: (sheet, row, column, code) =>
        messageAt({ unitId: data.id, sheetId: data.sheetOrder[sheet] ?? '', row, column }, code) ?? problemOf(code),
    };
  } finally {
    univer.dispose();
  }
}
