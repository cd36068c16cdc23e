import { itemAt } from '../../core/item-at';
import type { SizeRun } from '../../core/plan/runs';
import type { TicketStep } from '../../core/plan/ticket';
import { decimals } from '../../tables/figures';
import { stepInWords } from '../../tables/step-in-words';

/** The steps of sizes that are made alike, and what differs between them. */
export interface StepsBySize {
  readonly sizes: readonly SizeRun[];
  readonly steps: readonly StepBySize[];
}

export interface StepBySize {
  /** Of the first of the sizes. */
  readonly line: TicketStep;
  /** What to do; a figure that differs between the sizes is a letter in brackets. */
  readonly words: string;
  readonly figures: readonly FigureBySize[];
}

export interface FigureBySize {
  /** "[a]" as in the words, or where a height is measured. */
  readonly what: string;
  /** One a size, in their order. */
  readonly values: readonly string[];
}

const FIGURE = /\d+(?:\.\d+)?/g;

/** Sizes whose steps are the same but for figures, together; the steps of each in the order of the bench. */
export function stepsBySize(lines: readonly TicketStep[]): readonly StepsBySize[] {
  const bySize = grouped(lines, ({ sizeRun }) => sizeRun);
  const alike = grouped([...bySize], ([, steps]) => steps.map(kindOf).join('\n'));
  return [...alike.values()].map((sizes) => {
    const [, first = []] = sizes[0] ?? [];
    return {
      sizes: sizes.map(([size]) => size),
      steps: first.map((_, at) => together(sizes.map(([, steps]) => itemAt(steps, at)))),
    };
  });
}

/** All of a step but figures in its words and heights. */
function kindOf(line: TicketStep): string {
  const { kind, pieces, coats, open, pressed, wait, looks, height } = line.step;
  return JSON.stringify([
    kind,
    pieces.map(({ part, item, stock }) => [part, item, stock]),
    [coats, open?.value, pressed?.value, wait?.value, looks],
    [height?.back, height?.tread].map((one) => one === undefined),
    stepInWords(line).replace(FIGURE, '0'),
  ]);
}

function together(lines: readonly TicketStep[]): StepBySize {
  const said = lines.map(stepInWords);
  const given = said.map((words) => words.match(FIGURE) ?? []);
  const figures: FigureBySize[] = [];
  let at = 0;
  const words = (said[0] ?? '').replace(FIGURE, (figure) => {
    const values = given.map((all) => all[at] ?? '');
    at++;
    if (values.every((value) => value === figure)) return figure;
    const what = `[${String.fromCharCode(97 + figures.length)}]`;
    figures.push({ what, values });
    return what;
  });
  const heights = (['back', 'tread'] as const).flatMap((where): readonly FigureBySize[] => {
    const values = lines.map(({ step }) => step.height?.[where]);
    return values.includes(undefined)
      ? []
      : [{ what: `at ${where}`, values: values.map((value) => decimals(value ?? 0, 1)) }];
  });
  return { line: itemAt(lines, 0), words, figures: [...figures, ...heights] };
}

function grouped<T, K>(list: readonly T[], keyOf: (one: T) => K): ReadonlyMap<K, readonly T[]> {
  const groups = new Map<K, T[]>();
  for (const one of list) {
    const key = keyOf(one);
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return groups;
}
