import { builtThickness } from '../core/bottom/layer';
import { skiveThen } from '../core/bottom/skive-then';
import type { Check } from '../core/plan/checks/check';
import type { CostLine } from '../core/plan/cost/cost';
import type { StockCutting } from '../core/plan/cutting';
import { makeOrBuy } from '../core/plan/cost/make-or-buy';
import type { LeftOut } from '../core/plan/left-out';
import type { OrderLine } from '../core/plan/order';
import type { PieceLine } from '../core/plan/pieces';
import type { Batch } from '../core/plan/batches';
import type { RunSummary } from '../core/plan/summary';
import type { TicketStep } from '../core/plan/ticket';
import type { PlaceWords } from '../core/problem';
import type { FurtherWork } from '../core/steps/times';
import { formatName } from '../core/stock/offer';
import type { Stock } from '../core/stock/stock';
import { checkInWords } from './check-in-words';
import { figure, MONEY, type ResultTable, sumOf, words } from './result';
import { piecesInWords, stepInWords } from './step-in-words';
import { CARE, CARE_WORDS, LOOK_WORDS, PART_WORDS, VERDICT_WORDS } from './words';

type SizeWords = (size: PieceLine['sizeRun']) => string | number;

/** Sizes show as many decimals as they have. */
const GENERAL = 'General';

const plainSize: SizeWords = ({ size }) => size;

/** Every piece to cut. */
export const piecesTable = (sizeWords = plainSize): ResultTable<PieceLine> => ({
  name: 'Pieces',
  meaning: 'Every piece to cut, by style and size',
  columns: [
    words('Style', ({ run }) => run.style.code),
    figure('Size', ({ sizeRun }) => sizeWords(sizeRun), { format: GENERAL }),
    figure('No.', ({ layer }) => layer.item, { format: '0', width: 44 }),
    words('Piece', ({ layer }) => PART_WORDS[layer.part]),
    words('Stock', ({ layer }) => layer.stock),
    figure('Thick', ({ layer }) => layer.thickness, { unit: 'mm', format: '0.0#' }),
    figure('Rasp to', ({ layer }) => (layer.rasped ? builtThickness(layer) : undefined), {
      unit: 'mm',
      format: '0.0#',
    }),
    figure('Length', ({ layer }) => layer.length, { unit: 'mm' }),
    figure('Width', ({ layer }) => layer.width, { unit: 'mm' }),
    figure('Area', ({ area }) => area / 100, { unit: 'cm²' }),
    figure('Skive', ({ layer }) => layer.skive?.width, { unit: 'mm' }),
    figure('Angle', ({ layer }) => skiveThen(layer)?.angle, { unit: '°', format: '0' }),
    figure('Skive to', ({ layer }) => skiveThen(layer)?.edge, { unit: 'mm' }),
    figure('Cut', ({ count }) => count, { unit: 'number', format: '0' }),
  ],
});

/** How the pieces lie, by stock. */
export const cuttingTable: ResultTable<StockCutting> = {
  name: 'Cutting',
  meaning: 'Sheets by stock, and what is lost on them',
  columns: [
    words('Stock', ({ stock }) => stock.code),
    figure('Thick', ({ stock }) => stock.thickness, { unit: 'mm', format: '0.0#' }),
    figure('Pieces', ({ count }) => count, { unit: 'number', format: '0' }),
    figure('Sheets', ({ sheets }) => sheets, { format: '0' }),
    words('Offcuts', ({ offcuts }) => offcuts.map(({ code }) => code).join(', '), { width: 70 }),
    figure('Least possible', ({ least }) => least, { format: '0' }),
    figure('Area use', ({ areaUse }) => 100 * areaUse, { unit: '%' }),
    figure('Lost between', ({ lostBetween }) => 100 * lostBetween, { unit: '%' }),
    figure('Lost outside', ({ lostOutside }) => 100 * lostOutside, { unit: '%' }),
    words('Laid by', laidBy, { width: 96 }),
  ],
};

/** What to buy. */
export const orderTable: ResultTable<OrderLine> = {
  name: 'Order',
  meaning: 'Sheets needed, on hand and to buy, with what they cost',
  columns: [
    words('Stock', ({ cutting }) => cutting.stock.code, { total: allInWords, leftOut: nameInWords }),
    words('Sold by', ({ cutting }) => cutting.stock.soldBy, { width: 70, leftOut: whyInWords }),
    figure('Thick', ({ cutting }) => cutting.stock.thickness, { unit: 'mm', format: '0.0#' }),
    figure('Pieces', ({ cutting }) => cutting.count, { unit: 'number', format: '0' }),
    figure('Area use', ({ cutting }) => 100 * cutting.areaUse, { unit: '%' }),
    figure('Least possible', ({ cutting }) => cutting.least, { format: '0' }),
    figure('Need', ({ need }) => need, { format: '0' }),
    figure('On hand', ({ onHand }) => onHand, { format: '0' }),
    figure('Buy', ({ buy }) => buy, { format: '0' }),
    figure('Price', ({ sheetPrice }) => sheetPrice, { unit: `${MONEY} a sheet`, format: '0.00' }),
    figure('To pay', ({ toPay }) => toPay, {
      unit: MONEY,
      format: '0.00',
      width: 84,
      total: sumOf(({ toPay }) => toPay),
    }),
    // The last, so that no neighbour cuts it off.
    words('For', usesInWords, { width: 130, leftOut: ({ why }, where) => why.inWords(where) }),
  ],
};

/**
 * Stands beside the name of what is left out, where it is read at once: blank neighbours give it room. The last column
 * has the reason too, for where a neighbour cuts it off.
 */
function whyInWords({ why }: LeftOut, where: PlaceWords): string {
  return `left out: ${why.inWords(where)}`;
}

function nameInWords({ name, at }: LeftOut, where: PlaceWords): string {
  return at ? where(at) : name;
}

/** Heads a sum; one that is not whole says so. */
function allInWords(_lines: readonly unknown[], whole: boolean): string {
  return whole ? 'All' : 'All, not whole';
}

/** What laid the pieces, and on which sheets where they are others than those of the stock's own row. */
function laidBy({ source, otherFormat }: StockCutting): string {
  const by = source === 'rows' ? 'quick rows' : 'search';
  return otherFormat === undefined ? by : `${by}, ${otherFormat}`;
}

function usesInWords({ uses, cutting }: OrderLine): string {
  const parts = new Map<string, string[]>();
  for (const { style, part } of uses) parts.set(part, [...(parts.get(part) ?? []), style]);
  const words = [...parts]
    .map(([part, styles]) => {
      const word = PART_WORDS[part as keyof typeof PART_WORDS].toLowerCase();
      return `${styles.join(', ')} ${part === 'lift' ? 'lifts' : word}`;
    })
    .join('; ');
  return [...offerInWords(cutting.stock), words].join(': ');
}

/** The offer that sheets are of, where it is not the stock's own row: "Quay Cork, 1000 × 500 mm, in 5 days". */
function offerInWords(stock: Stock): readonly string[] {
  const { offer, supplier, days } = stock;
  if (offer === undefined) return [];
  const when = days === undefined ? [] : [`in ${counted(days, 'day')}`];
  return [[...(supplier === undefined ? [] : [supplier]), `${formatName(stock)} mm`, ...when].join(', ')];
}

/** Adhesive of a style's whole run, litres, and its bench time, hours: what to have at hand before beginning. */
function litresOf({ adhesive, run }: CostLine): number | undefined {
  return adhesive === undefined ? undefined : (adhesive * run.pairs) / 1000;
}
function hoursOf({ minutes, run }: CostLine): number {
  return (minutes * run.pairs) / 60;
}

/** What a pair and the run cost, by style. */
export const costTable: ResultTable<CostLine> = {
  name: 'Cost',
  meaning: 'What a pair costs in stock, adhesive, sundries and work, by style',
  columns: [
    words('Style', ({ run }) => run.style.code, { total: allInWords, leftOut: nameInWords }),
    words('Last', ({ run }) => run.last.code, { width: 130, leftOut: whyInWords }),
    figure('Pairs', ({ run }) => run.pairs, { unit: 'number', format: '0', total: sumOf(({ run }) => run.pairs) }),
    figure('Stock', ({ stock }) => stock, { unit: `${MONEY} a pair`, format: '0.00' }),
    figure('Adhesive', ({ adhesive }) => adhesive, { unit: 'ml a pair' }),
    figure('Adhesive', ({ adhesiveCost }) => adhesiveCost, { unit: `${MONEY} a pair`, format: '0.00' }),
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
    figure('Adhesive', litresOf, { unit: 'l, the run', format: '0.00', total: sumOf((line) => litresOf(line) ?? 0) }),
    figure('Work', hoursOf, { unit: 'h, the run', format: '0.0', total: sumOf(hoursOf) }),
    figure('Bought', (line) => makeOrBuy(line)?.buy, { unit: `${MONEY} a pair`, format: '0.00' }),
    // The last, so that no neighbour cuts it off.
    words('Why left out', () => undefined, { width: 130, leftOut: ({ why }, where) => why.inWords(where) }),
  ],
};

/**
 * The run in one line. What is summed is always a number; headings say of which sums that they are of a part.
 * @param of the run; without it, one that is whole
 */
export const summaryTable = (of?: RunSummary): ResultTable<RunSummary> => {
  const part = (unit: string, whole: boolean | undefined) => (whole === false ? `${unit}, part` : unit);
  return {
    name: 'Summary',
    meaning:
      'The run in one line: pairs, what to buy, what it costs, bench hours, the next day due and what comes next',
    columns: [
      figure('Pairs', ({ pairs }) => pairs, {
        ...(of && of.pairs < of.asked && { unit: `of ${of.asked}` }),
        format: GENERAL,
      }),
      figure('To buy', ({ toPay }) => toPay, { unit: part(MONEY, of?.allBought), format: '0.00' }),
      figure('Cost', ({ whole }) => whole, { unit: part(MONEY, of?.allMade), format: '0.00' }),
      figure('Bench', ({ hours }) => hours, { unit: part('h', of?.allMade) }),
      figure('Next due', ({ due }) => due, { format: 'd mmm yyyy' }),
      figure('To put right', ({ putRight }) => putRight, { format: '0' }),
      words('Next step', ({ next }, where) => nextInWords(next, where)),
    ],
  };
};

function nextInWords(next: RunSummary['next'], where: PlaceWords): string {
  switch (next.kind) {
    case 'putRight':
    case 'late': {
      const { check, say } = checkInWords(next.check, { where });
      return next.check.kind === 'problem' ? say : `${next.check.subject}, ${check}: ${say}`;
    }
    case 'buy':
      return `order ${counted(next.sheets, 'sheet')} of ${counted(next.stocks, 'stock')}`;
    case 'cut':
      return 'cut: all sheets are on hand';
  }
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`;
}

/** What holds, what to look at and what to put right. */
export const checksTable: ResultTable<Check> = {
  name: 'Checks',
  meaning: 'What to put right, what to look at and what holds',
  columns: [
    words('Subject', ({ subject }) => subject),
    words('Check', (check) => checkInWords(check).check, { width: 130 }),
    figure('Found', (check) => checkInWords(check).found, { format: '0.0' }),
    figure('Wanted', (check) => checkInWords(check).wanted, { format: '0.0' }),
    words('Result', ({ verdict }) => VERDICT_WORDS[verdict], { width: 84 }),
    words('What to do', (check, where) => checkInWords(check, { where }).say, { width: 130 }),
  ],
};

/** How often the lasts are used, and when each order is done. */
export const batchesTable: ResultTable<Batch> = {
  name: 'Batches',
  meaning: 'How often the lasts of each size are used, in the order of the days due, and when each order is done',
  columns: [
    words('Last', ({ last }) => last),
    figure('Size', ({ size }) => size, { format: GENERAL }),
    words('Style', ({ style }) => style),
    words('Customer', ({ customer }) => customer, { width: 130 }),
    figure('Due', ({ due }) => due, { format: 'd mmm yyyy', width: 84 }),
    figure('Pairs', ({ pairs }) => pairs, { unit: 'number', format: '0' }),
    figure('On hand', ({ onHand }) => onHand, { unit: 'pairs', format: '0' }),
    figure('From batch', ({ from }) => from, { format: '0' }),
    figure('To batch', ({ to }) => to, { format: '0' }),
    figure('Work', ({ minutes }) => (minutes === undefined ? undefined : minutes / 60), { unit: 'h', format: '0.0' }),
    figure('Bench', ({ benchDays }) => benchDays, { unit: 'days', format: '0.0' }),
    figure('Making', ({ makingDays }) => makingDays, { unit: 'days', format: '0.0' }),
    figure('Done', ({ days }) => days, { unit: 'days', format: '0.0' }),
    figure('Done', ({ done }) => done, { unit: 'on', format: 'd mmm yyyy', width: 84 }),
  ],
};

/** The one piece of a step that is done to one alone: its own measures are shown. */
const alone = ({ step: { pieces, acts } }: TicketStep) => (acts.includes('cut') ? pieces[0] : undefined);

/** Stands below the steps: the caution, after minutes that no step has, so that ticket and Cost agree. */
function belowSteps({ minutes, items }: FurtherWork): string {
  if (items.length === 0) return CARE;
  return `And ${Number(minutes.toFixed(1))} minutes a pair that belong to no step (${items.join(', ')}). ${CARE}`;
}

/**
 * The bench's ticket: a row for each step, in the order in which they are done.
 * @param apart work on the style's pairs that is of no step
 */
export const ticketTable = (
  sizeWords = plainSize,
  apart: FurtherWork = { minutes: 0, items: [] },
): ResultTable<TicketStep> => ({
  name: 'Ticket',
  meaning: 'What to do at the bench, step by step',
  columns: [
    figure('Size', ({ sizeRun }) => sizeWords(sizeRun), { format: GENERAL, width: 84 }),
    figure('Step', ({ step }) => step.number, { format: '0', width: 58 }),
    words('What to do', stepInWords, { width: 420, wraps: true, total: () => belowSteps(apart) }),
    words('Pieces', ({ step }) => piecesInWords(step.pieces), { width: 150, wraps: true }),
    figure('Rasp to', ({ step }) => step.left, { unit: 'mm', format: '0.0#' }),
    figure('At back', ({ step }) => step.height?.back, { unit: 'mm' }),
    figure('At breast', ({ step }) => step.height?.breast, { unit: 'mm' }),
    figure('At tread', ({ step }) => step.height?.tread, { unit: 'mm' }),
    figure('Coats', ({ step }) => (step.coats.length > 0 ? Math.max(...step.coats) : undefined), {
      format: '0',
      width: 58,
    }),
    figure('Open', ({ step }) => step.open?.value, { unit: 'min', format: GENERAL, width: 58 }),
    figure('Press', ({ step }) => step.pressed?.value, { unit: 'min', format: GENERAL, width: 58 }),
    figure('Wait', ({ step }) => step.wait?.value, { unit: 'min', format: '0', width: 58 }),
    words('Look for', ({ step }) => step.looks.map((look) => LOOK_WORDS[look]).join('; '), { width: 200, wraps: true }),
    words('Care', ({ step }) => step.cares.map((care) => CARE_WORDS[care]).join('; '), { width: 200, wraps: true }),
    words('Stock', (line) => alone(line)?.stock),
    figure('Thick', (line) => alone(line)?.thickness, { unit: 'mm', format: '0.0#' }),
    figure('Length', (line) => alone(line)?.length, { unit: 'mm', format: '0' }),
    figure('Width', (line) => alone(line)?.width, { unit: 'mm', format: '0' }),
    figure('Skive', ({ step }) => step.skive?.width, { unit: 'mm' }),
    figure('Angle', ({ step }) => step.skive?.angle, { unit: '°', format: '0' }),
    figure('Skive to', ({ step }) => step.skive?.edge, { unit: 'mm' }),
    figure('Cut', (line) => (alone(line) ? 2 * line.sizeRun.pairs : undefined), { unit: 'L and R', format: '0' }),
    words('Kind', ({ step }) => step.kind, { width: 70 }),
    figure('Work', ({ step }) => step.minutes || undefined, { unit: 'min a pair', format: '0.0', width: 58 }),
  ],
});
