import type { Style } from '../../bottom/style';
import { derived } from '../../derived';
import { itemAt } from '../../item-at';
import { orderOf } from '../../steps/in-order';
import { timeOnLast } from '../../steps/making';
import { does, isCuttingOut } from '../../steps/operation';
import type { Operation, StepKind } from '../../steps/step';
import { type Bench, timesOfSteps } from '../../steps/steps';
import { furtherWork, type Times } from '../../steps/times';
import { benchOf } from '../bench';
import { stocksOf } from '../finder';
import type { PlanInput } from '../inputs';
import type { SizeRun, StyleRun } from '../runs';

/** What a pair waits for besides the bench. */
export type Wait = 'adhesive' | 'drying' | 'press' | 'lasts' | 'days on last';

/** A step of one pair as the bench's days have it. */
export interface Task {
  /** Its number on the ticket; undefined for work that is of no step. */
  readonly number: number | undefined;
  readonly kind: StepKind | undefined;
  /** Whether it is cutting a piece out. */
  readonly cuts: boolean;
  /** Of work. */
  readonly minutes: number;
  /** By the clock, until what hangs on it may begin, and what that waits for. */
  readonly wait: number;
  readonly waitsFor: Wait;
  /** In the press. */
  readonly pressed: number;
  /** Whether it is done on the last. */
  readonly onLast: boolean;
  /** Whether it frees the last. */
  readonly pulls: boolean;
  /** Of coating: the tasks up to the joining that its films are for, which must not wait for another day. */
  readonly sitting: readonly number[];
  /** Tasks that it waits for, and those that wait for it, by their places. */
  readonly before: readonly number[];
  readonly after: readonly number[];
}

const tasksBefore = derived<StyleRun, ReadonlyMap<SizeRun, readonly Task[]>>('tasks of a run');
/** Another number of pairs leaves the bottoms of a run as they are. */
const tasksOfBottom = derived<SizeRun['bottom'], readonly Task[]>('tasks of a bottom');

/** The tasks of each size of a run, in the order of the bench. */
export function tasksOf(
  run: StyleRun,
  input: Pick<PlanInput, 'rates' | 'stock'>,
): ReadonlyMap<SizeRun, readonly Task[]> {
  const { style, sizes } = run;
  const bench = benchOf(input);
  const from = [input.rates, ...stocksOf(style).map(bench.mouldedFace)];
  const tasks = (size: SizeRun) => tasksOfBottom(size.bottom, [style, ...from], () => tasksOfSize(size, style, bench));
  return tasksBefore(run, from, () => new Map(sizes.map((size) => [size, tasks(size)])));
}

/** The same of pairs that are cut: cutting out, which waits for nothing, is done. */
export function withoutCutting(tasks: readonly Task[]): readonly Task[] {
  const left = tasks.filter(({ cuts }) => !cuts);
  const moved = (all: readonly number[]) =>
    all.map((place) => left.indexOf(itemAt(tasks, place))).filter((place) => place >= 0);
  return withAfter(left.map((task) => ({ ...task, sitting: moved(task.sitting), before: moved(task.before) })));
}

function tasksOfSize({ bottom }: SizeRun, style: Style, bench: Bench): readonly Task[] {
  const steps = timesOfSteps(bottom, style, bench);
  return withFurtherWork(tasksOfSteps(steps), furtherWork(style.code, bench.rates).minutes);
}

type Timed = Operation & Pick<Times, 'minutes' | 'wait' | 'pressed'>;

/** Steps in the order of the bench; a face is coated only when nothing else is left to wait for before it is joined. */
export function tasksOfSteps(steps: readonly Timed[]): readonly Task[] {
  const order = orderOf(steps);
  const all = order.places.map((place) => itemAt(steps, place));
  const { begun, until } = timeOnLast(steps, order);
  const before = order.before.map((list) => new Set(list));
  const sittings = all.map((step, i) => sittingOf(all, step, i));
  sittings.forEach((sitting, i) => {
    for (const one of sitting) for (const earlier of order.before[one]!) if (earlier < i) before[i]!.add(earlier);
  });
  return withAfter(
    all.map((step, i) => ({
      number: i + 1,
      kind: step.kind,
      cuts: isCuttingOut(step),
      minutes: step.minutes,
      wait: step.wait?.value ?? 0,
      waitsFor: does(step, 'mellow', 'dry', 'cool') ? 'drying' : 'adhesive',
      pressed: step.pressed?.value ?? 0,
      onLast: begun[i] === true,
      pulls: i === until,
      sitting: sittings[i]!,
      before: [...before[i]!].sort((a, b) => a - b),
    })),
  );
}

/** Places of what follows a coating in its joint, up to the joining itself. */
function sittingOf(all: readonly Timed[], step: Timed, at: number): readonly number[] {
  if (!step.joint || !does(step, 'coat')) return [];
  const own = all.flatMap((one, i) => (i > at && one.joint === step.joint ? [i] : []));
  const joins = own.findIndex((i) => does(itemAt(all, i), 'join'));
  return own.slice(0, joins + 1);
}

/** Work of no step is done first: before the pair goes on its last. */
function withFurtherWork(tasks: readonly Task[], minutes: number): readonly Task[] {
  if (minutes === 0) return tasks;
  const later = (places: readonly number[]) => places.map((place) => place + 1);
  const first = {
    number: undefined,
    kind: undefined,
    cuts: false,
    minutes,
    wait: 0,
    waitsFor: 'adhesive' as const,
    pressed: 0,
    onLast: false,
    pulls: false,
    sitting: [],
    before: [],
  };
  const others = tasks.map((task) => ({
    ...task,
    sitting: later(task.sitting),
    before: [...(task.onLast ? [0] : []), ...later(task.before)],
  }));
  return withAfter([first, ...others]);
}

function withAfter(tasks: readonly Omit<Task, 'after'>[]): readonly Task[] {
  const after = tasks.map((): number[] => []);
  tasks.forEach(({ before }, i) => {
    for (const earlier of before) after[earlier]!.push(i);
  });
  // Written out, so that the engine knows all tasks by one shape, wherever they come from: days ask for little else.
  return tasks.map((task, i) => ({
    number: task.number,
    kind: task.kind,
    cuts: task.cuts,
    minutes: task.minutes,
    wait: task.wait,
    waitsFor: task.waitsFor,
    pressed: task.pressed,
    onLast: task.onLast,
    pulls: task.pulls,
    sitting: task.sitting,
    before: task.before,
    after: after[i]!,
  }));
}
