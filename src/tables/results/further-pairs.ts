import type { FillUp, FurtherPair } from '../../core/plan/fill-up';
import type { PieceLine } from '../../core/plan/pieces';
import { figure, MONEY, type ResultTable, words } from '../result';

/** A pair that comes out of the sheets, or what is to be said where none does or not all were tried. */
export type FurtherLine = { readonly pair: FurtherPair } | { readonly note: string; readonly pair?: undefined };

/** Lines of the table, what is to be said last. */
export function furtherLines({ pairs, notTried }: FillUp): readonly FurtherLine[] {
  const lines = pairs.map((pair): FurtherLine => ({ pair }));
  if (notTried > 0) lines.push({ note: notTriedInWords(notTried) });
  else if (pairs.length === 0) lines.push({ note: 'none: a pair more of any style would take more sheets' });
  return lines;
}

export function notTriedInWords(notTried: number): string {
  const are = notTried === 1 ? 'one more style and size was' : `${notTried} more styles and sizes were`;
  return `${are} not tried: it would take too long`;
}

const money = { unit: `${MONEY} a pair`, format: '0.00' } as const;

/** Which further pairs come out of the sheets, and what they cost beyond the stock. */
export const furtherPairsTable = (
  sizeWords: (size: PieceLine['sizeRun']) => string | number = ({ size }) => size,
): ResultTable<FurtherLine> => ({
  name: 'Further pairs',
  meaning: 'Which further pairs come out of the sheets that are taken anyway, each by itself',
  columns: [
    words('Style', (line) => (line.pair ? line.pair.run.style.code : line.note)),
    figure('Size', ({ pair }) => pair && sizeWords(pair.sizeRun), { format: 'General' }),
    figure('In the run', ({ pair }) => pair?.sizeRun.pairs, { unit: 'pairs', format: '0' }),
    figure('Adhesive, paste', ({ pair }) => pair?.cost.adhesiveCost, money),
    figure('Sundries', ({ pair }) => pair?.cost.sundries, money),
    figure('Work', ({ pair }) => pair?.cost.minutes, { unit: 'min a pair' }),
    figure('Work', ({ pair }) => pair?.cost.work, money),
    figure('Spoilage', ({ pair }) => pair?.cost.spoilage, money),
    figure('Beyond stock', ({ pair }) => pair?.cost.pair, { ...money, width: 84 }),
  ],
});
