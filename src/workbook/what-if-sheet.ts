import { figure, type Tried } from '../tables/what-if/steps';
import type { TriedCell } from '../tables/what-if/tried-cell';
import { headingHeight, widthFor } from './blocks';
import type { CellPlan, SheetPlan } from './workbook';

interface SheetColumn {
  readonly heading: string;
  readonly width: number;
  readonly format?: string;
  readonly cell: (one: Tried) => number | string | undefined;
}

/** What other numbers in a cell come to, as a sheet of plain values. @param money sign of the sheet's own money */
export function whatIfSheet(cell: TriedCell, tried: readonly Tried[], money: string): SheetPlan {
  const columns = columnsOf(cell, tried, money);
  const headings = columns.map(({ heading }) => heading);
  const now = cell.now === undefined ? 'blank' : figure(cell.now);
  const cells: CellPlan[] = [
    { row: 0, column: 0, role: 'title', value: 'What if' },
    {
      row: 1,
      column: 0,
      role: 'note',
      value: `${cell.name}, in ${cell.table}: what the run comes to with other numbers. Today it is ${now}. Values stay as they are here when the tables change.`,
    },
    ...columns.flatMap(({ heading, format, cell: of }, column): CellPlan[] => {
      const align = format === undefined ? 'left' : 'right';
      return [
        { row: 2, column, role: 'heading', align, value: heading },
        ...tried.map((one, i): CellPlan => {
          const value = of(one);
          return {
            row: 3 + i,
            column,
            role: 'result',
            align,
            ...(format !== undefined && { format }),
            ...(value !== undefined && { value }),
          };
        }),
      ];
    }),
  ];
  const widths = columns.map(({ heading, width }) => widthFor(heading, width));
  return {
    name: 'What if',
    kind: 'results',
    cells,
    tables: [],
    results: [],
    lists: [],
    widths,
    heights: { 0: 36, 2: headingHeight(headings, widths) },
    frozen: { rows: 3, columns: 1 },
  };
}

function columnsOf({ name, unit }: TriedCell, tried: readonly Tried[], money: string): readonly SheetColumn[] {
  const stocks = [...new Set(tried.flatMap(({ outcome }) => outcome?.bought.map(({ stock }) => stock) ?? []))];
  const paid = money || 'money';
  return [
    { heading: [name, unit].filter(Boolean).join('\n'), width: 130, format: 'General', cell: ({ value }) => value },
    { heading: 'Buy\nsheets', width: 70, format: '0', cell: ({ outcome }) => outcome?.sheets },
    { heading: `To pay\n${paid}`, width: 84, format: '0.00', cell: ({ outcome }) => outcome?.toPay },
    { heading: `Cost\n${paid}, the run`, width: 84, format: '0.00', cell: ({ outcome }) => outcome?.cost },
    { heading: 'Bench\nh', width: 70, format: '0.0', cell: ({ outcome }) => outcome?.hours },
    { heading: 'Weight\nkg, the run', width: 70, format: '0.0', cell: ({ outcome }) => outcome?.weight },
    { heading: 'Adhesive\nl, the run', width: 70, format: '0.00', cell: ({ outcome }) => outcome?.adhesive },
    { heading: 'To put right', width: 70, format: '0', cell: ({ outcome }) => outcome?.putRight },
    ...stocks.map((stock): SheetColumn => ({
      heading: `Buy ${stock}\nsheets`,
      width: 84,
      format: '0',
      cell: ({ outcome }) => outcome?.bought.find((one) => one.stock === stock)?.buy,
    })),
    { heading: 'Why not', width: 300, cell: ({ why }) => why },
  ];
}
