import {
  ICommandService,
  type Injector,
  type IUnitRange,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
  type Worksheet,
} from '@univerjs/core';
import { ErrorType, SetTriggerFormulaCalculationStartMutation } from '@univerjs/engine-formula';
import { SetWorksheetColumnCountMutation, SetWorksheetRowCountMutation } from '@univerjs/sheets';
import { cellAddress } from '../../tables/cell-address';
import { sheetInFormula } from '../../workbook/address';
import type { GridCell } from './messages';
import type { SheetSize } from './room-for-tables';

const errors: ReadonlySet<unknown> = new Set(Object.values(ErrorType));

/** The formulas that stand in the grid's workbooks: where they are, and having them worked out. */
export class GridFormulas {
  private readonly commands: ICommandService;
  private readonly workbooks: IUniverInstanceService;

  constructor(injector: Injector) {
    this.commands = injector.get(ICommandService);
    this.workbooks = injector.get(IUniverInstanceService);
  }

  /** The sheet that a cell is on, as long as it is there. */
  sheet({ unitId, sheetId }: Pick<GridCell, 'unitId' | 'sheetId'>): Worksheet | undefined {
    const workbook = this.workbooks.getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
    return workbook?.getSheetBySheetId(sheetId) ?? undefined;
  }

  /** How far a cell's sheet reaches, as long as it is there. */
  size(of: Pick<GridCell, 'unitId' | 'sheetId'>): SheetSize | undefined {
    const sheet = this.sheet(of);
    return sheet && { rows: sheet.getRowCount(), columns: sheet.getColumnCount() };
  }

  /** Gives a cell's sheet another size. It is no change of the maker's: undo passes over it. */
  enlarge({ unitId, sheetId }: Pick<GridCell, 'unitId' | 'sheetId'>, { rows, columns }: SheetSize): void {
    const sheet = { unitId, subUnitId: sheetId };
    this.commands.syncExecuteCommand(SetWorksheetRowCountMutation.id, { ...sheet, rowCount: rows });
    this.commands.syncExecuteCommand(SetWorksheetColumnCountMutation.id, { ...sheet, columnCount: columns });
  }

  /** Text of a cell's formula. */
  at(cell: GridCell): string | undefined {
    const raw = this.sheet(cell)?.getCellRaw(cell.row, cell.column);
    return raw?.f ?? raw?.si ?? undefined;
  }

  /** Address of a cell with its sheet. */
  address(cell: GridCell): string {
    return `${sheetInFormula(this.sheet(cell)?.getName() ?? '')}!${cellAddress(cell.row, cell.column)}`;
  }

  /** Cells with a formula that show an error. */
  failing(): IUnitRange[] {
    const found: IUnitRange[] = [];
    for (const workbook of this.workbooks.getAllUnitsForType<Workbook>(UniverInstanceType.UNIVER_SHEET)) {
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

  /** Works out anew what stands in cells or reads them. */
  workOut(dirtyRanges: readonly IUnitRange[]): void {
    if (dirtyRanges.length > 0) this.trigger({ dirtyRanges, forceCalculation: false });
  }

  /** Works out every formula, whatever was saved of it. */
  workOutAll(): void {
    this.trigger({ dirtyRanges: [], forceCalculation: true });
  }

  private trigger(what: { readonly dirtyRanges: readonly IUnitRange[]; readonly forceCalculation: boolean }): void {
    const data = {
      ...what,
      dirtyNameMap: {},
      dirtyDefinedNameMap: {},
      dirtyUnitFeatureMap: {},
      dirtyUnitOtherFormulaMap: {},
      clearDependencyTreeCache: {},
    };
    this.commands.syncExecuteCommand(SetTriggerFormulaCalculationStartMutation.id, data, { onlyLocal: true });
  }
}

/** A cell as the range that it is. */
export function rangeOf({ unitId, sheetId, row, column }: GridCell): IUnitRange {
  return { unitId, sheetId, range: { startRow: row, endRow: row, startColumn: column, endColumn: column } };
}
