import { type Place, Problem } from '../core/problem';
import { dayIn } from './day';
import {
  allowsNought,
  alternatives,
  bare,
  type Cell,
  cellInWords,
  isError,
  type NumberRule,
  readChoice,
  readNumber,
  readText,
} from './cell';

/** A column of an input table: how its cells are read, and what help, blank tables and drop-downs say of it. */
export interface Column<T = unknown> {
  readonly heading: string;
  /** What it was headed by before: workbooks that have it are read alike. */
  readonly former?: readonly string[];
  /** Written under the heading, in the same cell. */
  readonly unit?: string;
  readonly meaning: string;
  readonly kind: 'number' | 'text' | 'choice' | 'codes' | 'date';
  /** Whether a blank cell is a problem. */
  readonly required: boolean;
  /** Whether 0 counts as a blank cell, as some versions of the office suite hand it over: where it cannot be an answer. */
  readonly noughtIsBlank: boolean;
  /** Whether the maker's own sums stand here: known, but not read. */
  readonly unread?: boolean;
  /** What a blank cell means, where it means something. */
  readonly fallback?: T;
  readonly choices?: readonly string[];
  /** Words that stood for choices before, each with today's. */
  readonly formerly?: Readonly<Record<string, string>>;
  /** What its numbers may be, for whoever tells of it. */
  readonly bounds?: NumberRule;
  /** Number format of the cells. */
  readonly format?: string;
  readonly width: number;
  read(cell: Cell, place: Place, around?: Around): T;
}

/** What other cells of the table say. */
export interface Around {
  /** Of most of its days. */
  readonly year?: number | undefined;
}

interface About {
  readonly heading: string;
  /** What it was headed by before. */
  readonly former?: readonly string[];
  readonly meaning: string;
  /** px; codes 118, figures 70 to 84. */
  readonly width?: number;
}

interface NumberAbout extends About, NumberRule {
  readonly format?: string;
  /** Unit as the heading shows it, where it is not the unit read. */
  readonly shown?: string;
}

export type Required<T> = Column<T> & { readonly required: true };
type Optional<T> = Column<T | undefined>;

/** A column whose cells are read by a rule of their own. */
export function column<T>(
  kind: Column['kind'],
  about: About & { format?: string },
  read: Column<T>['read'],
): Required<T> {
  const { heading, former, meaning, width = kind === 'number' || kind === 'date' ? 74 : 118, format } = about;
  return {
    kind,
    heading,
    ...(former && { former }),
    meaning,
    width,
    ...(format !== undefined && { format }),
    required: true,
    noughtIsBlank: kind !== 'number',
    read,
  };
}

/** Numbers show as many decimals as they have. */
export const GENERAL = 'General';

/** A number within a rule. */
export function number(about: NumberAbout): Required<number> {
  const { shown = about.unit, format = about.whole ? GENERAL : '0.0' } = about;
  return {
    ...column('number', { ...about, format }, (cell, place) => readNumber(cell, about, place)),
    noughtIsBlank: !allowsNought(about),
    bounds: about,
    ...(shown !== undefined && { unit: shown }),
  };
}

/** 80 is shown as per cent like 0.8, as it is read. */
const SHARE_FORMAT = '[<=1]0%;0"%"';

/** A share under a heading with %: "80 %", 80 for the same, or 0.8; 1 is all, as a cell with 100 % holds it. */
export function share(about: About & { readonly least?: number; readonly most?: number }): Required<number> {
  const { least = 0, most = 1 } = about;
  return {
    ...column('number', { ...about, format: SHARE_FORMAT }, (cell, place) => readShare(cell, { least, most }, place)),
    noughtIsBlank: least > 0,
    bounds: { least: 100 * least, most: 100 * most },
    unit: '%',
  };
}

/** The share that a cell means: "80 %", 80 and 0.8 are the same, and 1 is all. @throws Problem for what is no number */
export function shareMeant(rich: Cell, place: Place): number {
  const cell = bare(rich);
  const percent = typeof cell === 'string' ? /^([^%]*)%\s*$/.exec(cell) : null;
  const given = readNumber(percent ? percent[1] : rich, {}, place);
  return percent || given > 1 ? given / 100 : given;
}

function readShare(cell: Cell, rule: { readonly least: number; readonly most: number }, place: Place): number {
  const share = shareMeant(cell, place);
  if (share >= rule.least && share <= rule.most) return share;
  const [least, most] = [rule.least, rule.most].map((bound) => `${Number((100 * bound).toFixed(6))} %`);
  throw new Problem(
    'invalid',
    place,
    `${cellInWords(cell)} is not possible; give a share from ${least} to ${most}, such as 80 or 0.8`,
  );
}

export function text(about: About): Required<string> {
  return column('text', about, readText);
}

/** A column of the maker's own sums: known by its heading, but not read. */
export function sums(about: About): Column<undefined> {
  return { ...column('number', { ...about, format: '0' }, () => undefined), required: false, unread: true };
}

/** A day: the spreadsheet's day number, or text such as 2027-06-14 or, in the run's year, 14 June. */
export function date(about: About): Required<number> {
  return column('date', { ...about, format: 'd mmm yyyy' }, (rich, place, { year } = {}) => readDay(rich, place, year));
}

/** A day in a cell, as the spreadsheet's number. @throws Problem that names a form in which days are read */
export function readDay(rich: Cell, place: Place, year?: number): number {
  const cell = bare(rich);
  const day = typeof cell === 'string' ? dayIn(cell, year) : undefined;
  if (day && 'day' in day) return day.day;
  const words = typeof cell === 'string' && cell.trim() !== '' && !isError(cell);
  if (words && (day || !/^\s*\d+([.,]\d+)?\s*$/.test(cell))) {
    const why = day?.unclear ?? 'is no day that the sheet knows; enter one such as 2027-06-14';
    throw new Problem('invalid', place, `${cellInWords(cell)} ${why}`);
  }
  const number = readNumber(rich, { least: 0, most: 200_000 }, place);
  if (number >= FIRST_DAY) return number;
  throw new Problem('invalid', place, `${cellInWords(cell)} is no day; enter one such as 2027-06-14`);
}

/** What is less was typed as a day of the month alone. */
const FIRST_DAY = 32;

/**
 * One of several words.
 * @param formerly words that stood for them before, each with today's: they are read, and never offered
 */
export function choice<T extends string>(
  about: About,
  choices: readonly T[],
  formerly: Readonly<Record<string, NoInfer<T>>> = {},
): Required<T> {
  return {
    ...column('choice', about, (cell, place) => readChoice(cell, choices, place, formerly)),
    choices,
    formerly,
  };
}

/** One or more codes in one cell, separated by commas, semicolons or plus signs. */
export function codes(about: About): Required<readonly string[]> {
  return column('codes', about, (cell, place) =>
    readText(cell, place)
      .split(/[,;+]/)
      .map((code) => code.trim())
      .filter(Boolean),
  );
}

/** Groups of sizes in one cell: "36-38, 39-41", each from a size to a size, rising. */
export function sizeGroups(about: About): Required<readonly { readonly from: number; readonly to: number }[]> {
  return column('codes', about, (cell, place) => {
    const groups = readText(cell, place)
      .split(/[,;]/)
      .map((group) => {
        const match = /^\s*(\d+(?:\.\d+)?)\s*(?:[-–]\s*(\d+(?:\.\d+)?))?\s*$/.exec(group);
        if (!match) {
          throw new Problem('invalid', place, `"${group.trim()}" is no group of sizes; write such as 36-38, 39-41`);
        }
        return { from: Number(match[1]), to: Number(match[2] ?? match[1]) };
      });
    groups.forEach(({ from, to }, i) => {
      const before = groups[i - 1];
      if (to < from || (before && from <= before.to)) {
        throw new Problem('invalid', place, 'the groups must rise and may not overlap; write such as 36-38, 39-41');
      }
    });
    return groups;
  });
}

/** A column that may be blank: blank is undefined. */
export function optional<T>(inner: Required<T>): Optional<T> {
  return { ...inner, required: false };
}

/** A column that may be blank: blank is the given value. */
export function defaulted<T>(inner: Required<T>, fallback: T): Column<T> {
  return { ...inner, required: false, fallback };
}

/** The record that a row of the columns reads to. */
export type Row<C extends Columns> = { readonly [K in keyof C]: C[K] extends Column<infer T> ? T : never } & {
  /** Counted from 1 below the headings. */
  readonly row: number;
};

export type Columns = Readonly<Record<string, Column<unknown>>>;

export interface Table<C extends Columns = Columns> {
  /** The maker's name for it, which messages use. */
  readonly name: string;
  /** Name of the argument by which functions take it. */
  readonly argument: string;
  readonly meaning: string;
  readonly columns: C;
  /** Name of the column that must differ in every row. */
  readonly key?: string;
  /** Further columns whose heading is a number: sizes. Their cells are read by this rule; blank is nothing. */
  readonly bySize?: {
    readonly meaning: string;
    readonly rule: NumberRule;
    /** Whether 0 says the same as a blank cell. */
    readonly noughtIsBlank?: boolean;
  };
}

export function table<C extends Columns>(about: Table<C>): Table<C> {
  return about;
}

/** Whether somewhere in a table a blank cell says something else than 0, and both may stand there. */
export function partsBlankFromNought({ columns, bySize }: Pick<Table, 'columns' | 'bySize'>): boolean {
  return Object.values(columns).some(blankIsNoNought) || (bySize !== undefined && !bySize.noughtIsBlank);
}

/** Whether in a column blank says something else than 0, and both may stand there. */
export function blankIsNoNought({ noughtIsBlank, unread, fallback }: Column): boolean {
  return !noughtIsBlank && !unread && fallback !== 0;
}

/** "a, b or c" of a table's headings, for messages. */
export function headingsInWords(columns: readonly Column[]): string {
  return alternatives(columns.map(({ heading }) => heading));
}
