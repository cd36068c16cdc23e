import { builtThickness, HEADINGS, type Layer } from '../../core/bottom/layer';
import { skiveThen } from '../../core/bottom/skive-then';
import { fold } from '../../core/plan/codes';
import type { SizeRun, StyleRun } from '../../core/plan/runs';
import { PART_WORDS } from '../../tables/words';
import { given, type Given, step } from '../working';
import { cell, type ColumnWorking, type ColumnWorkings, type Context, pairsOf } from './context';

/** What pieces and steps of a ticket have in common. */
export interface LayerLine {
  readonly run: StyleRun;
  readonly sizeRun: SizeRun;
  readonly layer: Layer;
}

/** Name of the column of Styles that names the stock of a part. */
const STYLE_COLUMNS = {
  insole: 'insole',
  welt: 'welt',
  midsole: 'midsole',
  sole: 'sole',
  lift: 'lifts',
  platform: 'platform',
  outsole: 'outsole',
  topPiece: 'topPiece',
  cover: 'cover',
} as const;

const stockNamed = (context: Context, { run, layer }: LayerLine): Given =>
  cell(context, 'styles', run.style.row, STYLE_COLUMNS[layer.part]);

export function stockRow({ plan }: Context, code: string): number {
  return plan.input.stock.find((one) => fold(one.code) === fold(code))?.row ?? 1;
}

/** The measures of a last that shape a piece, and what a style adds to its edge. */
function shapeGiven(context: Context, { run, sizeRun }: LayerLine): readonly Given[] {
  const { row } = run.last;
  return [
    given(undefined, 'Size', sizeRun.size),
    ...(['length', 'heelHeight', 'tread', 'waist', 'seat'] as const).map((name) => cell(context, 'lasts', row, name)),
    ...(['lastedSubstance', 'projection', 'roundingAllowance', 'skiveTo'] as const).map((name) =>
      cell(context, 'styles', run.style.row, name),
    ),
  ];
}

/** Columns that Pieces and Ticket share. */
export const layerColumns: ColumnWorkings<LayerLine> = {
  Size: ({ run, sizeRun }, context) => ({
    given: pairsOf(context, run.style.code, sizeRun.size),
    what: 'The size that the pairs stand under in Pairage',
  }),
  'No.': ({ layer: { part, follows } }) => ({
    what:
      part !== 'lift'
        ? 'Number of the piece on ticket and pictures: after the lifts come what lies under them, what lies over them, welt and cover'
        : follows
          ? 'Number of the lift on ticket and pictures: bent lifts count from the last downward'
          : 'Number of the lift on ticket and pictures: flat lifts count from the ground up',
  }),
  Piece: (line, context) => ({
    given: [stockNamed(context, line)],
    what: 'What the piece is, by the column of Styles that names its stock',
  }),
  Stock: (line, context) => ({
    given: [stockNamed(context, line)],
    what: `Stock named under ${HEADINGS[line.layer.part]}`,
  }),
  'Thick mm': (line, context) => {
    const { layer } = line;
    const row = stockRow(context, layer.stock);
    return {
      given: [
        ...(['nominal', 'measured', 'faceLoss'] as const).map((name) => cell(context, 'stock', row, name)),
        stockNamed(context, line),
      ],
      what: 'Thickness that it is cut with: as measured, else as sold, less what its faces lose',
    };
  },
  'Down to mm': ({ layer }) => ({
    steps: [
      step('t', 'Thickness of the piece', undefined, layer.thickness, 'mm'),
      step(
        'r',
        `${layer.sawn ? 'Sawn' : 'Rasped'} off, so that the height comes out`,
        undefined,
        layer.rasped ?? 0,
        'mm',
      ),
    ],
    what: 'Thickness that it has once it is built in',
    formula: 't − r',
  }),
  'Length mm': (line, context) => ({
    given: shapeGiven(context, line),
    steps: line.layer.lift
      ? [
          step('a', 'Lower face over the ground face of the lifts', undefined, line.layer.lift.lower, 'mm'),
          step(
            'f',
            'It ends there along the ground, where the bottom stands at its lower face and what it is skived to',
            undefined,
            line.layer.lift.front,
            'mm',
          ),
        ]
      : [],
    what: line.layer.lift
      ? 'Length of the box about its outline: to its end, with what is let out at the back and a slanting front'
      : line.layer.follows
        ? 'Length of the box about its outline, let out from the last, along the bottom'
        : 'Length of the box about its outline, let out from the last, along the ground',
    source: outlineSource(line.layer),
  }),
  'Width mm': (line, context) => ({
    given: shapeGiven(context, line),
    what: 'Width of the box about its outline',
    source: outlineSource(line.layer),
  }),
  'Skive mm': (line, context) => skived(line, context, 'width'),
  'Angle °': (line, context) => skived(line, context, 'angle'),
  'Skive to mm': (line, context) => skived(line, context, 'edge'),
};

/** Where the outline of a piece comes from. */
function outlineSource({ part }: Layer): string {
  if (part === 'cover') return 'derived: the edge once it is rasped, less the cover, unrolled, with its turns and laps';
  if (part === 'topPiece') return 'derived: ground face of the heel, out to its cover’s outside, + rounding allowance';
  return 'derived: last outline + lasted substance + projection − cover + rounding allowance';
}

/**
 * A skive as it is when it is made.
 * @param skive with the thickness that the piece has by then
 */
export function skived(
  { run, layer }: LayerLine,
  context: Context,
  wanted: 'width' | 'angle' | 'edge',
  skive = skiveThen(layer),
): ColumnWorking {
  const styles = run.style.row;
  const { lift } = layer;
  const [thickness, edge, width] = [skive?.thickness ?? 0, skive?.edge ?? 0, skive?.width ?? 0];
  const t = step('t', 'Thickness that the piece has when it is skived', undefined, thickness, 'mm');
  const e = step('e', 'What it is skived to then', undefined, edge, 'mm');
  const round = layer.skive?.at === 'edge';
  if (wanted === 'edge')
    return skivedTo(layer, thickness, cell(context, 'styles', styles, round ? 'soleSkiveTo' : 'skiveTo'));
  if (round) {
    const α = { ...cell(context, 'styles', styles, 'soleSkive', 'α'), unit: '°' };
    if (wanted === 'angle') return { given: [α], what: 'Angle of the skive, as Styles has it', formula: 'α' };
    return { given: [α], steps: [t, e], symbol: 'w', what: 'Width of the skive', formula: '(t − e) / tan(α)' };
  }
  const given = [cell(context, 'styles', styles, 'skiveTo'), cell(context, 'lasts', run.last.row, 'heelHeight')];
  const ends = lift
    ? [
        step('f', `${LIFT_ENDS} and what it is skived to`, undefined, lift.front, 'mm'),
        step('b', 'Its upper face meets the bottom there', undefined, lift.skiveFrom, 'mm'),
      ]
    : [];
  const formula = lift ? 'f − b' : undefined;
  if (wanted === 'width') return { given, steps: ends, symbol: 'w', what: 'Width of the skive', formula };
  return {
    given,
    steps: [t, e, ...ends, step('w', 'Width of the skive', formula, width, 'mm')],
    symbol: 'α',
    what: 'Angle of the skive',
    formula: 'atan((t − e) / w)',
  };
}

const LIFT_ENDS = 'The lift ends there along the ground, where the bottom stands at its lower face';

function skivedTo(layer: Layer, thickness: number, from: Given): ColumnWorking {
  const later = thickness - builtThickness(layer);
  const { edge = 0, face, at } = layer.skive ?? {};
  const what =
    at === 'edge'
      ? 'Left at the skived edge, as Styles has it'
      : 'Left at the skived front: what Styles asks for; more where it stops earlier, less where it still reaches to 15 mm behind the tread';
  if (face !== 'upper' || later < 1e-9) return { given: [from], what };
  return {
    given: [from],
    steps: [
      step('b', what, undefined, edge, 'mm'),
      step('r', `${layer.sawn ? 'Sawn' : 'Rasped'} off its lower face later`, undefined, later, 'mm'),
    ],
    what: 'What it is skived to while that is still on it',
    formula: 'b + r',
  };
}

/** A part's name and number, for steps that list several. */
export function partName({ part, item }: Layer): string {
  return `${PART_WORDS[part]} ${item}`;
}
