import { scopesOf } from '../../core/plan/cost/adhesive';
import type { PieceLine } from '../../core/plan/pieces';
import { Rates } from '../../core/plan/cost/rates';
import type { RateUnit } from '../../core/plan/inputs';
import type { TicketStep } from '../../core/plan/ticket';
import { below } from '../heights';
import { step, type Step } from '../working';
import { type ColumnWorkings, type Context, pairsOf, rate } from './context';
import { layerColumns, partName } from './layer-columns';

const twice = (line: Pick<PieceLine, 'run' | 'sizeRun'>, context: Context) => ({
  given: pairsOf(context, line.run.style.code, line.sizeRun.size),
  steps: [step('p', 'Pairs in this size', undefined, line.sizeRun.pairs)],
  symbol: 'n',
  what: 'Pieces to cut, left and right',
  formula: '2 · p',
});

export const pieceColumns: ColumnWorkings<PieceLine> = {
  ...layerColumns,
  'Area cm²': ({ area }) => ({
    steps: [step('A', 'Area of its outline', undefined, area, 'mm²')],
    what: 'The same in cm²',
    formula: 'A / 100',
    source: 'shoelace formula',
  }),
  'Cut number': twice,
};

/** Thicknesses that stand under a piece's upper face, from the ground up. */
function stack({ layer, sizeRun: { bottom } }: TicketStep, counts: 'underSeat' | 'underTread'): readonly Step[] {
  const parts = bottom.layers.filter(
    (one) => one.item >= layer.item && one[counts] && one.part !== 'welt' && one.part !== 'cover',
  );
  return parts.reverse().map((one, i) => step(`t${below(i + 1)}`, partName(one), undefined, one.thickness, 'mm'));
}

const gauge = (at: 'back' | 'breast' | 'tread'): ColumnWorkings<TicketStep>[string] => {
  return (line) => {
    const steps = stack(line, at === 'tread' ? 'underTread' : 'underSeat');
    const sum = steps.reduce((all, one) => all + Number(one.value), 0);
    const value = line.gauge?.[at] ?? NaN;
    // The face of a skived lift, and a breast, stand lower than all that is glued under them.
    const whole = Math.abs(sum - value) < 1e-9;
    return {
      steps,
      what: whole
        ? 'Height over the ground of its upper face: all that lies under it'
        : 'Height over the ground of its upper face: what lies under it, as far as the last’s bottom lets it stand there',
      formula: whole ? steps.map(({ symbol }) => symbol).join(' + ') : undefined,
      source: 'derived: read with a gauge on the finished bottom',
    };
  };
};

const time = (unit: RateUnit, what: string): ColumnWorkings<TicketStep>[string] => {
  return ({ run, layer }, { plan }) => ({
    given: rate(new Rates(plan.input.rates).row(unit, scopesOf(run.style.code, layer))),
    what,
  });
};

export const ticketColumns: ColumnWorkings<TicketStep> = {
  ...layerColumns,
  'Cut L and R': twice,
  'At back mm': gauge('back'),
  'At breast mm': gauge('breast'),
  'At tread mm': gauge('tread'),
  Coats: time('coats', 'Coats on each face, as in Costs and times; without a row there, 1'),
  'Open min': time('minutes open', 'Minutes from coating to joining, as in Costs and times'),
  'Press min': time('minutes pressed', 'Minutes in the press, as in Costs and times'),
  'What to do': ({ layer }) => ({
    what: `What to do with ${partName(layer).toLowerCase()}, by its part, material and skive`,
  }),
};
