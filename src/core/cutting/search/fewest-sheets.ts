import { area } from '../../geometry/area';
import { box } from '../../geometry/box';
import { moved } from '../../geometry/moved';
import { type Layout, type Placement, wholeSheets } from '../sheet/layout';
import { leastSheets } from '../sheet/least-sheets';
import type { Piece } from '../sheet/piece';
import { quickLayout } from '../quick-layout';
import { formatAt, type SheetFormat } from '../sheet/sheet';
import { verifyLayout } from '../sheet/verify-layout';
import type { Filled, FillTask } from './fill-in';
import { Random } from './random';
import type { RollTask, Shortened } from './shorten-roll';
import { turnsFor } from './sheets';

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
  /** Whole sheets that it began with, and no fewer than that could do. */
  readonly began: number;
  readonly least: number;
  /** Share of the effort that has been spent, 0 to 1. */
  readonly done: number;
}

export type Task = FillTask | RollTask;
export type Answer = Filled | Shortened;

/** Searches that may go on side by side, and what comes of the layout when some of them have answered, in part or at last. */
export interface Round {
  readonly tasks: readonly Task[];
  readonly after: (answers: readonly (Answer | undefined)[]) => Progress;
}

/** Searches that go on side by side, and how often they compare what they found. */
const SEARCHES = 2;
const ROUNDS = 8;

/** A sheet that is so many times as long as wide is a roll: all that counts is the length that is taken from it. */
const ROLL = 4;

/** Sheets that are filled together hold about so many pieces at most. */
const MOST_PIECES = 140;

/** So few pieces are tried by every search; more are dealt out among them. */
const FEW = 4;

/**
 * Fewest sheets, step by step: from a layout that is there, never worse than that, the pieces of the emptiest sheet are
 * laid into the others until it is empty, and so on with the next; on a roll they are drawn together. Searches of one
 * round do not depend on each other; whoever runs this hands their answers back in order. Ends early once no fewer sheets
 * could do.
 */
export function* fewestSheets({
  pieces,
  format,
  effort,
  seed,
  start = quickLayout(pieces, format),
}: SheetsJob): Generator<Round, Progress, readonly (Answer | undefined)[]> {
  const random = new Random(seed);
  const least = leastSheets(pieces, format);
  const total = effort * 1e6;
  const began = wholeSheets(start, format);
  const turns = turnsFor(pieces, start);
  const roll = wholeSheets(start, format) > 0 && format.length >= ROLL * format.width && !format.natural;
  let layout: Layout = start;
  let spent = 0;
  // The search does not lay pairs in matching places.
  while (spent < total && wholeSheets(layout, format) > 0 && format.pairs === undefined) {
    const fewer = wholeSheets(layout, format) > least && layout.length > 1 && (!roll || spent < total / 2);
    if (!fewer && !roll) break;
    const evaluations = Math.ceil(Math.min(total / ROUNDS, total - spent) / SEARCHES);
    const search = { pieces, format, turns, evaluations };
    const { tasks, better } = fewer
      ? filling(search, layout, spent >= total / 4, random)
      : shortening(search, layout, random);
    let known = '';
    let found: Layout | undefined;
    const after = (answers: readonly (Answer | undefined)[]): Progress => {
      const steps = answers.map((answer) => answer?.steps ?? 0).join();
      if (steps !== known) [known, found] = [steps, better(answers)];
      const used = answers.reduce((sum, answer) => sum + (answer?.spent ?? 0), 0);
      const done = Math.min(1, (spent + used) / total);
      return { layout: found ?? layout, began, least, done };
    };
    const answers = yield { tasks, after };
    ({ layout } = after(answers));
    // Searches that end early have done all that they can; without this they would be sent out for ever.
    for (const answer of answers) spent += Math.max(answer?.spent ?? 0, evaluations / 8);
  }
  return { layout, began, least, done: 1 };
}

/** What all searches of a round have in common. */
interface Search extends Pick<FillTask, 'pieces' | 'turns' | 'evaluations'> {
  readonly format: SheetFormat;
}

/** Searches, and the better layout that their answers make, if they make one. */
interface Step {
  readonly tasks: readonly Task[];
  readonly better: (answers: readonly (Answer | undefined)[]) => Layout | undefined;
}

/**
 * Lays the pieces of the emptiest sheet into the others.
 * @param shelf whether offcuts may be used that lie unused so far: whole sheets are tried without them first
 */
function filling({ format, ...search }: Search, layout: Layout, shelf: boolean, random: Random): Step {
  const { pieces } = search;
  const size = (kinds: readonly number[]) => kinds.reduce((sum, kind) => sum + area(pieces[kind].ring), 0);
  const emptiest = emptiestOf(layout, pieces, format);
  const more = layout[emptiest].map(({ piece }) => piece);
  const others = layout.filter((_, sheet) => sheet !== emptiest);
  const onShelf = (entry: number) => entry < (format.offcuts ?? []).length && others[entry].length === 0;
  const all = [...others.keys()];
  const laid = all.filter((entry) => !onShelf(entry));
  const open = shelf || laid.length === 0 ? all : laid;
  const groups = groupsOf(others, open, random);
  const dealt = groups.length > 1 && more.length > FEW;
  random.shuffle(more);
  const tasks = Array.from({ length: SEARCHES }, (_, i): FillTask => ({
    kind: 'fill',
    ...search,
    sheets: groups[i % groups.length].map((sheet) => ({ format: formatAt(format, sheet), placements: others[sheet] })),
    more: dealt ? more.filter((_, k) => k % groups.length === i % groups.length) : more,
    seed: random.below(2 ** 31),
  }));
  const better = (answers: readonly (Answer | undefined)[]): Layout | undefined => {
    let best: { readonly layout: Layout; readonly left: readonly number[] } = { layout: others, left: more };
    answers.forEach((answer, i) => {
      if (!answer || !('sheets' in answer)) return;
      const group = groups[i % groups.length];
      const next = [...best.layout];
      group.forEach((sheet, k) => (next[sheet] = answer.sheets[k]));
      const whole = completed(next, group, pieces);
      if (size(whole.left) < size(best.left) * (1 - 1e-9)) best = whole;
    });
    return best.layout === others ? undefined : withLast(best.layout, best.left, pieces, format);
  };
  return { tasks, better };
}

/** Draws the pieces of the emptiest roll together. */
function shortening(search: Search, layout: Layout, random: Random): Step {
  const { pieces, format } = search;
  const last = emptiestOf(layout, pieces, format);
  const reach = (sheet: Layout[number]) =>
    Math.max(...sheet.map(({ piece, turn, x, y }) => box(moved(pieces[piece].ring, turn, x, y)).right));
  const tasks = Array.from({ length: SEARCHES }, (): RollTask => ({
    kind: 'roll',
    ...search,
    placements: layout[last],
    seed: random.below(2 ** 31),
  }));
  const better = (answers: readonly (Answer | undefined)[]): Layout | undefined => {
    let best = layout[last];
    for (const answer of answers) {
      if (answer && 'placements' in answer && reach(answer.placements) < reach(best)) best = answer.placements;
    }
    if (best === layout[last]) return undefined;
    const whole = layout.map((sheet, i) => (i === last ? best : sheet));
    return verifyLayout(pieces, format, whole).length === 0 ? whole : undefined;
  };
  return { tasks, better };
}

/** The whole sheet whose pieces take up the least area. */
function emptiestOf(layout: Layout, pieces: readonly Piece[], { offcuts = [] }: SheetFormat): number {
  const fill = layout.map((sheet) => sheet.reduce((sum, { piece }) => sum + area(pieces[piece].ring), 0));
  const first = offcuts.length;
  return fill.reduce((least, one, sheet) => (sheet > first && one < fill[least] ? sheet : least), first);
}

/** Groups of open sheets that can be filled side by side, none in two of them; one group where all can be filled together. */
function groupsOf(sheets: Layout, open: readonly number[], random: Random): readonly (readonly number[])[] {
  const order = [...open];
  const total = open.reduce((sum, sheet) => sum + sheets[sheet].length, 0);
  if (total <= MOST_PIECES) return [order];
  random.shuffle(order);
  const groups: number[][] = [[]];
  let count = 0;
  for (const sheet of order) {
    const group = groups[groups.length - 1];
    if (group.length > 0 && count + sheets[sheet].length > MOST_PIECES) {
      if (groups.length === SEARCHES) break;
      groups.push([sheet]);
      count = sheets[sheet].length;
    } else {
      group.push(sheet);
      count += sheets[sheet].length;
    }
  }
  return groups;
}

/** Takes pieces that lie once too often off the sheets of a group, and tells the kinds that lie nowhere, one entry each. */
function completed(
  layout: Layout,
  group: readonly number[],
  pieces: readonly Piece[],
): { readonly layout: Layout; readonly left: readonly number[] } {
  const missing = pieces.map(({ count }) => count);
  for (const { piece } of layout.flat()) missing[piece]--;
  const next: (readonly Placement[])[] = [...layout];
  for (const sheet of group)
    next[sheet] = next[sheet].filter(({ piece }) => missing[piece] >= 0 || ++missing[piece] > 0);
  return {
    layout: next,
    left: missing.flatMap((count, kind) => Array.from({ length: Math.max(0, count) }, () => kind)),
  };
}

/** The layout with what is left on one more sheet, if that can be cut. */
function withLast(
  layout: Layout,
  left: readonly number[],
  pieces: readonly Piece[],
  format: SheetFormat,
): Layout | undefined {
  const rest = pieces.map((piece, kind) => ({ ...piece, count: left.filter((one) => one === kind).length }));
  const { offcuts = [], ...plain } = format;
  const last = left.length > 0 ? quickLayout(rest, plain) : [];
  if (last.length > 1) return undefined;
  const whole = [...layout.filter((sheet, entry) => entry < offcuts.length || sheet.length > 0), ...last];
  return verifyLayout(pieces, format, whole).length === 0 ? whole : undefined;
}
