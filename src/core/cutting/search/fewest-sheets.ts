import { area } from '../../geometry/area';
import type { Layout } from '../layout';
import { leastSheets } from '../least-sheets';
import type { Piece } from '../piece';
import { isNatural, quickLayout } from '../quick-layout';
import type { SheetFormat } from '../sheet';
import { verifyLayout } from '../verify-layout';
import type { Emptied, SheetsTask } from './empty-sheet';
import { Random } from './random';

/** Pieces to be cut from as few sheets of a format as a search finds. */
export interface SheetsJob {
  readonly pieces: readonly Piece[];
  readonly format: SheetFormat;
  /** Millions of evaluations, of all searches together. */
  readonly effort: number;
  readonly seed: number;
  /** A sound layout to better; without one, the quick one. */
  readonly start?: Layout | undefined;
}

/** The best so far. */
export interface Progress {
  readonly layout: Layout;
  /** Sheets that it began with, and no fewer than that could do. */
  readonly began: number;
  readonly least: number;
  /** Share of the effort that has been spent, 0 to 1. */
  readonly done: number;
}

/** Searches that go on side by side, and how often they compare what they found. */
const SEARCHES = 2;
const ROUNDS = 6;

/** A sheet that is so many times as long as wide is a roll. */
const ROLL = 4;

/** Sheets that are laid anew together hold about so many pieces at most. */
const MOST_PIECES = 140;

/**
 * Fewest sheets, step by step: from a layout that is there, never worse than that, groups of sheets are laid anew so that the
 * emptiest of a group gives its pieces to the others, until it is empty. Searches of one round do not depend on each
 * other; whoever runs this hands their answers back in order. Ends early once no fewer sheets could do.
 */
export function* fewestSheets({
  pieces,
  format,
  effort,
  seed,
  start = quickLayout(pieces, format),
}: SheetsJob): Generator<
  { readonly tasks: readonly SheetsTask[]; readonly progress: Progress },
  Progress,
  readonly Emptied[]
> {
  const random = new Random(seed);
  // Sheets that are cut alike become sheets of their own.
  let layout: Layout = start.map((sheet) => [...sheet]);
  const least = leastSheets(pieces, format);
  const total = effort * 1e6;
  let spent = 0;
  let lengths = new Map<Layout[number], number>();
  const progress = (): Progress => ({ layout, began: start.length, least, done: Math.min(1, spent / total) });
  const filled = (sheet: Layout[number]) => sheet.reduce((sum, { piece }) => sum + area(pieces[piece].ring), 0);
  // Fewer sheets than the least cannot be; of a roll, all that counts is the length that is taken from it.
  const open = () => layout.length > least || (layout.length > 0 && format.length >= ROLL * format.width);
  // The search lays whole rectangles; hides with their holes stay as they are.
  while (spent < total && open() && !isNatural(format)) {
    const groups = groupsOf(layout, filled, random);
    const evaluations = Math.ceil(Math.min(total / ROUNDS, total - spent) / SEARCHES);
    const tasks = Array.from({ length: SEARCHES }, (_, i): SheetsTask => {
      const sheets = (groups[i % groups.length] as readonly number[]).map((sheet) => layout[sheet]);
      return { kind: 'sheets', pieces, format, layout: sheets, evaluations, seed: random.below(2 ** 31) };
    });
    const answers = yield { tasks, progress: progress() };
    for (const answer of answers) spent += Math.max(answer.spent, evaluations / 8);
    const next = combined(layout, groups, answers, lengths);
    if (verifyLayout(pieces, format, next.layout).length > 0) continue;
    layout = next.layout;
    lengths = next.lengths;
  }
  return { ...progress(), done: 1 };
}

/** Groups of sheets, no sheet in two of them, each with its emptiest sheet last; the emptiest of all is in the first. */
function groupsOf(
  layout: Layout,
  filled: (sheet: Layout[number]) => number,
  random: Random,
): readonly (readonly number[])[] {
  const order = layout.map((_, sheet) => sheet);
  random.shuffle(order);
  const fill = layout.map(filled);
  const emptiest = order.reduce((a, b) => (fill[b] < fill[a] ? b : a));
  const groups: number[][] = [];
  let group: number[] = [];
  let count = 0;
  for (const sheet of [emptiest, ...order.filter((one) => one !== emptiest)]) {
    if (groups.length === SEARCHES) break;
    if (group.length > 1 && count + layout[sheet].length > MOST_PIECES) {
      groups.push(group);
      [group, count] = [[], 0];
    }
    group.push(sheet);
    count += layout[sheet].length;
  }
  if (groups.length < SEARCHES && (group.length > 1 || groups.length === 0)) groups.push(group);
  for (const one of groups) one.sort((a, b) => fill[b] - fill[a] || a - b);
  return groups;
}

/** The layout with the better answer for each group in place of its sheets. */
function combined(
  layout: Layout,
  groups: readonly (readonly number[])[],
  answers: readonly Emptied[],
  lengths: ReadonlyMap<Layout[number], number>,
): { readonly layout: Layout; readonly lengths: Map<Layout[number], number> } {
  const kept = new Map(lengths);
  let sheets = [...layout];
  groups.forEach((group, g) => {
    const [first, ...others] = answers.filter((_, i) => i % groups.length === g);
    if (!first) return;
    const better = (a: Emptied, b: Emptied) => a.layout.length - b.layout.length || a.length - b.length;
    const best = others.reduce((a, b) => (better(b, a) < 0 ? b : a), first);
    const last = layout[group[group.length - 1]];
    const before = kept.get(last) ?? Infinity;
    if (best.layout.length === group.length && best.length >= before) return;
    const members = new Set(group.map((sheet) => layout[sheet]));
    sheets = [...sheets.filter((sheet) => !members.has(sheet)), ...best.layout];
    if (best.layout.length === group.length) kept.set(best.layout[best.layout.length - 1], best.length);
  });
  return { layout: sheets, lengths: kept };
}
