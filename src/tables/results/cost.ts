import type { CostLine } from '../../core/plan/cost/cost';
import { makeOrBuy } from '../../core/plan/cost/make-or-buy';
import { allInWords, leftOutBeside, nameInWords, whyInWords } from '../left-out-in-words';
import { figure, MONEY, type ResultTable, sumOf, words } from '../result';

/** Adhesive and paste of a style's whole run, litres, and its bench time, hours: what to have at hand before beginning. */
const litresOf =
  (kind: 'adhesive' | 'paste') =>
  ({ [kind]: ml, run }: CostLine): number | undefined =>
    ml === undefined ? undefined : (ml * run.pairs) / 1000;
const litres = (kind: 'adhesive' | 'paste') => {
  const of = litresOf(kind);
  return [of, { unit: 'l, the run', format: '0.00', total: sumOf((line: CostLine) => of(line) ?? 0) }] as const;
};
const hoursOf = ({ hours }: CostLine) => hours;

/** What a pair and the run cost, by style. */
export const costTable: ResultTable<CostLine> = {
  name: 'Cost',
  meaning: 'What a pair costs in stock, adhesive, sundries and work, by style',
  columns: [
    words('Style', ({ run }) => run.style.code, { total: allInWords, leftOut: nameInWords }),
    words('Last', ({ run }) => run.last.code, { width: 130, leftOut: leftOutBeside('Why left out') }),
    figure('Pairs', ({ run }) => run.pairs, { unit: 'number', format: '0', total: sumOf(({ run }) => run.pairs) }),
    figure('Stock', ({ stock }) => stock, { unit: `${MONEY} a pair`, format: '0.00' }),
    figure('Adhesive', ({ adhesive }) => adhesive, { unit: 'ml a pair' }),
    figure('Paste', ({ paste }) => paste, { unit: 'ml a pair' }),
    figure('Adhesive, paste', ({ adhesiveCost }) => adhesiveCost, { unit: `${MONEY} a pair`, format: '0.00' }),
    figure('Sundries', ({ sundries }) => sundries, { unit: `${MONEY} a pair`, format: '0.00' }),
    figure('Work', ({ minutes }) => minutes, { unit: 'min a pair', format: '0' }),
    figure('Work', ({ work }) => work, { unit: `${MONEY} a pair`, format: '0.00' }),
    figure('Spoilage', ({ spoilage }) => spoilage, { unit: `${MONEY} a pair`, format: '0.00' }),
    figure('Weight', ({ weight }) => weight, { unit: 'g a pair', format: '0' }),
    figure('Cost', ({ pair }) => pair, { unit: `${MONEY} a pair`, format: '0.00' }),
    figure('The run', ({ whole }) => whole, {
      unit: MONEY,
      format: '0.00',
      width: 84,
      total: sumOf(({ whole }) => whole),
    }),
    figure('Adhesive', ...litres('adhesive')),
    figure('Paste', ...litres('paste')),
    figure('Work', hoursOf, { unit: 'h left, the run', format: '0.0', total: sumOf(hoursOf) }),
    figure('Bought', (line) => makeOrBuy(line)?.buy, { unit: `${MONEY} a pair`, format: '0.00' }),
    // The last, so that no neighbour cuts it off.
    words('Why left out', () => undefined, { width: 130, leftOut: whyInWords }),
  ],
};
