import { type ICommandInfo, ICommandService, type Injector } from '@univerjs/core';
import {
  FormulaExecutedStateType,
  IFunctionService,
  type ISetArrayFormulaDataMutationParams,
  type ISetFormulaCalculationNotificationMutation,
  SetArrayFormulaDataMutation,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
} from '@univerjs/engine-formula';
import { IDescriptionService } from '@univerjs/sheets-formula';
import { Calculation } from './calculation';
import { GridFormulas } from './grid-formulas';
import { GridFunction } from './grid-function';
import { helpFor, offerWithoutNamespace } from './help';
import type { GridCell } from './messages';
import type { FunctionMetadata, Metadata } from './metadata';
import { takeSingleValues } from './single-value';
import { SpilledTables } from './spilled-tables';
import type { Implementation } from './stand-in';

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
  const formulas = new GridFormulas(injector);
  const calculation = new Calculation(formulas, failed);
  const workedOut: (() => void)[] = [];
  watch(injector, formulas, calculation, () => workedOut.splice(0).forEach((tell) => tell()));
  const functionOf = (each: FunctionMetadata) =>
    new GridFunction(`${namespace}.${each.name}`, each, implementationOf(each, implementations), calculation);
  injector.get(IFunctionService).registerExecutors(...metadata.functions.map(functionOf));
  takeSingleValues(injector);
  describe(injector, namespace, metadata);
  return {
    messageAt: (cell, code) => calculation.messages.at(cell, code),
    workOutAll: () => {
      formulas.workOutAll();
      return new Promise((resolve) => workedOut.push(resolve));
    },
    get running() {
      return calculation.waiting.running;
    },
  };
}

/** Follows the formula engine. @param workedOut is told after each calculation that came to its end */
function watch(injector: Injector, formulas: GridFormulas, calculation: Calculation, workedOut: () => void): void {
  const commands = injector.get(ICommandService);
  const tables = new SpilledTables(formulas);
  commands.beforeCommandExecuted(({ id }: Readonly<ICommandInfo>) => {
    if (id === SetFormulaCalculationStartMutation.id) calculation.begin();
  });
  commands.onCommandExecuted(({ id, params }: Readonly<ICommandInfo>) => {
    if (id === SetFormulaCalculationNotificationMutation.id) {
      const { functionsExecutedState } = params as ISetFormulaCalculationNotificationMutation;
      const stopped = functionsExecutedState === FormulaExecutedStateType.STOP_EXECUTION;
      if (functionsExecutedState === undefined || stopped) return;
      calculation.end();
      workedOut();
    } else if (id === SetArrayFormulaDataMutation.id) {
      // The formula engine does not work out again what reads cells that a shrunken table has left.
      const spilled = params as ISetArrayFormulaDataMutationParams;
      formulas.workOut([...tables.left(spilled), ...tables.grown(spilled)]);
    } else if (moves.test(id)) {
      calculation.formulasMoved();
    }
  });
}

function implementationOf(
  { id, options }: FunctionMetadata,
  implementations: ReadonlyMap<string, Implementation>,
): Implementation {
  const implementation = implementations.get(id.toUpperCase());
  if (!implementation) throw new Error(`functions.js lacks the function ${id} that functions.json names.`);
  if (options?.stream) throw new Error(`${id} streams its answers, which the grid cannot show.`);
  return implementation;
}

/** Offers the functions, with their help, while a formula is typed. */
function describe(injector: Injector, namespace: string, { functions, enums }: Metadata): void {
  const descriptions = injector.get(IDescriptionService);
  offerWithoutNamespace(descriptions, namespace);
  descriptions.registerDescriptions(
    functions.filter(({ options }) => !options?.excludeFromAutoComplete).map((each) => helpFor(namespace, each, enums)),
  );
}
