import { area } from '../../geometry/area';
import { box } from '../../geometry/box';
import { moved } from '../../geometry/moved';
import { laidSheets, type Layout, layoutOf, type NamedSheet, type Placements } from '../sheet/layout';
import { leastSheets } from '../sheet/least-sheets';
import type { Piece } from '../sheet/piece';
import { Problem } from '../../problem';
import { quickLayout } from '../quick-layout';
import { formatOn, type SheetFormat } from '../sheet/sheet';
import { verifyLayout } from '../sheet/verify-layout';
import type { FillTask } from './fill-in';
import type { Answer, Task } from './perform';
import { Random } from './random';
import type { RollTask } from './shorten-roll';
import { turnsFor } from './sheets';
import { takenApart } from './taken-apart';

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
  /** Whole sheets that it began with, and no fewer would be enough. */
  readonly began: number;
  readonly least: number;
  /** Share of the effort that has been spent, 0 to 1. */
  readonly done: number;
}

/** Searches that may go on side by side, and what comes of the layout when some of them have answered, in part or at last. */
export interface Round {
  readonly tasks: readonly Task[];
  readonly after: (answers: readonly (Answer | undefined)[]) => Progress;
}

/**
 * Searches that go on side by side, and how often they compare what they found: the same number whatever workers there are.
 * Drawing a roll together takes a longer breath.
 */
const FILLING = { searches: 8, rounds: 8 };
const SHORTENING = { searches: 4, rounds: 4 };

/**
 * Places that a search which fills sheets tries at least. To part what has jammed takes as many: of shorter ones none comes
 * anywhere, however many there are. So a small effort goes into fewer of them, and as evenly into fewer rounds.
 */
const LEAST_EVALUATIONS = 500_000;
const FEWEST_SEARCHES = 2;

/**
 * When a sheet is first to be emptied, short searches take the others one by one: what finds room easily is told soon, and of
 * pieces that lie on one sheet fewer pairs are prepared. So many places each, so many times as many whenever a round has laid
 * nothing, and so many sheets in a round.
 */
const SHORT = { evaluations: 30_000, longer: 4, sheets: 16 };

/** A sheet that is so many times as long as wide is a roll: all that counts is the length that is taken from it. */
const ROLL = 4;

/** Sheets that are filled together hold about so many pieces at most, and outlines in so many turns: every two are prepared. */
const MOST_PIECES = 140;
const MOST_SHAPES = 160;

/** So few pieces are tried by every search; more are dealt out among them. */
const FEW = 4;

/**
 * Fewest sheets, step by step: from a layout that is there, never worse than that, the pieces of the emptiest sheet are
 * laid into the others until it is empty, and so on with the next; on a roll they are drawn together. Searches of one
 * round do not depend on each other; whoever runs this hands their answers back in order. Ends early once no fewer sheets
 * could do. Pairs that lie side by side are moved as one, and of those across the backbone the one on one side.
 */
export function* fewestSheets(job: SheetsJob): Generator<Round, Progress, readonly (Answer | undefined)[]> {
  const { pieces, format, start = quickLayout(pieces, format) } = job;
  const { pairs } = format;
  if (pairs === undefined || pairs === 'anywhere') return yield* fewest({ ...job, start });
  const began = start.sheets.length;
  const least = leastSheets(pieces, format);
  let known: Progress = { layout: start, began, least, done: 0 };
  if (began <= least) return { ...known, done: 1 };
  const [answer] = yield { tasks: [{ kind: 'bind', pieces, format, start }], after: () => known };
  const bound = answer && 'bound' in answer ? answer.bound : undefined;
  if (!bound) return { ...known, done: 1 };
  const bonded = { ...job, pieces: bound.pieces, format: bound.format, start: bound.layout };
  const told = (progress: Progress): Progress => {
    const layout = progress.layout === bound.layout ? start : takenApart(progress.layout, bound.twos);
    const sound =
      layout.sheets.length < known.layout.sheets.length && verifyLayout(pieces, format, layout).length === 0;
    known = { ...known, layout: sound ? layout : known.layout, done: progress.done };
    return known;
  };
  const search = fewest(bonded);
  let step = search.next();
  while (!step.done && known.layout.sheets.length > least) {
    const { tasks, after } = step.value;
    step = search.next(yield { tasks, after: (answers) => told(after(answers)) });
  }
  return { ...(step.done ? told(step.value) : known), done: 1 };
}

/** The same of pieces that need not match. */
function* fewest({
  pieces,
  format,
  effort,
  seed,
  start,
}: SheetsJob & { readonly start: Layout }): Generator<Round, Progress, readonly (Answer | undefined)[]> {
  const random = new Random(seed);
  const least = leastSheets(pieces, format);
  const total = effort * 1e6;
  const began = start.sheets.length;
  const turns = turnsFor(pieces, start);
  const roll = began > 0 && format.length >= ROLL * format.width && !format.natural;
  let layout: Layout = start;
  let spent = 0;
  let short = SHORT.evaluations;
  while (spent < total && layout.sheets.length > 0) {
    const others = layout.sheets.length > 1 || (format.offcuts ?? []).length > 0;
    const fewer = layout.sheets.length > least && others && (!roll || spent < total / 2);
    if (!fewer && !roll) break;
    const { searches, rounds } = fewer ? fillingBy(total) : SHORTENING;
    const most = Math.ceil(Math.min(total / rounds, total - spent) / searches);
    const apart = fewer && short * SHORT.sheets <= most * searches;
    const evaluations = apart ? short : most;
    const search = { pieces, format, turns, evaluations };
    const { tasks, better } = fewer
      ? filling(search, apart ? undefined : searches, layout, spent >= total / 4, random)
      : shortening(search, layout, random);
    let known: string | undefined;
    let found: Layout | undefined;
    const after = (answers: readonly (Answer | undefined)[], ended = false): Progress => {
      // To lay what is left and to check it all takes longer than a short task does.
      const onlyIfEmptied = apart && !ended;
      const steps = [onlyIfEmptied, ...answers.map((answer) => answer?.steps)].join();
      if (steps !== known) [known, found] = [steps, better(answers, onlyIfEmptied)];
      const used = answers.reduce((sum, answer) => sum + (answer?.spent ?? 0), 0);
      const done = Math.min(1, (spent + used) / total);
      return { layout: found ?? layout, began, least, done };
    };
    const answers = yield { tasks, after };
    const before = layout;
    ({ layout } = after(answers, true));
    if (layout.sheets.length < before.sheets.length) short = SHORT.evaluations;
    else if (areaLeft(layout, pieces) >= areaLeft(before, pieces) * (1 - 1e-9)) short *= SHORT.longer;
    // Searches that end early have done all that they can; without this they would be sent out for ever.
    for (const answer of answers) spent += Math.max(answer?.spent ?? 0, evaluations / 8);
  }
  return { layout, began, least, done: 1 };
}

/** How many searches of how many rounds share an effort. */
function fillingBy(total: number): typeof FILLING {
  const all = Math.min(FILLING.searches * FILLING.rounds, Math.max(FEWEST_SEARCHES, total / LEAST_EVALUATIONS));
  const searches = Math.max(FEWEST_SEARCHES, Math.round(Math.sqrt(all)));
  return { searches, rounds: all / searches };
}

/** What all searches of a round have in common. */
interface Search extends Pick<FillTask, 'pieces' | 'turns' | 'evaluations'> {
  readonly format: SheetFormat;
}

/** Searches, and the better layout that their answers make, if they make one; on request only one that has emptied the sheet. */
interface Step {
  readonly tasks: readonly Task[];
  readonly better: (answers: readonly (Answer | undefined)[], onlyIfEmptied: boolean) => Layout | undefined;
}

/**
 * Lays the pieces of the emptiest sheet into the others.
 * @param searches undefined for short ones, as many as there are sheets
 * @param shelf whether offcuts may be used that lie unused so far: whole sheets are tried without them first
 */
function filling(
  { format, ...search }: Search,
  searches: number | undefined,
  layout: Layout,
  shelf: boolean,
  random: Random,
): Step {
  const { pieces } = search;
  const size = (kinds: readonly number[]) => kinds.reduce((sum, kind) => sum + area(pieces[kind]!.ring), 0);
  const emptiest = emptiestOf(layout, pieces);
  const last = layout.sheets[emptiest]!;
  const more = last.map(({ piece }) => piece);
  const rest = layout.sheets.filter((_, sheet) => sheet !== emptiest);
  const others = withShelf({ ...layout, sheets: rest }, format);
  const all = [...others.keys()];
  const laid = all.filter((sheet) => others[sheet]!.placements.length > 0);
  const open = shelf || laid.length === 0 ? all : laid;
  const groups = searches
    ? groupsOf(others, open, search.turns, searches, random)
    : apartFrom(open, SHORT.sheets, random);
  const dealt = groups.length > 1 && more.length > FEW;
  random.shuffle(more);
  const count = searches ?? Math.max(FEWEST_SEARCHES, groups.length);
  const tasks = Array.from({ length: count }, (_, i): FillTask => ({
    kind: 'fill',
    ...search,
    sheets: groups[i % groups.length]!.map((sheet) => others[sheet]!),
    more: dealt ? more.filter((_, k) => k % groups.length === i % groups.length) : more,
    seed: random.below(2 ** 31),
  }));
  const better = (answers: readonly (Answer | undefined)[], onlyIfEmptied: boolean): Layout | undefined => {
    let best: { readonly sheets: readonly NamedSheet[]; readonly left: readonly number[] } = {
      sheets: others,
      left: more,
    };
    const used = new Set<(typeof groups)[number]>();
    answers.forEach((answer, i) => {
      if (!answer || !('sheets' in answer)) return;
      const group = groups[i % groups.length]!;
      const next = [...best.sheets];
      group.forEach((sheet, k) => (next[sheet] = { ...next[sheet]!, placements: answer.sheets[k]! }));
      const whole = completed(next, group, pieces);
      // As good as before does for what has not been better yet: it has been separated, and need not be again.
      const most = size(best.left) * (used.has(group) ? 1 - 1e-9 : 1 + 1e-9);
      if (size(whole.left) > most) return;
      best = whole;
      used.add(group);
    });
    if (used.size === 0 || (onlyIfEmptied && best.left.length > 0)) return undefined;
    return withLast(layoutOf(best.sheets), best.left, last, pieces, format);
  };
  return { tasks, better };
}

/** Draws the pieces of the emptiest roll together. */
function shortening(search: Search, layout: Layout, random: Random): Step {
  const { pieces, format } = search;
  const last = emptiestOf(layout, pieces);
  const reach = (sheet: Placements) =>
    Math.max(...sheet.map(({ piece, turn, x, y }) => box(moved(pieces[piece]!.ring, turn, x, y)).right));
  const tasks = Array.from({ length: SHORTENING.searches }, (): RollTask => ({
    kind: 'roll',
    ...search,
    placements: layout.sheets[last]!,
    seed: random.below(2 ** 31),
  }));
  const better = (answers: readonly (Answer | undefined)[]): Layout | undefined => {
    let best = layout.sheets[last]!;
    for (const answer of answers) {
      if (answer && 'placements' in answer && reach(answer.placements) < reach(best)) best = answer.placements;
    }
    if (best === layout.sheets[last]) return undefined;
    const whole = { ...layout, sheets: layout.sheets.map((sheet, i) => (i === last ? best : sheet)) };
    return verifyLayout(pieces, format, whole).length === 0 ? whole : undefined;
  };
  return { tasks, better };
}

/** The whole sheet whose pieces take up the least area. */
function emptiestOf({ sheets }: Layout, pieces: readonly Piece[]): number {
  const fill = sheets.map((sheet) => areaOn(sheet, pieces));
  return fill.reduce((least, one, sheet) => (one < fill[least]! ? sheet : least), 0);
}

/** Area of what lies on the emptiest whole sheet. */
function areaLeft({ sheets }: Layout, pieces: readonly Piece[]): number {
  return Math.min(...sheets.map((sheet) => areaOn(sheet, pieces)));
}

function areaOn(sheet: Placements, pieces: readonly Piece[]): number {
  return sheet.reduce((sum, { piece }) => sum + area(pieces[piece]!.ring), 0);
}

/** All sheets on which pieces may lie: every offcut, those on the shelf blank, and the whole sheets. */
function withShelf(layout: Layout, format: SheetFormat): readonly NamedSheet[] {
  const used = new Map(layout.offcuts.map(({ code, placements }) => [code, placements]));
  const offcuts = (format.offcuts ?? []).map(({ code }): NamedSheet => {
    const name = { offcut: code };
    return { name, format: formatOn(format, name), placements: used.get(code) ?? [] };
  });
  return [...offcuts, ...laidSheets({ ...layout, offcuts: [] }, format)];
}

/**
 * Groups of open sheets that can be filled side by side, none in two of them; one group where all can be filled together.
 * @param most groups
 */
function groupsOf(
  sheets: readonly NamedSheet[],
  open: readonly number[],
  turns: FillTask['turns'],
  most: number,
  random: Random,
): readonly (readonly number[])[] {
  const fitTogether = (group: readonly number[]) => {
    const kinds = group.flatMap((sheet) => sheets[sheet]!.placements.map(({ piece }) => piece));
    // Kinds of one outline share their turns.
    const outlines = new Set(kinds.map((kind) => turns[kind]!));
    return kinds.length <= MOST_PIECES && [...outlines].reduce((sum, { length }) => sum + length, 0) <= MOST_SHAPES;
  };
  const order = [...open];
  if (fitTogether(order)) return [order];
  random.shuffle(order);
  const groups: number[][] = [[]];
  for (const sheet of order) {
    const group = groups[groups.length - 1]!;
    if (group.length === 0 || fitTogether([...group, sheet])) group.push(sheet);
    else if (groups.length === most) break;
    else groups.push([sheet]);
  }
  return groups;
}

/** So many sheets at most, each by itself. */
function apartFrom(open: readonly number[], most: number, random: Random): readonly (readonly number[])[] {
  const order = [...open];
  if (order.length > most) random.shuffle(order);
  return order.slice(0, most).map((sheet) => [sheet]);
}

/** Takes pieces that lie once too often off the sheets of a group, and tells the kinds that lie nowhere, one entry each. */
function completed(
  sheets: readonly NamedSheet[],
  group: readonly number[],
  pieces: readonly Piece[],
): { readonly sheets: readonly NamedSheet[]; readonly left: readonly number[] } {
  const missing = pieces.map(({ count }) => count);
  for (const { placements } of sheets) for (const { piece } of placements) missing[piece]!--;
  const next = [...sheets];
  for (const sheet of group) {
    const placements = next[sheet]!.placements.filter(({ piece }) => missing[piece]! >= 0 || ++missing[piece]! > 0);
    next[sheet] = { ...next[sheet]!, placements };
  }
  return {
    sheets: next,
    left: missing.flatMap((count, kind) => Array.from({ length: Math.max(0, count) }, () => kind)),
  };
}

/**
 * The layout with what is left on one more sheet, if that can be cut: in rows, or, where all of it lay on the last sheet
 * before, as it lay there.
 */
function withLast(
  layout: Layout,
  left: readonly number[],
  last: Placements,
  pieces: readonly Piece[],
  format: SheetFormat,
): Layout | undefined {
  const sound = (...sheets: readonly Placements[]) => {
    const whole = { ...layout, sheets: [...layout.sheets, ...sheets] };
    return verifyLayout(pieces, format, whole).length === 0 ? whole : undefined;
  };
  if (left.length === 0) return sound();
  const counts = pieces.map((_, kind) => left.filter((one) => one === kind).length);
  const missing = [...counts];
  const asItLay = last.filter(({ piece }) => missing[piece]! > 0 && missing[piece]!-- > 0);
  const holds = asItLay.length === left.length;
  if (holds && left.length === last.length) return sound(last);
  const rest = pieces.map((piece, kind) => ({ ...piece, count: counts[kind]! }));
  const [inRows, ...more] = quickSheets(rest, format);
  return (inRows && more.length === 0 && sound(inRows)) || (holds ? sound(asItLay) : undefined);
}

/** The quick layout on whole sheets; none where that way of laying finds no place for a piece that lies on one now. */
function quickSheets(pieces: readonly Piece[], format: SheetFormat): readonly Placements[] {
  try {
    return quickLayout(pieces, { ...format, offcuts: [] }).sheets;
  } catch (problem) {
    if (problem instanceof Problem) return [];
    throw problem;
  }
}
