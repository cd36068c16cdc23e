import { fold } from '../core/plan/codes';
import { footLength, isSize, likelySystem, sizeOfFoot } from '../core/sizes/foot-length';
import { SIZE_SYSTEMS, SYSTEM_RULES, type SizeSystem } from '../core/sizes/systems';
import { bare, type Cell, type Cells, isBlank } from './cell';
import { columnsIn } from './headings';
import { headsSums } from './sums';
import { lastsTable } from './lasts';
import { pairageTable } from './pairage';
import type { Columns, Table } from './schema';
import { type HeadedColumn, missingSizes, type NewColumn, sizesIn } from './size-columns';
import { stylesTable } from './styles';

/** Sizes of a run's lasts, and columns of the pairage that have none of them. */
export interface SizesOfLasts {
  readonly system: SizeSystem;
  /** The ends of the sizes that are there, or of those that stand in their place. */
  readonly from: number;
  readonly to: number;
  /** Columns whose size is none of the system, and that hold no pairs, from the left. */
  readonly idle: readonly { readonly size: number; readonly at: number }[];
}

/** Sizes are told in halves. */
const HALF = 0.5;

type Tables = ReadonlyMap<string, Cells>;

/**
 * Which sizes a run's columns should have, by the system of the lasts that its styles name, or of all lasts where none is named
 * yet. undefined where the lasts are of several systems, or of one whose sizes are no halves.
 * @param isExample whether a row of the pairage stands as its example came, whose pairs count nothing
 */
export function sizesOfLasts(
  tables: Tables,
  isExample: (line: readonly Cell[]) => boolean = () => false,
): SizesOfLasts | undefined {
  const lasts = lastsOfRun(tables);
  const [system, ...others] = new Set(lasts.map((last) => last.system));
  if (system === undefined || others.length > 0 || SYSTEM_RULES[system].marked !== HALF) return undefined;
  const cells = tables.get(pairageTable.name) ?? [];
  const there = sizesIn(cells[0] ?? []);
  const own = there.filter(({ size }) => isSize(size, system));
  const rows = cells.slice(1).filter((line) => !headsSums(String(line[0] ?? '')) && !isExample(line));
  const idle = there.filter(
    ({ size, at }) => !isSize(size, system) && !rows.some((line) => Number(bare(line[at])) > 0),
  );
  const sizes =
    own.length > 0
      ? own.map(({ size }) => size)
      : instead(
          there.map(({ size }) => size),
          system,
          lasts,
        );
  return { system, from: Math.min(...sizes), to: Math.max(...sizes), idle };
}

interface LastOfRun {
  readonly system: SizeSystem;
  readonly base: number;
}

/** The ends of sizes for the same feet, where these are told, and the sizes that the lasts were measured in. */
function instead(sizes: readonly number[], system: SizeSystem, lasts: readonly LastOfRun[]): readonly number[] {
  const likely = sizes.length > 0 ? likelySystem(sizes, system) : undefined;
  const bases = lasts.flatMap(({ base }) => (isSize(base, system) ? [base] : []));
  if (!likely) return bases;
  const same = (size: number) => sizeOfFoot(footLength(size, likely), system);
  const low = Math.floor(same(Math.min(...sizes)) / HALF) * HALF;
  const high = Math.ceil(same(Math.max(...sizes)) / HALF) * HALF;
  return [low, high, ...bases];
}

function lastsOfRun(tables: Tables): readonly LastOfRun[] {
  const styles = new Set(rowsOf(tables, pairageTable).map((of) => fold(of('style'))));
  const named = new Set(
    rowsOf(tables, stylesTable).flatMap((of) => (styles.has(fold(of('code'))) ? [fold(of('last'))] : [])),
  );
  const all = rowsOf(tables, lastsTable).flatMap((of) => {
    const system = SIZE_SYSTEMS.find((one) => one === of('system').toUpperCase());
    return system ? [{ code: fold(of('code')), system, base: Number(of('baseSize')) }] : [];
  });
  const own = all.filter(({ code }) => named.has(code));
  return own.length > 0 ? own : all;
}

/** Rows below the headings, each as what stands in a column, "" where nothing does. */
function rowsOf(tables: Tables, table: Table<Columns>): readonly ((column: string) => string)[] {
  const [headings = [], ...lines] = tables.get(table.name) ?? [];
  const columns = columnsIn(table, headings);
  return lines.map((line) => (column) => {
    const at = columns.get(column);
    const cell = at === undefined ? undefined : line[at];
    return isBlank(cell) ? '' : String(bare(cell)).trim();
  });
}

/** Columns that are to have a size: those that get another heading, and those that come in. */
export interface SizeColumns {
  /** In the place of a size that is none of the lasts. */
  readonly headed: readonly (HeadedColumn & { readonly was: number })[];
  readonly added: readonly NewColumn[];
}

/**
 * Columns that the pairage lacks, as missingSizes has them; where all of its sizes are idle, these are headed anew first.
 * @throws Problem as missingSizes does
 */
export function sizeColumns(
  headings: readonly Cell[],
  from: number,
  to: number,
  step: number,
  idle: SizesOfLasts['idle'] = [],
): SizeColumns {
  const added = missingSizes(headings, from, to, step);
  if (idle.length === 0 || sizesIn(headings).length > idle.length) return { headed: [], added };
  const headed = idle
    .slice(0, added.length)
    .map(({ at, size }, i) => ({ column: at, was: size, heading: added[i]?.heading ?? size }));
  const end = columnsIn(pairageTable, headings).get('total') ?? Math.max(...idle.map(({ at }) => at)) + 1;
  const rest = added.slice(headed.length).map(({ heading }) => ({ before: end, heading }));
  return { headed, added: rest };
}
