import { fold } from '../core/plan/codes';
import type { LeftOut } from '../core/plan/left-out';
import { type Place, placeInWords, Problem } from '../core/problem';
import type { Columns, Table } from './schema';

/** What was made of a table's rows that are without slips, and what the others are. */
export interface Sifted<T> {
  readonly sound: readonly T[];
  /** Why a code cannot be used, by the code. */
  readonly lost: ReadonlyMap<string, Problem>;
  readonly leftOut: readonly LeftOut[];
  /** Slips that showed only when a record was made of its row. */
  readonly problems: readonly Problem[];
}

interface Sieve<R, T> {
  /** What reading the table complained of. */
  readonly slips: readonly Problem[];
  make(row: R): T;
  /** What a row hangs on that cannot be used. */
  waitsFor?(row: R): Problem | undefined;
}

/** Makes records of the rows that are without slips; a heading that is wrong leaves out the whole table. */
export function sift<R extends { readonly row: number }, T>(
  table: Table<Columns>,
  rows: readonly R[],
  { slips, make, waitsFor }: Sieve<R, T>,
): Sifted<T> {
  const [key = ''] = Object.keys(table.columns);
  const whole = slips.find(({ place }) => place.row === undefined);
  const slip = new Map([...slips].reverse().map((one) => [one.place.row, one]));
  const [problems, sound, soundCodes] = [[] as Problem[], [] as T[], new Set<string>()];
  const lost: { readonly row: R; readonly code: string | undefined; readonly why: Problem }[] = [];
  for (const row of rows) {
    const cell = (row as Readonly<Record<string, unknown>>)[key];
    const code = typeof cell === 'string' ? cell : undefined;
    const why = whole ?? slip.get(row.row) ?? waitsFor?.(row);
    const made = why ?? attempt(() => make(row));
    if (!(made instanceof Problem)) {
      sound.push(made);
      if (code !== undefined) soundCodes.add(fold(code));
      continue;
    }
    if (why === undefined) problems.push(made);
    lost.push({ row, code, why: made });
  }
  const gone = lost.flatMap(({ code, why }) =>
    code === undefined || soundCodes.has(fold(code)) ? [] : [[fold(code), why] as const],
  );
  return {
    sound,
    lost: new Map(gone.reverse()),
    leftOut: lost.map(({ row, code, why }) => {
      if (code !== undefined) return { name: code, why };
      const at: Place = { argument: table.argument, table: table.name, row: row.row };
      return { name: placeInWords(at), why, at };
    }),
    problems,
  };
}

/** Rows left out of which another row has the code: what names it takes that one. */
export function twice({ leftOut, lost }: Sifted<unknown>): readonly LeftOut[] {
  return leftOut.filter(({ name }) => !lost.has(fold(name)));
}

function attempt<T>(work: () => T): T | Problem {
  try {
    return work();
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}
