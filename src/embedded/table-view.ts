import {
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
  type Worksheet,
} from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import { columnLetters } from '../tables/cell-address';
import type { GridHost } from '../host/grid/grid-host';
import { SheetCells } from '../host/grid/sheet-cells';

/** A sheet larger than this is shown up to here, and the view says so. */
const most = { rows: 1000, columns: 60 } as const;

/** Shows the sheet at hand as a table that a reader of the screen can walk through, for the grid is a picture. */
export function offerTableView(
  injector: Injector,
  host: GridHost,
  button: HTMLElement,
  dialog: HTMLDialogElement,
): void {
  button.addEventListener('click', () => {
    const workbook = injector
      .get(IUniverInstanceService)
      .getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
    const sheet = workbook?.getActiveSheet(true);
    if (!sheet) return;
    dialog.replaceChildren(...content(sheet, new SheetCells(sheet, injector.get(FormulaDataModel)), host, dialog));
    dialog.showModal();
  });
  dialog.addEventListener('close', () => button.focus());
}

function content(sheet: Worksheet, cells: SheetCells, host: GridHost, dialog: HTMLDialogElement): Node[] {
  const head = document.createElement('header');
  const name = document.createElement('h2');
  name.id = 'readable-name';
  name.textContent = sheet.getName();
  const close = document.createElement('button');
  close.type = 'button';
  close.textContent = 'Close';
  close.addEventListener('click', () => dialog.close());
  head.append(name, close);

  const { rows, columns } = filled(sheet, cells);
  const table = document.createElement('table');
  const letters = table.createTHead().insertRow();
  letters.append(
    document.createElement('td'),
    ...Array.from({ length: columns }, (_, at) => headCell(columnLetters(at), 'col')),
  );
  const body = table.createTBody();
  for (let row = 0; row < rows; row++) {
    const line = body.insertRow();
    line.append(headCell(String(row + 1), 'row'));
    for (let column = 0; column < columns; column++) {
      const cell = line.insertCell();
      cell.textContent = [cells.text(row, column), host.problemAt(sheet, row, column)].filter(Boolean).join(': ');
      if (typeof cells.value(row, column) === 'number') cell.className = 'number';
    }
  }
  const nodes: Node[] = [head, table];
  if (rows === most.rows || columns === most.columns) {
    const cut = document.createElement('p');
    cut.textContent = `Shown are the first ${most.rows} rows and ${most.columns} columns.`;
    head.append(cut);
  }
  return nodes;
}

function headCell(text: string, scope: 'row' | 'col'): HTMLTableCellElement {
  const cell = document.createElement('th');
  cell.scope = scope;
  cell.textContent = text;
  return cell;
}

/** How many rows and columns reach from the first cell to the last that shows something. */
function filled(sheet: Worksheet, cells: SheetCells): { rows: number; columns: number } {
  let [rows, columns] = [1, 1];
  for (let row = 0; row < Math.min(most.rows, sheet.getRowCount()); row++) {
    for (let column = 0; column < Math.min(most.columns, sheet.getColumnCount()); column++) {
      if (cells.value(row, column) === null) continue;
      rows = Math.max(rows, row + 1);
      columns = Math.max(columns, column + 1);
    }
  }
  return { rows, columns };
}
