import { dayInWords } from '../tables/day';
import { DAY, type Given, type WorkedStep, type Working } from './working';

/** A symbol within a formula: one letter, with a figure or letter below it. */
const SYMBOL = /[A-Za-zα-ωΑ-Ω][₀-₉ₐ-ₜ]*(?![A-Za-zα-ωΑ-Ω])/gu;

/** A figure as people write it: six digits that count, a true minus. */
export function figure(value: number): string {
  // What should be nothing is a hair beside it in binary.
  const rounded = Math.abs(value) < 1e-9 ? 0 : Number(value.toPrecision(6));
  const text = Math.abs(rounded) < 1e15 ? String(rounded) : rounded.toExponential();
  return text.replace('-', '−');
}

/** A step as it is shown: in symbols, with its figures, and what comes out. */
export interface StepInFigures {
  readonly what: string;
  readonly symbols: string | undefined;
  readonly numbers: string | undefined;
  /** What comes out, with its unit, after an equals sign or its symbol. */
  readonly result: string | undefined;
}

/** All steps of a working as they are shown. */
export function inFigures({ given, steps }: Working): readonly StepInFigures[] {
  const known = new Map<string, Given | WorkedStep>();
  for (const one of given) if (one.symbol) known.set(one.symbol, one);
  return steps.map((one): StepInFigures => {
    const { what, symbol, formula, unit, value } = one;
    const named = symbol ? `${symbol} = ` : '';
    const plainUnit = unit === undefined || unit === '' || unit === 'number' ? undefined : unit;
    const shown = {
      what,
      symbols: formula === undefined ? undefined : `${named}${formula}`,
      numbers: formula === undefined ? undefined : `${named}${withNumbers(formula, known)}`,
      result: resultOf(value, formula === undefined ? named : '= ', plainUnit),
    };
    if (symbol) known.set(symbol, one);
    return shown;
  });
}

/** A figure with its unit, as people write it; a day as a date. */
export function measure(value: number | string, unit: string | undefined): string {
  if (unit === DAY && typeof value === 'number') return dayInWords(value);
  const text = typeof value === 'number' ? figure(value) : value;
  return unit === undefined ? text : `${text}${unit === '°' || unit === '%' ? '' : ' '}${unit}`;
}

function resultOf(value: unknown, named: string, unit: string | undefined): string | undefined {
  return typeof value === 'number' || typeof value === 'string' ? `${named || '= '}${measure(value, unit)}` : undefined;
}

function withNumbers(formula: string, known: ReadonlyMap<string, Given | WorkedStep>): string {
  const words = /[A-Za-z]{2,}/g;
  const kept = [...formula.matchAll(words)].map(({ index, 0: { length } }) => [index, index + length] as const);
  return formula.replace(SYMBOL, (symbol, at: number) => {
    const one = kept.some(([from, to]) => at >= from && at < to) ? undefined : known.get(symbol);
    if (!one || typeof one.value !== 'number') return symbol;
    if (one.unit === DAY) return dayInWords(one.value);
    const shown = `${figure(one.value)}${one.unit === '°' ? '°' : ''}`;
    return one.value < 0 ? `(${shown})` : shown;
  });
}
