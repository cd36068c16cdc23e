import { fixed } from '../tables/figures';
import { figure, sheetSteps, stepInWords, type Tried } from '../tables/what-if/steps';
import { circle, line, type Mark, type Marks, text } from './mark';
import type { Picture } from './svg';

export interface WhatIfPictureInput {
  /** "Cork 6, Price". */
  readonly name: string;
  readonly unit: string | undefined;
  readonly now: number | undefined;
  /** In the order of their values. */
  readonly tried: readonly Tried[];
  /** What is drawn below the sheets. */
  readonly measure: {
    readonly words: string;
    readonly of: (one: NonNullable<Tried['outcome']>) => number | undefined;
    readonly digits: number;
  };
}

interface Point {
  readonly x: number;
  readonly y: number;
}

const LEFT = 15;
const RIGHT = 4;
const HIGH = 34;
const GAP = 11;
const TOP = 6;
/** Room for one figure below the axis, u. */
const FIGURE = 11;

/**
 * Sheets to buy, and below them another measure, against the values that were tried: a dot a value, today's value on a
 * chain line, and a number where sheets become more or fewer. What has no plan has no dot.
 */
export function whatIfPicture(input: WhatIfPictureInput, width: number): Picture {
  const { name, unit, now, tried, measure } = input;
  const values = tried.map(({ value }) => value);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const room = width - LEFT - RIGHT;
  const x = (value: number) => LEFT + (most > least ? (room * (value - least)) / (most - least) : room / 2);
  const points = (of: (one: NonNullable<Tried['outcome']>) => number | undefined) =>
    tried.flatMap(({ value, outcome }) => {
      const y = outcome && of(outcome);
      return y === undefined ? [] : [{ x: value, y }];
    });
  const below = TOP + HIGH + GAP;
  const foot = below + HIGH;
  const steps = sheetSteps(tried);
  const marks: Mark[] = [
    ...plot(
      'Sheets to buy',
      points(({ sheets }) => sheets),
      x,
      TOP,
      width,
      0,
    ),
    ...plot(measure.words, points(measure.of), x, below, width, measure.digits),
    ...axis(values, x, foot, width, [name, unit].filter(Boolean).join(', ')),
    ...(now === undefined || now < least || now > most ? [] : today(x(now), foot, now)),
    ...numbers(steps.map(({ from, to }) => x((from + to) / 2))),
  ];
  return {
    width,
    height: foot + 14,
    marks,
    label: `${name}, ${values.length} values from ${figure(least)} to ${figure(most)}: sheets to buy and ${measure.words.toLowerCase()}.`,
    facts: [
      ...tried.map(({ value, outcome, why }) => [figure(value), why ?? said(outcome, measure)] as const),
      ...steps.map((step, i) => [`Step ${i + 1}`, stepInWords(step)] as const),
    ],
  };
}

function said(outcome: Tried['outcome'], { words, of, digits }: WhatIfPictureInput['measure']): string {
  const value = outcome && of(outcome);
  return `${outcome?.sheets} sheets to buy${value === undefined ? '' : `, ${words.toLowerCase()} ${fixed(value, digits)}`}`;
}

/** Dots with a narrow line from each to the next, on an axis of its own from the least to the greatest. */
function plot(
  words: string,
  points: readonly Point[],
  x: (value: number) => number,
  top: number,
  width: number,
  digits: number,
): Marks {
  const all = points.map(({ y }) => y);
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const base = top + HIGH;
  // What is the same everywhere lies in the middle.
  const y = (value: number) =>
    most > least ? base - 3 - ((HIGH - 10) * (value - least)) / (most - least) : base - HIGH / 2;
  const ends = most > least ? [least, most] : [least];
  return [
    text(0, top + 1, words, 'bold', 'start'),
    line('narrow', LEFT, base, width - RIGHT, base),
    line('narrow', LEFT, top + 4, LEFT, base),
    ...(points.length === 0
      ? []
      : ends.map((end) => text(LEFT - 1.5, y(end) + 1.2, fixed(end, digits), 'plain', 'end'))),
    ...points.flatMap((one, i): Marks => {
      const next = points[i + 1];
      return next ? [line('narrow', x(one.x), y(one.y), x(next.x), y(next.y))] : [];
    }),
    ...points.map((one) => circle(x(one.x), y(one.y), 0.8, { fill: 'ink' })),
  ];
}

/** A stroke at each value, and its figure where there is room. */
function axis(
  values: readonly number[],
  x: (value: number) => number,
  foot: number,
  width: number,
  words: string,
): Marks {
  let free = -Infinity;
  const strokes = values.flatMap((value): Marks => {
    const at = x(value);
    const stroke = line('narrow', at, foot, at, foot + 1.2);
    if (at < free) return [stroke];
    free = at + FIGURE;
    return [stroke, text(at, foot + 5, figure(value), 'plain', 'middle')];
  });
  return [...strokes, text(width - RIGHT, foot + 11, words, 'quiet', 'end')];
}

function today(at: number, foot: number, now: number): Marks {
  return [
    line('chain', at, TOP + 3, at, TOP + HIGH),
    line('chain', at, TOP + HIGH + GAP + 3, at, foot),
    text(LEFT, foot + 11, `today ${figure(now)}`, 'bold', 'start'),
  ];
}

/** Numbers of the steps, above the upper plot; one that has no room is told below alone. */
function numbers(at: readonly number[]): Marks {
  let free = -Infinity;
  return at.flatMap((one, i): Marks => {
    if (one < free) return [];
    free = one + 4;
    return [text(one, TOP + 6, i + 1, 'bold'), line('narrow', one, TOP + 7, one, TOP + HIGH)];
  });
}
