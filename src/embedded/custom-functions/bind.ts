import {
  type ICommandInfo,
  ICommandService,
  type Injector,
  type IUnitRange,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
} from '@univerjs/core';
import {
  ErrorType,
  FormulaExecutedStateType,
  IFunctionService,
  type ISetArrayFormulaDataMutationParams,
  type ISetFormulaCalculationNotificationMutation,
  SetArrayFormulaDataMutation,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
  SetTriggerFormulaCalculationStartMutation,
} from '@univerjs/engine-formula';
import { IDescriptionService } from '@univerjs/sheets-formula';
import { cellAddress, sheetInFormula } from '../../host/address';
import { type FormulaSite, GridFunction } from './grid-function';
import { helpFor, offerWithoutNamespace } from './help';
import { cellKey, type GridCell, Messages } from './messages';
import type { Metadata } from './metadata';
import type { Answer } from './result';
import type { Implementation } from './stand-in';
import { type CellRange, vacated } from './vacated';
import { WaitingCalls } from './waiting-calls';

/** What the page may ask about the custom functions at work in the grid. */
export interface BoundFunctions {
  /** Why a cell that shows an error's code does so, where a custom function said it. */
  messageAt(cell: GridCell, code: string): string | undefined;
  /** Works out every formula, whatever was saved of it. The grid must be on the page. */
  workOutAll(): Promise<void>;
  /** How many calls have not answered yet. */
  readonly running: number;
}

/** Changes after which formulas stand in other cells than before. */
const moves = /^sheet\.mutation\.(insert|remove|delete|move|reorder)-(?!worksheet-merge)/;

const errors: ReadonlySet<unknown> = new Set(Object.values(ErrorType));

/**
 * Makes the bundle's functions functions of the grid, with their help, and keeps up what the formula engine leaves to
 * them: errors with sentences, answers that take their time, and cells that a shrinking table has left.
 * @param namespace stands before each name, with a dot
 * @param implementations by id in capitals
 * @param failed is told where the grid could not be given an answer that came late
 * @throws Error where the metadata names a function that the bundle did not associate, or one that streams
 */
export function bindFunctions(
  injector: Injector,
  namespace: string,
  metadata: Metadata,
  implementations: ReadonlyMap<string, Implementation>,
  failed: (error: unknown) => void,
): BoundFunctions {
  const commands = injector.get(ICommandService);
  const workbooks = injector.get(IUniverInstanceService);
  const workbook = (id: string) => workbooks.getUnit<Workbook>(id, UniverInstanceType.UNIVER_SHEET);
  const sheet = (cell: GridCell) => workbook(cell.unitId)?.getSheetBySheetId(cell.sheetId);
  const formulaAt = (cell: GridCell): string | undefined => {
    const raw = sheet(cell)?.getCellRaw(cell.row, cell.column);
    return raw?.f ?? raw?.si ?? undefined;
  };

  const workOut = (ranges: readonly IUnitRange[]): void => {
    if (ranges.length === 0) return;
    commands.syncExecuteCommand(SetTriggerFormulaCalculationStartMutation.id, dirtyData(ranges), { onlyLocal: true });
  };

  const messages = new Messages();
  const waiting = new WaitingCalls<Answer>((sites) => workOut((sites as FormulaSite[]).map(rangeOf)), failed);
  const calculated = new Set<string>();
  const calling = {
    messages,
    waiting,
    calculating: (cell: GridCell) => void calculated.add(cellKey(cell)),
    formulaAt,
    addressOf: (cell: GridCell) =>
      `${sheetInFormula(sheet(cell)?.getName() ?? '')}!${cellAddress(cell.row, cell.column)}`,
  };

  const gone = (site: FormulaSite) => formulaAt(site) === undefined || formulaAt(site) !== site.formula;
  /** Whether formulas have moved since the round began, so that those that wait have not asked again yet. */
  let moved = false;
  const beginRound = () => {
    moved = false;
    messages.beginRound();
    waiting.beginRound();
    calculated.clear();
  };
  const endRound = () =>
    waiting.endRound(
      (site) => calculated.has(site.key),
      (site) => !moved && gone(site as FormulaSite),
    );

  let spills: ReadonlyMap<string, CellRange> = new Map();
  let spillSheets: ReadonlyMap<string, GridCell> = new Map();
  const spillsChanged = ({ arrayFormulaRange }: ISetArrayFormulaDataMutationParams) => {
    const now = new Map<string, CellRange>();
    const cells = new Map<string, GridCell>();
    for (const [unitId, sheets] of Object.entries(arrayFormulaRange ?? {})) {
      for (const [sheetId, rows] of Object.entries(sheets ?? {})) {
        for (const [row, columns] of Object.entries(rows ?? {})) {
          for (const [column, { startRow, startColumn, endRow, endColumn }] of Object.entries(
            columns as Record<string, CellRange>,
          )) {
            const cell = { unitId, sheetId, row: Number(row), column: Number(column) };
            cells.set(cellKey(cell), cell);
            now.set(cellKey(cell), { startRow, startColumn, endRow, endColumn });
          }
        }
      }
    }
    // The formula engine does not work out again what reads cells that a shrunken table has left.
    const left = vacated(spills, now).flatMap(({ key, range }) => {
      const { unitId, sheetId } = spillSheets.get(key) as GridCell;
      return workbook(unitId)?.getSheetBySheetId(sheetId) ? [{ unitId, sheetId, range }] : [];
    });
    spills = now;
    spillSheets = cells;
    workOut(left);
  };

  /** Sentences and waiting calls belong to cells; where formulas move, those that fail or wait are worked out again. */
  const formulasMoved = () => {
    if (messages.size === 0 && waiting.running === 0) return;
    moved = true;
    messages.clear();
    workOut(failing(workbooks.getAllUnitsForType<Workbook>(UniverInstanceType.UNIVER_SHEET)));
  };

  const workedOut: (() => void)[] = [];
  commands.beforeCommandExecuted(({ id }: Readonly<ICommandInfo>) => {
    if (id === SetFormulaCalculationStartMutation.id) beginRound();
  });
  commands.onCommandExecuted(({ id, params }: Readonly<ICommandInfo>) => {
    if (id === SetFormulaCalculationNotificationMutation.id) {
      const { functionsExecutedState } = params as ISetFormulaCalculationNotificationMutation;
      const stopped = functionsExecutedState === FormulaExecutedStateType.STOP_EXECUTION;
      if (functionsExecutedState === undefined || stopped) return;
      endRound();
      workedOut.splice(0).forEach((tell) => tell());
    } else if (id === SetArrayFormulaDataMutation.id) {
      spillsChanged(params as ISetArrayFormulaDataMutationParams);
    } else if (moves.test(id)) {
      formulasMoved();
    }
  });

  injector.get(IFunctionService).registerExecutors(
    ...metadata.functions.map((each) => {
      const implementation = implementations.get(each.id.toUpperCase());
      if (!implementation) throw new Error(`functions.js lacks the function ${each.id} that functions.json names.`);
      if (each.options?.stream) throw new Error(`${each.id} streams its answers, which the grid cannot show.`);
      return new GridFunction(`${namespace}.${each.name}`, each, implementation, calling);
    }),
  );
  const descriptions = injector.get(IDescriptionService);
  offerWithoutNamespace(descriptions, namespace);
  descriptions.registerDescriptions(
    metadata.functions
      .filter(({ options }) => !options?.excludeFromAutoComplete)
      .map((each) => helpFor(namespace, each, metadata.enums)),
  );

  return {
    messageAt: (cell, code) => messages.at(cell, code),
    workOutAll: () => {
      const all = { ...dirtyData([]), forceCalculation: true };
      commands.syncExecuteCommand(SetTriggerFormulaCalculationStartMutation.id, all, { onlyLocal: true });
      return new Promise((resolve) => workedOut.push(resolve));
    },
    get running() {
      return waiting.running;
    },
  };
}

function rangeOf({ unitId, sheetId, row, column }: GridCell): IUnitRange {
  return { unitId, sheetId, range: { startRow: row, endRow: row, startColumn: column, endColumn: column } };
}

/** Cells with a formula that show an error. */
function failing(workbooks: readonly Workbook[]): IUnitRange[] {
  const found: IUnitRange[] = [];
  for (const workbook of workbooks) {
    for (const worksheet of workbook.getSheets()) {
      worksheet.getCellMatrix().forValue((row, column, cell) => {
        if ((cell?.f || cell?.si) && errors.has(cell.v)) {
          found.push(rangeOf({ unitId: workbook.getUnitId(), sheetId: worksheet.getSheetId(), row, column }));
        }
      });
    }
  }
  return found;
}

function dirtyData(dirtyRanges: readonly IUnitRange[]) {
  return {
    dirtyRanges,
    forceCalculation: false,
    dirtyNameMap: {},
    dirtyDefinedNameMap: {},
    dirtyUnitFeatureMap: {},
    dirtyUnitOtherFormulaMap: {},
    clearDependencyTreeCache: {},
  };
}
