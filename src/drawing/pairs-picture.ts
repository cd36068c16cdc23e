import type { Runs } from '../core/plan/runs';
import { type AreaMark, group, line, type Mark, type Marks, rectangle, text } from './mark';
import type { Picture, PictureItem } from './svg';

export interface PairsPictureInput {
  readonly runs: Runs['styles'];
  /** The style and size that the pane shows. */
  readonly shown?: { readonly style: string; readonly size: number } | undefined;
}

const NAME = 21;
const SUM = 9;
/** Least width of a size's column, and of a character of its figure, u. */
const COLUMN = 6;
const CHARACTER = 2.1;
/** Between the sizes of one system and of the next, in columns. */
const APART = 0.8;
const MARK = 1.1;
const MARK_STEP = 1.6;
/** More pairs than this are drawn as a bar with ticks at tens. */
const MOST_MARKS = 12;

/** Pairs of each style by size on a common scale: one mark a pair, the figure above it, a dash for none. */
export function pairsPicture({ runs, shown }: PairsPictureInput, width: number): Picture {
  const columns = columnsOf(runs);
  const systems = [...new Set(columns.map(({ system }) => system))];
  const across = Math.max(1, columns.length + APART * (systems.length - 1));
  const least = Math.max(COLUMN, ...columns.map(({ size }) => CHARACTER * String(size).length + 1));
  const own = Math.max(width, NAME + SUM + least * across);
  const step = (own - NAME - SUM) / across;
  const middles = columns.map(({ system }, c) => NAME + step * (c + 0.5 + APART * systems.indexOf(system)));
  const middlesOf = (of: string) => middles.filter((_, c) => columns[c]?.system === of);
  const most = Math.max(1, ...runs.flatMap(({ sizes }) => sizes.map(({ pairs }) => pairs)));
  const scale: PairsScale = {
    single: most <= MOST_MARKS,
    heightOf: (pairs) => (most <= MOST_MARKS ? pairs * MARK_STEP : (20 * pairs) / most),
    wide: Math.min(5, step - 1),
  };
  const parts: Mark[] = [];
  const items: PictureItem[] = [];
  let base = 0;
  for (const { style, sizes, pairs: sum } of runs) {
    const row = scale.heightOf(Math.max(...sizes.map(({ pairs }) => pairs))) + 6.2;
    base += row;
    parts.push(text(0, base - 0.6, fitted(style.code), 'plain', 'start'), text(own, base - 0.6, sum, 'bold', 'end'));
    parts.push(line('narrow', NAME - 2, base, own - SUM, base));
    columns.forEach(({ system, size }, c) => {
      const x = middles[c] ?? 0;
      const pairs = sizes.find((one) => one.size === size && one.system === system)?.pairs ?? 0;
      if (pairs === 0) {
        parts.push(text(x, base - 1, '–', 'quiet'));
        return;
      }
      const id = `${style.code} ${system} ${size}`;
      items.push({ id, label: `${style.code}, ${system} ${size}: ${pairs} ${pairs === 1 ? 'pair' : 'pairs'}` });
      const on = shown?.style === style.code && shown.size === size;
      parts.push(...columnOfPairs(scale, { x, base, row, pairs, item: id, on }));
    });
  }
  const foot = base + 5.2;
  // One system is named before its sizes; of several, each once below its own.
  const below = systems.length > 1 ? 4.2 : 0;
  if (below === 0) parts.push(text(0, foot, systems[0] ?? '', 'quiet', 'start'));
  columns.forEach(({ size }, c) => parts.push(text(middles[c] ?? 0, foot, size, 'quiet')));
  if (below > 0) for (const system of systems) parts.push(...bracket(system, middlesOf(system), foot));
  parts.push(text(own, foot, 'pairs', 'quiet', 'end'));
  return {
    width: own,
    height: foot + below + 1.2,
    marks: parts,
    label: sentence(runs),
    facts: runs.flatMap(({ style, sizes, pairs }) => [
      [style.code, `${pairs} pairs`] as const,
      ...sizes.map(({ system, size, pairs: own }) => [`${style.code}, ${system} ${size}`, `${own}`] as const),
    ]),
    items,
  };
}

/** How pairs are drawn: one mark each, or many of them as a bar. */
interface PairsScale {
  readonly single: boolean;
  heightOf(pairs: number): number;
  /** Of a column's marks, u. */
  readonly wide: number;
}

interface ColumnOfPairs {
  /** Its middle, the line that it stands on and the height of its row, u. */
  readonly x: number;
  readonly base: number;
  readonly row: number;
  readonly pairs: number;
  readonly item: string;
  /** Whether the pane shows this size. */
  readonly on: boolean;
}

/** The pairs of one style and size with their number above; all of the row's height can be clicked. */
function columnOfPairs(scale: PairsScale, { x, base, row, pairs, item, on }: ColumnOfPairs): Marks {
  const { single, wide } = scale;
  const top = base - scale.heightOf(pairs);
  const drawn = single
    ? Array.from({ length: pairs }, (_, k) => rect(x, base - (k + 1) * MARK_STEP, wide, MARK))
    : bar(x, top, base, wide, pairs);
  const ground = rectangle(x - wide / 2, base - row + 1, wide, row - 1, { fill: 'nothing' });
  return [
    group([ground, ...drawn], { item }),
    text(x, top - 1, pairs, on ? 'bold' : 'plain'),
    ...(on ? [line('wide', x - wide / 2, base + 0.6, x + wide / 2, base + 0.6, { accent: true })] : []),
  ];
}

interface SizeColumn {
  readonly system: string;
  readonly size: number;
}

/** Every size of the run once, system by system, smallest first. */
function columnsOf(runs: Runs['styles']): readonly SizeColumn[] {
  const all = new Map<string, SizeColumn>();
  for (const { sizes } of runs) for (const { system, size } of sizes) all.set(`${system} ${size}`, { system, size });
  return [...all.values()].sort((a, b) => (a.system === b.system ? a.size - b.size : a.system < b.system ? -1 : 1));
}

/** A system's name below its sizes, under a line along them. */
function bracket(system: string, middles: readonly number[], foot: number): Marks {
  const [from, to] = [Math.min(...middles), Math.max(...middles)];
  return [line('narrow', from - 2, foot + 1.2, to + 2, foot + 1.2), text((from + to) / 2, foot + 4.6, system, 'quiet')];
}

/** A name as far as it has room. */
function fitted(name: string): string {
  return name.length > 10 ? `${name.slice(0, 9)}…` : name;
}

function rect(x: number, y: number, wide: number, high: number): AreaMark {
  return rectangle(x - wide / 2, y, wide, high, { fill: 'ink' });
}

/** A bar with ticks at tens. */
function bar(x: number, top: number, base: number, wide: number, pairs: number): Marks {
  const ticks = Array.from({ length: Math.floor(pairs / 10) }, (_, k) => {
    const y = base - ((base - top) * (k + 1) * 10) / pairs;
    return line('narrow', x - wide / 2 - 0.8, y, x + wide / 2 + 0.8, y);
  });
  return [rect(x, top, wide, base - top), ...ticks];
}

function sentence(runs: Runs['styles']): string {
  const sum = runs.reduce((n, { pairs }) => n + pairs, 0);
  const each = runs.map(({ style, pairs }) => `${style.code} ${pairs}`).join(', ');
  return `Pairs by size: ${sum} pairs; ${each}.`;
}
