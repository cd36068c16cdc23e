import { areaWithRoom, leastByArea, offcutsHold } from '../../core/cutting/sheet/least-sheets';
import { sheetArea } from '../../core/stock/stock';
import { commonGround } from '../../core/plan/common-ground';
import type { StockCutting } from '../../core/plan/cutting';
import { offersTable } from '../../tables/offers';
import { below } from '../heights';
import { type Given, step, type WorkedStep } from '../working';
import { cell, type ColumnWorkings, type Context, pairsOf } from './context';

const net = ({ net: area }: StockCutting) => step('N', 'Net area of all pieces', undefined, area, 'mm²');
const sheet = ({ stock }: StockCutting) =>
  step(
    'A',
    stock.natural ? 'Area of a sheet, by its traced outline' : 'Area of a sheet',
    undefined,
    sheetArea(stock),
    'mm²',
  );
const sheets = ({ sheets: whole, source }: StockCutting) =>
  step(
    'n',
    source === 'rows' ? 'Sheets, pieces laid in quick rows' : 'Sheets of the layout that the search wrote down',
    undefined,
    whole,
  );
/** Area of the offcuts that pieces lie on, where there are any. */
const offcuts = ({ offcuts: used }: StockCutting) =>
  used.length > 0
    ? [
        step(
          'O',
          'Area of the offcuts used',
          undefined,
          used.reduce((sum, one) => sum + one.length * one.width, 0),
          'mm²',
        ),
      ]
    : [];
/** Area of all sheets and offcuts, in symbols. */
const whole = ({ offcuts: used }: StockCutting) => (used.length > 0 ? 'n · A + O' : 'n · A');
const ground = (one: StockCutting) =>
  step('G', 'Area of the boxes about the pieces of each sheet', undefined, one.ground, 'mm²');

function format(context: Context, { stock }: StockCutting): readonly Given[] {
  const names = ['width', 'length', 'knifeRoom', 'edgeTrim', 'direction', 'usableShare'] as const;
  return names.map((name) =>
    stock.offer !== undefined && name in offersTable.columns
      ? cell(context, 'offers', stock.offer, name)
      : cell(context, 'stock', stock.row, name),
  );
}

/** Pieces of each style that are cut from a stock, one symbol a style. */
function byStyle({ lines, pieces }: StockCutting): { readonly steps: readonly WorkedStep[]; readonly sum: string } {
  const counts = new Map<string, number>();
  for (const [i, { run }] of lines.entries()) {
    // Left and right, as many as lie on sheets of this format.
    const here = [2 * i, 2 * i + 1].reduce((sum, piece) => sum + (pieces[piece]?.count ?? 0), 0);
    if (here > 0) counts.set(run.style.code, (counts.get(run.style.code) ?? 0) + here);
  }
  const steps = [...counts].map(([style, count], i) =>
    step(`p${below(i + 1)}`, `Pieces of ${style}: two for each pair to cut and piece`, undefined, count),
  );
  return { steps, sum: steps.map(({ symbol }) => symbol).join(' + ') };
}

/** What is filled before whole sheets of the format, where there is any. */
function besides(one: StockCutting): readonly WorkedStep[] {
  const area = offcutsHold(commonGround(one).format);
  const other = (one.beside ?? []).length === 0 ? '' : ' and on the sheets of other formats';
  return area > 0 ? [step('Q', `Room on the offcuts${other}`, undefined, area, 'mm²')] : [];
}

export const cuttingColumns: ColumnWorkings<StockCutting> = {
  Stock: ({ stock }, context) => ({
    given: [cell(context, 'stock', stock.row, 'code')],
    what: 'The sheet, as in Bottom stock',
  }),
  'Thick mm': ({ stock }, context) => ({
    given: (['nominal', 'measured', 'faceLoss'] as const).map((name) => cell(context, 'stock', stock.row, name)),
    what: 'As measured, else as sold, less what its faces lose',
  }),
  'Pieces number': (one, context) => {
    const { steps, sum } = byStyle(one);
    const styles = [...new Set(one.lines.map(({ run }) => run.style.code))];
    return {
      given: styles.flatMap((style) => pairsOf(context, style)),
      steps,
      what: 'All pieces from this sheet',
      formula: sum,
    };
  },
  Sheets: (one, context) => ({
    given: format(context, one),
    steps: [net(one), sheet(one), ...besides(one), step('m', 'No fewer sheets would be enough', undefined, one.least)],
    what:
      one.source === 'rows'
        ? 'Sheets that the quick rows take, each piece checked'
        : 'Sheets of the layout in Layouts, each piece checked anew',
    source: 'rows of pieces of all sizes (derived); the search’s layout where Layouts holds one',
  }),
  'Least possible': (one, context) => {
    const { stock } = one;
    const { pieces, format: room } = commonGround(one);
    const onOffcuts = offcutsHold(room);
    const byArea = stock.natural ? one.least : leastByArea(pieces, room);
    return {
      given: format(context, one),
      steps: [
        ...(stock.natural
          ? []
          : [
              step(
                'P',
                'Area of all pieces, let out by half the knife room',
                undefined,
                areaWithRoom(pieces, room),
                'mm²',
              ),
            ]),
        ...besides(one),
        ...(byArea < one.least ? [step('q', 'Sheets that the area alone asks for', undefined, byArea)] : []),
      ],
      what:
        byArea < one.least
          ? 'No fewer sheets can hold them: however they lie, larger pieces leave room that others cannot use, and round ones gaps'
          : onOffcuts > 0
            ? 'No fewer sheets can hold them: that area, less what the offcuts hold, over the room on a sheet, rounded up'
            : 'No fewer sheets can hold them: that area over the room on a sheet, rounded up',
      source: 'derived: pieces cannot lie closer than without any gap',
    };
  },
  'Area use %': (one, context) => ({
    given: format(context, one),
    steps: [net(one), sheet(one), sheets(one), ...offcuts(one)],
    symbol: 'u',
    what: 'Net area of the pieces over the area of the sheets',
    formula: `100 · N / (${whole(one)})`,
  }),
  'Lost between %': (one, context) => ({
    given: format(context, one),
    steps: [net(one), ground(one), sheet(one), sheets(one), ...offcuts(one)],
    symbol: 'w',
    what: 'Lost between the pieces, of the sheets: with the area use and what is lost outside they are all of it',
    formula: `100 · (G − N) / (${whole(one)})`,
  }),
  'Lost outside %': (one, context) => ({
    given: format(context, one),
    steps: [ground(one), sheet(one), sheets(one), ...offcuts(one)],
    symbol: 'v',
    what: 'Lost outside of the ground that the pieces take up',
    formula: `100 · (1 − G / (${whole(one)}))`,
  }),
  Offcuts: (one) => ({
    what: 'Offcuts that pieces lie on before whole sheets are cut; one that saves no sheet stays on the shelf',
    steps: one.offcuts.map(({ length, width }, i) =>
      step(`O${below(i + 1)}`, 'Area of an offcut', undefined, length * width, 'mm²'),
    ),
  }),
  'Laid by': ({ rows, sheets: used }) => ({
    steps: [
      step('r', 'Sheets by quick rows', undefined, rows),
      step('n', 'Sheets of the layout used', undefined, used),
    ],
    what: 'The search’s layout where it is written in Layouts, holds and takes no more sheets',
  }),
};
