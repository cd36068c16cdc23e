import { itemAt } from '../core/item-at';
import { isOfTime } from '../exchange/xlsx/number-formats';
import type { SpilledTable } from './recompute-workbook';

/** A day in ms, and the day from which computers count in the spreadsheet's count. */
const DAY = 86_400_000;
const DAY_0 = 25_569;

/** Letters that a column takes at most. */
const WIDEST = 44;

/** A table as lines of text, its headings underlined, numbers to the right. */
export function terminalTable({ name, at, rows, formats }: SpilledTable): string {
  const shown = rows.map((row, line) => row.map((cell, column) => text(cell, line > 0 ? formats[column] : undefined)));
  const columns =
    shown[0]?.map((_, column) => column).filter((column) => shown.slice(1).some((row) => row[column] !== '')) ?? [];
  const widths = columns.map((column) => Math.min(WIDEST, Math.max(...shown.map((row) => length(row[column] ?? '')))));
  const figures = columns.map((column) => rows.slice(1).some((row) => typeof row[column] === 'number'));
  const lines = shown.map((row) =>
    columns
      .map((column, at) => fitted(row[column] ?? '', itemAt(widths, at), itemAt(figures, at)))
      .join('  ')
      .trimEnd(),
  );
  const rule = widths.map((width) => '─'.repeat(width)).join('──');
  return [`${name} (${at})`, lines[0] ?? '', rule, ...lines.slice(1)].join('\n');
}

function text(cell: string | number | boolean, format: string | undefined): string {
  if (typeof cell !== 'number') return String(cell).replace(/\s+/g, ' ').trim();
  if (format !== undefined && isOfTime(format)) return new Date((cell - DAY_0) * DAY).toISOString().slice(0, 10);
  const places = /^#?,?#*0(?:\.(0+))?/.exec(format ?? '')?.[1]?.length ?? (format === '0' ? 0 : undefined);
  return places === undefined ? String(Number(cell.toFixed(6))) : cell.toFixed(places);
}

function fitted(cell: string, width: number, figure: boolean): string {
  const cut = length(cell) > width ? `${[...cell].slice(0, width - 1).join('')}…` : cell;
  const room = ' '.repeat(width - length(cut));
  return figure ? room + cut : cut + room;
}

function length(text: string): number {
  return [...text].length;
}
