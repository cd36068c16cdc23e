import { line, type Marks, rectangle, text } from '../mark';
import { gap } from './blocks';
import type { Block } from './flow';
import { wrapped } from './wrapped';

export interface PaperColumn {
  readonly head: string;
  /** Share of the width. */
  readonly share: number;
  readonly align?: 'left' | 'right' | 'middle' | undefined;
  /** A box to tick instead of words. */
  readonly tick?: boolean | undefined;
}

/** A column of words, of figures and of boxes to tick. @param share of the width */
export const wordsIn = (head: string, share: number): PaperColumn => ({ head, share });
export const figuresIn = (head: string, share: number): PaperColumn => ({ head, share, align: 'right' });
export const ticksIn = (head: string, share: number): PaperColumn => ({ head, share, align: 'middle', tick: true });

const SIZE = 2.8;
const PAD = 0.9;

/** A table: its headings, which stand again on each page, and its rows; a sum row is semibold between rules. */
export function tableBlocks(
  columns: readonly PaperColumn[],
  rows: readonly (readonly string[])[],
  width: number,
  { sum = false, size = SIZE }: { readonly sum?: boolean; readonly size?: number } = {},
): readonly Block[] {
  const shares = columns.reduce((all, { share }) => all + share, 0);
  const widths = columns.map(({ share }) => (width * share) / shares);
  const lefts = widths.map((_, i) => widths.slice(0, i).reduce((all, one) => all + one, 0));
  const rowOf = (cells: readonly string[], kind: 'head' | 'row' | 'sum'): Block => {
    const bold = kind !== 'row';
    const lines = columns.map((column, i) =>
      column.tick && kind === 'row' ? [] : wrapped(cells[i] ?? '', (widths[i] ?? 0) - 2 * PAD, size, bold),
    );
    const step = size * 1.25;
    const height = Math.max(1, ...lines.map(({ length }) => length)) * step + 1.5;
    return {
      height,
      heads: kind === 'head',
      keep: kind === 'head' ? 8 : 0,
      draw: (x, y) => [
        ...(kind === 'head' ? [line('wide', x, y, x + width, y)] : []),
        ...(kind === 'sum' ? [line('narrow', x, y, x + width, y)] : []),
        ...columns.flatMap(({ align = 'left', tick }, i): Marks => {
          const from = x + (lefts[i] ?? 0);
          const wide = widths[i] ?? 0;
          if (tick && kind === 'row') return [rectangle(from + wide / 2 - 1.5, y + 0.9, 3, 3, { pen: 'narrow' })];
          const at = align === 'left' ? from + PAD : align === 'right' ? from + wide - PAD : from + wide / 2;
          const anchor = align === 'left' ? 'start' : align === 'right' ? 'end' : 'middle';
          return (lines[i] ?? []).map((one, k) =>
            text(at, y + 0.6 + size + k * step, one, bold ? 'bold' : 'plain', anchor, { size }),
          );
        }),
        line(kind === 'sum' ? 'wide' : 'narrow', x, y + height, x + width, y + height),
      ],
    };
  };
  return [
    rowOf(
      columns.map(({ head }) => head),
      'head',
    ),
    ...rows.map((cells, i) => rowOf(cells, sum && i === rows.length - 1 ? 'sum' : 'row')),
    { ...gap(0), heads: 'no more' },
  ];
}
