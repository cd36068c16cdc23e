import type { PieceLine } from '../../core/plan/pieces';
import { fold } from '../../core/plan/codes';
import type { Plan } from '../../core/plan/plan';
import type { SizeRun, StyleRun } from '../../core/plan/runs';
import type { Stock } from '../../core/stock/stock';
import type { JobFacts } from './page';
import type { LabelGrid } from './label-grid';

/** What a ticket is for. */
export const TICKETS_FOR = ['size', 'style'] as const;
export type TicketsFor = (typeof TICKETS_FOR)[number];

/** What is to be put on paper: of a plan those styles, sizes and stocks that are named; without names all. */
export interface PaperJob extends JobFacts {
  readonly plan: Pick<Plan, 'input' | 'runs' | 'buildable' | 'layouts' | 'ticket' | 'benchDays'>;
  readonly styles?: readonly string[] | undefined;
  readonly sizes?: readonly number[] | undefined;
  readonly stocks?: readonly string[] | undefined;
  /** Sign of the money, and whether prices are shown; they are unless this is false. */
  readonly money?: string | undefined;
  readonly prices?: boolean | undefined;
  /** A ticket for each size, as usual, or one a style for all its sizes. */
  readonly tickets?: TicketsFor | undefined;
  /** How labels stand on their sheet. */
  readonly labels?: LabelGrid | undefined;
}

/** Work that tells how far it is, part by part, so that whoever makes a document can show it and stop it. */
export type InParts<T> = Generator<string, T, void>;

const named = (names: readonly string[] | undefined, code: string) =>
  names === undefined || names.some((name) => fold(name) === fold(code));

export function chosenRuns({ plan, styles, sizes }: PaperJob): readonly { run: StyleRun; sizes: readonly SizeRun[] }[] {
  return plan.runs.styles
    .filter(({ style }) => named(styles, style.code))
    .map((run) => ({ run, sizes: run.sizes.filter(({ size }) => sizes === undefined || sizes.includes(size)) }))
    .filter((one) => one.sizes.length > 0);
}

/** Pieces that are still to be cut. */
export function chosenPieces(job: PaperJob): readonly PieceLine[] {
  return job.plan.buildable.filter(
    ({ run, sizeRun, layer, count }) =>
      count > 0 &&
      named(job.styles, run.style.code) &&
      (job.sizes === undefined || job.sizes.includes(sizeRun.size)) &&
      named(job.stocks, layer.stock),
  );
}

export function isChosenStock({ stocks }: Pick<PaperJob, 'stocks'>, code: string): boolean {
  return named(stocks, code);
}

/** The sheet that a piece is cut from. */
export function stockOf({ plan }: Pick<PaperJob, 'plan'>, code: string): Stock {
  const found = plan.input.stock.find((one) => fold(one.code) === fold(code));
  if (!found) throw new Error(`No stock ${code}.`);
  return found;
}

/** A size with its system: "EU 38". */
export function sizeWords({ system, size }: Pick<SizeRun, 'system' | 'size'>): string {
  return `${system} ${size}`;
}
