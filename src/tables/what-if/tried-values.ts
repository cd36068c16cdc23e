/** More values than these are not planned one after the other. */
export const MOST_VALUES = 48;

/** What the maker enters: a range, or single values in the place of it. */
export interface Range {
  readonly from: string;
  readonly to: string;
  readonly step: string;
  readonly list: string;
}

/**
 * Values to try, rising, each once, today's among them.
 * @returns what to enter otherwise, as a sentence, where they cannot be told
 */
export function triedValues({ from, to, step, list }: Range, now: number | undefined): readonly number[] | string {
  const values = list.trim() === '' ? between(numberIn(from), numberIn(to), numberIn(step)) : listed(list);
  if (typeof values === 'string') return values;
  const all = [...new Set([...values, ...(now === undefined ? [] : [now])])].sort((a, b) => a - b);
  if (all.length > MOST_VALUES) return `These are ${all.length} values; try no more than ${MOST_VALUES} at once.`;
  return all;
}

function between(from: number, to: number, step: number): readonly number[] | string {
  if (!Number.isFinite(from) || !Number.isFinite(to)) return 'Enter a number for From and one for To.';
  if (!(step > 0)) return 'Enter a step of more than 0.';
  if (to < from) return 'To is less than From; enter them the other way round.';
  const count = Math.floor((to - from) / step + 1e-9) + 1;
  if (count > MOST_VALUES)
    return `These are ${count} values; try no more than ${MOST_VALUES} at once: a larger step, or a shorter range.`;
  return Array.from({ length: count }, (_, i) => tidy(from + i * step));
}

function listed(list: string): readonly number[] | string {
  const parts = list.split(/[;\s]+|,\s+/).filter(Boolean);
  const wrong = parts.find((part) => !Number.isFinite(numberIn(part)));
  return wrong === undefined ? parts.map(numberIn) : `"${wrong}" is no number; separate the values by semicolons.`;
}

/** A number with a point or a comma; NaN where it is none. */
function numberIn(words: string): number {
  const said = words.trim().replace(',', '.').replace('−', '-');
  return said === '' ? NaN : Number(said);
}

/** Without what adding up parts of ten leaves behind. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}

/** A range to begin with: five steps to both sides of today's value, none below 0. */
export function usualRange(now: number | undefined, whole: boolean): Range {
  const at = now ?? 0;
  const rough = Math.abs(at) / 20;
  const power = 10 ** Math.floor(Math.log10(rough || 1));
  const step = whole
    ? Math.max(1, Math.round(rough))
    : rough > 0
      ? ([1, 2, 5, 10].find((one) => one * power >= rough - 1e-12) ?? 10) * power
      : 1;
  const [from, to] = [Math.max(0, tidy(at - 5 * step)), tidy(at + 5 * step)];
  return { from: String(from), to: String(to), step: String(tidy(step)), list: '' };
}
