import { itemAt } from '../../core/item-at';
import type { Style } from '../../core/bottom/style';
import { scopesOf } from '../../core/steps/times';
import type { PieceLine } from '../../core/plan/pieces';
import { ratesOf } from '../../core/plan/cost/rates';
import type { RateUnit } from '../../core/plan/inputs';
import type { TicketStep } from '../../core/plan/ticket';
import { below } from '../heights';
import { step, type WorkedStep } from '../working';
import { type ColumnWorking, type ColumnWorkings, type Context, pairsOf, rate } from './context';
import { layerColumns, type LayerLine, partName, skived } from './layer-columns';

const twice = (
  line: Pick<PieceLine, 'run' | 'sizeRun'>,
  context: Context,
  pairs: readonly WorkedStep[] = [step('p', 'Pairs in this size', undefined, line.sizeRun.pairs)],
): ColumnWorking => ({
  given: pairsOf(context, line.run.style.code, line.sizeRun.size),
  steps: pairs,
  symbol: 'n',
  what: 'Pieces to cut, left and right',
  formula: '2 · p',
});

const stillToCut = (line: Pick<PieceLine, 'run' | 'sizeRun'>, context: Context): ColumnWorking => {
  const { pairs, toCut } = line.sizeRun;
  if (toCut === pairs) return twice(line, context);
  return twice(line, context, [
    step('P', 'Pairs in this size', undefined, pairs),
    step('c', 'Pairs of rows that are cut already', undefined, pairs - toCut),
    step('p', 'Pairs to cut', 'P − c', toCut),
  ]);
};

export const pieceColumns: ColumnWorkings<PieceLine> = {
  ...layerColumns,
  'Area cm²': ({ area }) => ({
    steps: [step('A', 'Area of its outline', undefined, area, 'mm²')],
    what: 'The same in cm²',
    formula: 'A / 100',
    source: 'shoelace formula',
  }),
  'Cut number': stillToCut,
};

/** The one piece that a step is done to, as a line of pieces has it. */
const alone = ({ run, sizeRun, step: { pieces } }: TicketStep): LayerLine => ({
  run,
  sizeRun,
  layer: itemAt(pieces, 0),
});

/** A column that a step has of its piece, as Pieces has it. */
const ofPiece = (column: keyof typeof layerColumns): ColumnWorkings<TicketStep>[string] => {
  return (line, context) =>
    line.step.pieces.length > 0
      ? (layerColumns[column] as ColumnWorkings<LayerLine>[string])(alone(line), context)
      : { what: 'A step of the whole shoe has no piece' };
};

const heightAt = (at: 'back' | 'breast' | 'tread'): ColumnWorkings<TicketStep>[string] => {
  return ({ run, step: { height } }) => {
    if (at === 'breast' && run.style.raise !== 'heel') return { what: 'A heel alone has a breast' };
    const parts = height?.parts[at] ?? [];
    const listed = parts.map(({ piece, adds }, i) =>
      step(`t${below(i + 1)}`, `${partName(piece)}, as thick there as it is by then`, undefined, adds, 'mm'),
    );
    const [place, name] = at === 'tread' ? (['tread', 'Welt'] as const) : (['back', weltAtSeat(run.style)] as const);
    const welt = height?.[at] === undefined ? undefined : height.welt?.[place];
    const steps = welt === undefined ? listed : [...listed, step('w', name, undefined, welt, 'mm')];
    return {
      steps,
      what: 'Height after the step of what is joined by then: off the last from its ground face, on it from the feather edge',
      formula: steps.map(({ symbol }) => symbol).join(' + '),
      source: 'derived: only what is under that face is added up',
    };
  };
};

/** What stands for a welt that ends at the seat. */
function weltAtSeat({ weltEnds }: Style): string {
  return weltEnds === 'at the seat' ? 'Packing of the seat, level with the welt' : 'Welt';
}

const skiveMade = (wanted: 'width' | 'angle' | 'edge'): ColumnWorkings<TicketStep>[string] => {
  return (line, context) =>
    line.step.skive
      ? skived(alone(line), context, wanted, line.step.skive)
      : { what: 'Nothing is skived in this step' };
};

const time = (unit: RateUnit, own: (step: TicketStep['step']) => boolean, what: string) => {
  return ({ run, step: line }: TicketStep, { plan }: Context): ColumnWorking => {
    const rates = ratesOf(plan.input.rates);
    const scopes = line.pieces.map((piece) => scopesOf(run.style.code, piece));
    const rows = [...new Set((scopes.length > 0 ? scopes : [[run.style.code]]).map((one) => rates.row(unit, one)))];
    return {
      given: own(line) ? rows.flatMap((row) => rate(row)) : [],
      what: own(line)
        ? `${what}, as in Costs and times`
        : `${what}: usual for the adhesive, where Costs and times is silent`,
      source: own(line) ? 'derived: it follows from the tables' : 'common practice: makers’ sheets go before it',
    };
  };
};

export const ticketColumns: ColumnWorkings<TicketStep> = {
  Size: ({ run, sizeRun }, context) => ({
    given: pairsOf(context, run.style.code, sizeRun.size),
    what: 'The size that the pairs have in Pairage',
  }),
  Step: () => ({ what: 'Its place in the order of the bench: what must come before what decides it' }),
  Kind: () => ({ what: 'What kind of work it is' }),
  Pieces: () => ({ what: 'What it is done to, by part and number' }),
  Stock: ofPiece('Stock'),
  'Thick mm': ofPiece('Thick mm'),
  'Down to mm': ({ step: { pieces } }) => {
    const low = pieces.at(-1);
    const less = low?.rasped ?? 0;
    return {
      steps: [
        step('t', 'Thickness of the piece that it comes off', undefined, low?.thickness ?? 0, 'mm'),
        step('r', 'What the height is built too high', undefined, less, 'mm'),
      ],
      what: 'Thickness that is left of it',
      formula: 't − r',
    };
  },
  'Length mm': ofPiece('Length mm'),
  'Width mm': ofPiece('Width mm'),
  'Skive mm': skiveMade('width'),
  'Angle °': skiveMade('angle'),
  'Skive to mm': skiveMade('edge'),
  'Cut L and R': stillToCut,
  'At back mm': heightAt('back'),
  'At breast mm': heightAt('breast'),
  'At tread mm': heightAt('tread'),
  Coats: time('coats', ({ usualCoats }) => !usualCoats, 'Coats on each face; the most, where faces differ'),
  'Open min': time('minutes open', ({ open }) => open?.usual === false, 'Minutes from coating to joining'),
  'Press min': time('minutes pressed', ({ pressed }) => pressed?.usual === false, 'Minutes in the press'),
  'Wait min': time('minutes waited', ({ wait }) => wait?.usual === false, 'Minutes until the next step'),
  'Work min a pair': () => ({
    what: 'Minutes of work on a pair: what is counted by piece, skive and joint on both feet, and its share of what is counted by the pair for its kind of step, of finishing the edges alone',
  }),
  'What to do': () => ({ what: 'What to do, by its pieces, their materials and faces' }),
  'Look for': () => ({ what: 'What to look for when it is done' }),
  Care: () => ({ what: 'What can hurt somebody in it' }),
};
