import type { PaperFormat } from './page';

/** A sheet of labels as the maker has it: mm. */
export interface LabelGrid {
  readonly columns: number;
  readonly rows: number;
  readonly width: number;
  readonly height: number;
  /** Of the first label from the sheet's left and upper edge. */
  readonly left: number;
  readonly top: number;
  readonly gapX: number;
  readonly gapY: number;
  /** The first label that is still on the sheet, from 1. */
  readonly first: number;
  /** Whether the edges of the labels are drawn: on plain paper, which is cut. */
  readonly edges: boolean;
}

/** Three by eight on plain paper, to be cut. */
export function usualGrid({ width, height }: PaperFormat): LabelGrid {
  const [columns, rows] = [3, 8];
  return {
    columns,
    rows,
    width: (width - 14) / columns,
    height: (height - 20) / rows,
    left: 7,
    top: 10,
    gapX: 0,
    gapY: 0,
    first: 1,
    edges: true,
  };
}

/** What is wrong with a grid, in a sentence; undefined where it can be printed. */
export function gridFault(grid: LabelGrid, paper: PaperFormat): string | undefined {
  const { columns, rows, width, height, left, top, gapX, gapY, first } = grid;
  const all = [columns, rows, width, height, left, top, gapX, gapY, first];
  if (!all.every(Number.isFinite)) return 'Give every measure of the labels as a number.';
  if (![columns, rows, first].every(Number.isInteger) || Math.min(columns, rows, first) < 1)
    return 'Columns, rows and the first free label are whole numbers from 1.';
  if (Math.min(width, height) < 12) return 'A label is at least 12 mm wide and high.';
  if (Math.min(left, top, gapX, gapY) < 0) return 'Margins and gaps are 0 or more.';
  const across = left + columns * width + (columns - 1) * gapX;
  const down = top + rows * height + (rows - 1) * gapY;
  if (across > paper.width + 0.05 || down > paper.height + 0.05)
    return `The labels take ${Math.round(across)} × ${Math.round(down)} mm and ${paper.name} has ${paper.width} × ${paper.height}; give fewer or smaller ones.`;
  if (first > columns * rows) return `The sheet has ${columns * rows} labels; the first free one is one of them.`;
  return undefined;
}
