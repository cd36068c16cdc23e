import type { Given, Step, Working } from './working';

/** A symbol within a formula: one letter, with a figure or letter below it. */
const SYMBOL = /[A-Za-zα-ωΑ-Ω][₀-₉ₐ-ₜ]*(?![A-Za-zα-ωΑ-Ω])/gu;

/** A figure as people write it: six digits that count, a true minus. */
export function figure(value: number): string {
  const rounded = Number(value.toPrecision(6));
  const text = Math.abs(rounded) < 1e15 ? String(rounded) : rounded.toExponential();
  return text.replace('-', '−');
}

/** A step as it is shown: in symbols, with the numbers put in, and what comes out. */
export interface StepInFigures {
  readonly what: string;
  readonly symbols: string | undefined;
  readonly numbers: string | undefined;
  /** The figure or word that comes out, without its unit; undefined for a table. */
  readonly result: string | undefined;
  readonly unit: string | undefined;
}

/** All steps of a working as they are shown. */
export function inFigures({ given, steps }: Working): readonly StepInFigures[] {
  const known = new Map<string, Given | Step>();
  for (const one of given) if (one.symbol) known.set(one.symbol, one);
  return steps.map((one): StepInFigures => {
    const { what, symbol, formula, unit, value } = one;
    const named = symbol ? `${symbol} = ` : '';
    const shown = {
      what,
      symbols: formula === undefined ? undefined : `${named}${formula}`,
      numbers: formula === undefined ? undefined : `${named}${withNumbers(formula, known)}`,
      result: typeof value === 'number' ? figure(value) : typeof value === 'string' ? value : undefined,
      unit: unit === '' ? undefined : unit,
    };
    if (symbol) known.set(symbol, one);
    return shown;
  });
}

/** The symbols of a formula, in their order. */
export function symbolsIn(formula: string): readonly string[] {
  return [...formula.matchAll(SYMBOL)].map(([symbol]) => symbol).filter((symbol) => symbol !== 'π');
}

function withNumbers(formula: string, known: ReadonlyMap<string, Given | Step>): string {
  const words = /[A-Za-z]{2,}/g;
  const kept = [...formula.matchAll(words)].map(({ index, 0: { length } }) => [index, index + length] as const);
  return formula.replace(SYMBOL, (symbol, at: number) => {
    const one = kept.some(([from, to]) => at >= from && at < to) ? undefined : known.get(symbol);
    if (!one || typeof one.value !== 'number') return symbol;
    const shown = `${figure(one.value)}${one.unit === '°' ? '°' : ''}`;
    return one.value < 0 ? `(${shown})` : shown;
  });
}
