import { itemAt } from '../core/item-at';
import { figure } from '../workings/in-figures';
import { table } from './example-in-html';
import { answerOf } from './examples';
import { type Page, plain } from './frame';
import { BY_HAND, rampShoe } from './ramp-shoe';

const list = (numbers: readonly number[]) => numbers.map(figure).join(', ');

const {
  length,
  area,
  skive,
  angle,
  sheets,
  areaUse,
  price,
  toPay,
  stock,
  adhesive,
  minutes,
  run,
  batches,
  days,
  gauge,
} = BY_HAND;

const INTRODUCTION =
  '<p>Follow one bottom from the last to the order with nothing but school arithmetic, and find the same figures in the tables. The shoe is invented. Its last is a ramp, so that lengths can be worked out in the head: the bottom stands 45 mm over the ground up to 60 mm from the back, then falls straight to the ground at 168 mm, by 45 on 108 mm, which makes 117 mm along it; to the tread are 177 mm of its 265.5; it is square and 60 mm wide.</p>';

/** A part of the work: what is worked out in words, and the function whose answer stands below. */
interface Part {
  readonly title: string;
  readonly says: readonly string[];
  readonly name: string;
  readonly args?: readonly unknown[];
}

const PARTS: readonly Part[] = [
  {
    title: 'Layers and pieces',
    says: [
      'The heel is 45 mm and 1 mm may be rasped off. No sum of sixes and fours is 45; 7 × 6 + 4 = 46 is the one of fewest lifts that is 1 more, so eight lifts are built and 1 mm comes off the ground lift. The stoutest lie next to the ground. Under them come a platform of 10 and an outsole of 4.',
      `On the ramp the bottom stands z high at x = 168 − 2.4 · z from the back. A lift ends where the bottom stands at its lower face and the 0.1 that it is skived to: the uppermost, from 41 up, at 168 − 2.4 · 41.1 = ${figure(length[0])}. The ground lift stops 5 mm behind the tread, at 163. The platform goes on to the toe: 168 + 88.5 = ${figure(length[9])}. So the lengths are ${list(length)} mm.`,
      `All are 60 mm wide, so the areas are ${list(area)} cm².`,
      `Each is skived where the ramp rises through it: its width is 2.4 × (4 − 0.1) = ${figure(skive[0])} or 2.4 × (6 − 0.1) = ${figure(skive[1])}; of the ground lift, whose upper face lies at 5, 163 − 156 = ${figure(skive[7])}. The angle is that of the ramp, atan(45 / 108) = ${figure(angle)}°. All are skived to 0.1 but the ground lift: under the ramp stand (168 − 163) / 2.4 = 2.0833 there, and the 1 mm that is rasped off its lower face later is still on it, 3.0833.`,
      'Ten pairs need 20 of each.',
    ],
    name: 'PIECES',
  },
  {
    title: 'Cutting',
    says: [
      `A sheet has 500,000 mm². Cork 6: 20 × (9,780 + 9,345.6 + 8,481.6 + 7,617.6 + 6,753.6 + 5,889.6 + 5,025.6) = 1,057,872 mm², more than two sheets. The others take one each: ${list(sheets)} sheets.`,
      `Of the sheets ${list(areaUse)} % are used.`,
    ],
    name: 'CUTTING',
  },
  {
    title: 'Order',
    says: [
      `Two sheets of Cork 6 are on hand, so one of each is bought. Their prices: 12; 0.5 m² × 4 mm × 250 kg/m³ = 0.5 kg at 20; 0.5 m² at 30; 500,000 / 92,903.04 = 5.382 ft² at 4. That is ${list(price)}, together ${figure(toPay)}.`,
    ],
    name: 'ORDER',
  },
  {
    title: 'Cost',
    says: [
      `Stock of a pair, the sheets on hand counted too: (36 + 10 + 15 + 21.5278) / 10 = ${figure(stock)}.`,
      `Adhesive: the wedge meets the last on 9,780 mm², lifts meet lifts on 47,275.2, wedge, platform and outsole on 15,390 twice: 87,835.2 mm². Two faces and two feet, one coat at 4 m² a litre are ${figure(adhesive)} ml, at 10 a litre 0.87835.`,
      `Work: 2 × (10 pieces + 8 skives × 2 + 10 joints) + 15 = ${figure(minutes)} minutes, at 30 an hour 43.50. Sundries 1.50. Spoilage: 0.05 × (8.25278 + 0.87835) = 0.45656.`,
      `The run of ten: 10 × 54.5877 = ${figure(run)}.`,
    ],
    name: 'COST',
  },
  {
    title: 'Batches and heights',
    says: [`Two pairs of lasts make ten pairs in ${figure(batches)} batches of two days: ${figure(days)} days.`],
    name: 'BATCHES',
  },
  {
    title: 'The ticket',
    says: [
      `A gauge at the back reads, step after step, ${list(gauge)} mm: the lifts as glued, rasped, on the platform, on the outsole. 59 at the back and 14 under the tread differ by the last’s heel of 45.`,
    ],
    name: 'TICKET',
    args: ['Ramp shoe', ...rampShoe],
  },
];

/** One style from measurements to order, by school arithmetic, beside what the functions answer. */
export function workedByHand(): Page {
  const names = ['Pairage', 'Styles', 'Lasts', 'Bottom stock', 'Costs and times', 'Outlines'];
  const body = [
    INTRODUCTION,
    '<h2>What is given</h2>',
    ...rampShoe.map((cells, i) => table(cells, itemAt(names, i))),
    ...PARTS.map(partInHtml),
  ].join('\n');
  return { file: 'worked-by-hand.html', title: 'A style worked by hand', body };
}

function partInHtml({ title, says, name, args = rampShoe }: Part): string {
  const words = says.map((say) => `<p>${plain(say)}</p>`).join('\n');
  return `<h2>${plain(title)}</h2>\n${words}\n${table(answerOf({ name, args }).table, `${name} answers`)}`;
}
