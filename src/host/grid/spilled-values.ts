import { ICommandService, type Injector, IResourceManagerService, UniverInstanceType } from '@univerjs/core';
import {
  FormulaDataModel,
  type ISetArrayFormulaDataMutationParams,
  SetArrayFormulaDataMutation,
} from '@univerjs/engine-formula';
import { type Spilled, spilledStore } from './spilled-resource';

/**
 * Keeps with a workbook what its tables spilled last, and shows it again before anything is worked out anew: of a table the
 * grid itself keeps but the cell with the formula.
 */
export function keepSpilledValues(injector: Injector): void {
  const commands = injector.get(ICommandService);
  const formulas = injector.get(FormulaDataModel);
  injector.get(IResourceManagerService).registerPluginResource<Spilled>({
    pluginName: spilledStore,
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
