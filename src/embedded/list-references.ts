import type { Injector, IRange, Nullable, Workbook } from '@univerjs/core';
import { DisposableCollection, IUniverInstanceService, UniverInstanceType } from '@univerjs/core';
import {
  type IUpdateDataValidationMutationParams,
  UpdateDataValidationMutation,
  UpdateRuleType,
} from '@univerjs/data-validation';
import {
  deserializeRangeWithSheet,
  generateStringWithSequence,
  type ISequenceNode,
  LexerTreeBuilder,
  sequenceNodeType,
  serializeRange,
  serializeRangeWithSheet,
} from '@univerjs/engine-formula';
import {
  type EffectRefRangeParams,
  handleDefaultRangeChangeWithEffectRefCommands as moved,
  RefRangeService,
} from '@univerjs/sheets';
import { SheetDataValidationModel } from '@univerjs/sheets-data-validation';
import { FormulaRefRangeService } from '@univerjs/sheets-formula';

type Register = FormulaRefRangeService['registerFormula'];
type Changes = ReturnType<Parameters<Register>[3]>;

/**
 * Where rows or columns come or go, the grid leaves what a list refers to as large as it was and where it was, calls it
 * after its own id of the workbook, as if it stood in another file, and forgets that the list's cells may be blank. Here the
 * list follows its cells and stays as it is otherwise.
 */
export function letListsFollow(): void {
  const service = FormulaRefRangeService.prototype;
  if (typeof service.registerFormula !== 'function') throw new Error('The grid moves lists otherwise than it did.');
  service.registerFormula = function (...[unitId, subUnitId, formula, callback]) {
    const injector = (this as unknown as { readonly _injector: Injector })._injector;
    const references = new References(injector, unitId, subUnitId, formula);
    return references.watch((changed) => whole(injector, callback(changed)));
  };
}

/** A formula's references, each with the sheet that it leads to. */
class References {
  private readonly nodes: readonly (string | ISequenceNode)[];
  private readonly workbook: Nullable<Workbook>;

  constructor(
    private readonly injector: Injector,
    private readonly unitId: string,
    private readonly subUnitId: string,
    formula: string,
  ) {
    this.nodes = injector.get(LexerTreeBuilder).sequenceNodesBuilder(formula) ?? [];
    this.workbook = injector.get(IUniverInstanceService).getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
  }

  watch(changed: (formula: string) => Changes): DisposableCollection {
    const watched = new DisposableCollection();
    const ranges = this.injector.get(RefRangeService);
    for (const node of this.nodes) {
      const place = this.place(node);
      if (!place) continue;
      const tell = (command: EffectRefRangeParams) => changed(this.after(command));
      watched.add(ranges.registerRefRange(place.range, tell, this.unitId, place.sheetId));
    }
    return watched;
  }

  private after(command: EffectRefRangeParams): string {
    const params = command.params as { readonly subUnitId?: string; readonly fromSubUnitId?: string } | undefined;
    const sheetId = params?.subUnitId ?? params?.fromSubUnitId ?? this.workbook?.getActiveSheet()?.getSheetId();
    const nodes = this.nodes.map((node) => {
      const place = this.place(node);
      if (typeof node === 'string' || !place || place.sheetId !== sheetId) return node;
      const range = moved(place.range, command);
      return { ...node, token: range ? reference(place.sheetName, { ...place.range, ...range }) : '#REF!' };
    });
    return `=${generateStringWithSequence(nodes)}`;
  }

  private place(node: string | ISequenceNode) {
    if (typeof node === 'string' || node.nodeType !== sequenceNodeType.REFERENCE) return undefined;
    const { range, sheetName, unitId } = deserializeRangeWithSheet(node.token);
    if (unitId && unitId !== this.unitId) return undefined;
    const sheetId = sheetName ? this.workbook?.getSheetBySheetName(sheetName)?.getSheetId() : this.subUnitId;
    return sheetId === undefined ? undefined : { range, sheetName, sheetId };
  }
}

function reference(sheetName: string, range: IRange): string {
  return sheetName ? serializeRangeWithSheet(sheetName, range) : serializeRange(range);
}

/** Changes of a rule with all of it that the grid leaves out and would thereby take away. */
function whole(injector: Injector, { redos, undos }: Changes): Changes {
  const rules = injector.get(SheetDataValidationModel);
  const completed = (mutations: Changes['redos']) =>
    mutations.map((mutation) => {
      if (mutation.id !== UpdateDataValidationMutation.id) return mutation;
      const params = mutation.params as IUpdateDataValidationMutationParams;
      const rule = rules.getRuleById(params.unitId, params.subUnitId, params.ruleId);
      if (params.payload.type !== UpdateRuleType.SETTING || !rule) return mutation;
      const { operator, allowBlank } = rule;
      const payload = { ...params.payload, payload: { operator, allowBlank, ...params.payload.payload } };
      return { ...mutation, params: { ...params, payload } };
    });
  return { redos: completed(redos), undos: completed(undos) };
}
