import {
  ICommandService,
  type Injector,
  IResourceManagerService,
  type IWorkbookData,
  UniverInstanceType,
} from '@univerjs/core';
import {
  FormulaDataModel,
  type ISetArrayFormulaDataMutationParams,
  SetArrayFormulaDataMutation,
} from '@univerjs/engine-formula';

/** What the grid calls the store of it. */
const resource = 'SHEET_SOLEBENCH_SPILLED_PLUGIN';

/** What the tables of one workbook spill: over which cells, and what stands in them. */
export interface Spilled {
  readonly ranges?: ISetArrayFormulaDataMutationParams['arrayFormulaRange'][string];
  readonly cells?: ISetArrayFormulaDataMutationParams['arrayFormulaCellData'][string];
}

/** What the tables of a workbook had spilled when its snapshot was taken. */
export function spilledIn({ resources }: IWorkbookData): Spilled {
  const data = resources?.find(({ name }) => name === resource)?.data;
  return data ? (JSON.parse(data) as Spilled) : {};
}

/** What tables spill, as a snapshot keeps it. */
export function spilledResource(spilled: Spilled): { readonly name: string; readonly data: string } {
  return { name: resource, data: JSON.stringify(spilled) };
}

/**
 * Keeps with a workbook what its tables spilled last, and shows it again before anything is worked out anew: of a table the
 * grid itself keeps but the cell with the formula.
 */
export function keepSpilledValues(injector: Injector): void {
  const commands = injector.get(ICommandService);
  const formulas = injector.get(FormulaDataModel);
  injector.get(IResourceManagerService).registerPluginResource<Spilled>({
    pluginName: resource,
    businesses: [UniverInstanceType.UNIVER_SHEET],
    toJson: (unitId) =>
      JSON.stringify({
        ranges: formulas.getArrayFormulaRange()[unitId],
        cells: formulas.getArrayFormulaCellData()[unitId],
      } satisfies Spilled),
    parseJson: (json) => JSON.parse(json) as Spilled,
    onLoad: (unitId, { ranges, cells }) => {
      const data: ISetArrayFormulaDataMutationParams = {
        arrayFormulaRange: { ...formulas.getArrayFormulaRange(), [unitId]: ranges },
        arrayFormulaCellData: { ...formulas.getArrayFormulaCellData(), [unitId]: cells },
        arrayFormulaEmbedded: {},
      };
      commands.syncExecuteCommand(SetArrayFormulaDataMutation.id, data, { onlyLocal: true });
    },
    onUnLoad: () => undefined,
  });
}
