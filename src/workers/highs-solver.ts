import type { Programme, Solution, Solver } from '../core/cutting/buy/programme';

/** What is used of the library that solves programmes: a text in the LP format, and its solution. */
export interface LinearSolver {
  solve(problem: string, options: Readonly<Record<string, number | boolean | string>>): SolvedProgramme;
}

interface SolvedProgramme {
  readonly Status: string;
  readonly ObjectiveValue: number;
  readonly Columns: Readonly<Record<string, { readonly Primal?: number }>>;
  readonly Rows: readonly { readonly Dual?: number }[];
}

/** A last resort on a machine that hardly works, s: branches end it first. */
const TIME_LIMIT = 60;

/** A solver by the library. Branches are counted, so that the same programme has the same answer on every machine. */
export function solverOf(library: LinearSolver): Solver {
  return (programme, nodes) => {
    const { variables, rows } = programme;
    if (rows.some(({ terms, least = 0 }) => terms.length === 0 && least > 0)) return undefined;
    const solved = library.solve(textOf(programme), {
      output_flag: false,
      random_seed: 0,
      mip_rel_gap: 0,
      mip_abs_gap: 1e-7,
      mip_max_nodes: Math.max(1, nodes),
      time_limit: TIME_LIMIT,
    });
    const values = variables.map(({ whole }, i) => {
      const value = solved.Columns[`x${i}`]?.Primal ?? NaN;
      return whole ? Math.round(value) : value;
    });
    if (!values.every(Number.isFinite) || !holds(programme, values)) return undefined;
    const cost = variables.reduce((sum, one, i) => sum + one.cost * values[i]!, 0);
    const duals = rows.map((_, i) => solved.Rows[i]?.Dual ?? 0);
    return { cost, values, duals, proven: solved.Status === 'Optimal' };
  };
}

/** Rows may be missed by this share of their bound. */
const TOLERANCE = 1e-6;

/** Whether whole numbers that were rounded keep every row. */
function holds({ rows }: Programme, values: Solution['values']): boolean {
  return rows.every(({ terms, least = -Infinity, most = Infinity }) => {
    const sum = terms.reduce((all, [variable, by]) => all + by * values[variable]!, 0);
    return (
      sum >= least - TOLERANCE * Math.max(1, Math.abs(least)) && sum <= most + TOLERANCE * Math.max(1, Math.abs(most))
    );
  });
}

/** The programme in the LP format. */
function textOf({ variables, rows }: Programme): string {
  const sum = (terms: readonly (readonly [number, number])[]) =>
    terms.map(([variable, by]) => `${by < 0 ? '-' : '+'} ${Math.abs(by)} x${variable}`).join('\n ');
  const bounds = variables.flatMap(({ most }, i) => (most === undefined ? [] : [` 0 <= x${i} <= ${most}`]));
  const whole = variables.flatMap((one, i) => (one.whole ? [` x${i}`] : []));
  return [
    'Minimize',
    ` cost: ${sum(variables.map(({ cost }, i) => [i, cost] as const))}`,
    'Subject To',
    ...rows.map(
      ({ terms, least, most }, i) => ` r${i}: ${sum(terms)} ${least === undefined ? `<= ${most}` : `>= ${least}`}`,
    ),
    ...(bounds.length > 0 ? ['Bounds', ...bounds] : []),
    ...(whole.length > 0 ? ['General', ...whole] : []),
    'End',
    '',
  ].join('\n');
}
