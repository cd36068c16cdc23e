import { decimals, fixed } from '../../tables/figures';
import type { InParts, PaperJob } from './chosen';
import { gap, heading, paragraph } from './blocks';
import { type Block, flowPages, textWidth } from './flow';
import { figuresIn, type PaperColumn, tableBlocks, ticksIn, wordsIn } from './table-blocks';
import type { Page } from './page';
import { amountInWords, BESIDE, type BesideLine, besideSheets } from './beside-sheets';
import { formatWords, inAll, paid, shoppingList, type SupplierList } from './shopping-list';

/** What to buy, by supplier, with what it costs or without. */
export function* shoppingPages(job: PaperJob): InParts<readonly Page[]> {
  const { money = '', prices = true } = job;
  const lists = shoppingList(job);
  const width = textWidth(job.paper);
  const lacking = job.plan.layouts.problems.map(({ message }) => paragraph(`Left out: ${message}`, width));
  const blocks: readonly Block[] = [
    ...lacking,
    ...lists.flatMap((list) => blocksOf(list, width, money, prices)),
    ...(lists.length === 0 ? [paragraph('No sheets are to be bought.', width, 4)] : []),
    ...besideBlocks(besideSheets(job), width, money, prices),
  ];
  const total = lists.reduce((sum, list) => sum + list.total, 0);
  const whole = lists.every(({ unpriced }) => unpriced === 0) && lacking.length === 0;
  const boxes = [
    { head: 'Shopping list', say: job.run, share: 5 },
    { head: 'Suppliers', say: String(lists.filter(({ supplier }) => supplier).length), share: 1.6 },
    { head: 'Date', say: job.date || '–', share: 2.5 },
    ...(prices ? [{ head: whole ? 'Sheets together' : 'Sheets, not whole', say: paid(total, money), share: 3 }] : []),
  ];
  yield 'list';
  return flowPages(job, 'Shopping list', boxes, blocks);
}

function besideBlocks(lines: readonly BesideLine[], width: number, money: string, prices: boolean): readonly Block[] {
  if (lines.length === 0) return [];
  const columns: readonly PaperColumn[] = [
    wordsIn('What', 52),
    figuresIn('Amount', 30),
    ...(prices ? [figuresIn(`Total ${money}`, 20)] : []),
    ticksIn('Got', 9),
  ];
  const rows = lines.map((one) => [one.what, amountInWords(one), ...(prices ? [shown(one.total)] : []), '']);
  return [
    heading(BESIDE),
    ...tableBlocks(columns, rows, width, { size: 3.2 }),
    paragraph('For all pairs of the run. What of it you have is not counted off.', width, 3),
    gap(4),
  ];
}

function blocksOf(list: SupplierList, width: number, money: string, prices: boolean): readonly Block[] {
  const timed = list.lines.some(({ days }) => days !== undefined);
  const columns: readonly PaperColumn[] = [
    wordsIn('Stock', 34),
    wordsIn('Material', 18),
    figuresIn('Thick mm', 14),
    figuresIn('Sheet', 30),
    figuresIn('Number', 14),
    figuresIn('In all', 18),
    ...(prices ? [figuresIn(`${money || 'Money'} a sheet`, 18), figuresIn(`Total ${money}`, 20)] : []),
    ...(timed ? [figuresIn('In days', 13)] : []),
    ticksIn('Got', 9),
  ];
  const rows = list.lines.map((one) => [
    one.stock,
    one.material,
    decimals(one.thick, 2),
    formatWords(one),
    String(one.number),
    inAll(one),
    ...(prices ? [shown(one.price), shown(one.total)] : []),
    ...(timed ? [one.days === undefined ? '' : String(one.days)] : []),
    '',
  ]);
  const sum = ['All', '', '', '', String(list.lines.reduce((all, one) => all + one.number, 0)), ''];
  return [
    heading(list.supplier || 'No supplier named'),
    ...tableBlocks(
      columns,
      [...rows, [...sum, ...(prices ? ['', fixed(list.total, 2)] : []), ...(timed ? [''] : []), '']],
      width,
      {
        sum: true,
        size: 3.2,
      },
    ),
    ...(prices && list.unpriced > 0
      ? [paragraph(`${list.unpriced} without a price; the sum is not whole.`, width, 3)]
      : []),
    ...list.lines.flatMap(({ stock, usable }) =>
      usable === undefined ? [] : [paragraph(`${stock}: ${usable}`, width, 3)],
    ),
    gap(4),
  ];
}

function shown(money: number | undefined): string {
  return money === undefined ? 'not given' : fixed(money, 2);
}
