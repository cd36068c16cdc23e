import type { Cells } from '../tables/cell';
import { figure } from '../workings/in-figures';
import { table } from './example-in-html';
import { answerOf } from './examples';
import { type Page, plain } from './frame';
import { BY_HAND, rampShoe } from './ramp-shoe';

const list = (numbers: readonly number[]) => numbers.map(figure).join(', ');

/** One style from measurements to order, by school arithmetic, beside what the functions answer. */
export function workedByHand(): Page {
  const names = ['Pairage', 'Styles', 'Lasts', 'Bottom stock', 'Costs and times', 'Outlines'];
  const answer = (name: string, args: readonly unknown[] = rampShoe) => answerOf({ name, args }).table;
  const section = (title: string, says: readonly string[], name: string, cells: Cells = answer(name)) =>
    `<h2>${plain(title)}</h2>\n${says.map((say) => `<p>${plain(say)}</p>`).join('\n')}\n${table(cells, `${name} answers`)}`;
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
  const body = [
    `<p>Follow one bottom from the last to the order with nothing but school arithmetic, and find the same figures in the tables. The shoe is invented. Its last is a ramp, so that lengths can be worked out in the head: the bottom stands 40 mm over the ground up to 60 mm from the back, then falls straight to the ground at 160 mm; it is square and 60 mm wide.</p>`,
    `<h2>What is given</h2>`,
    ...rampShoe.map((cells, i) => table(cells, names[i] as string)),
    section(
      'Layers and pieces',
      [
        'The heel is 40 mm: 4 × 7 + 4 × 3 = 40, eight lifts and nothing to rasp. The stoutest lie next to the ground. Under them come a platform of 8 and an outsole of 4.',
        `On the ramp the bottom stands z high at x = 160 − 2.5 · z from the back. A lift ends where the bottom stands at its lower face and the 0.1 that it is skived to: the uppermost, from 37 up, at 160 − 2.5 · 37.1 = ${figure(length[0])}. The ground lift stops 5 mm behind the tread, at 155. The platform goes on to the toe: 160 + 83.85 = ${figure(length[9])}. So the lengths are ${list(length)} mm.`,
        `All are 60 mm wide, so the areas are ${list(area)} cm².`,
        `Each is skived where the ramp rises through it: its width is 2.5 × (3 − 0.1) = ${figure(skive[0])} or 2.5 × (7 − 0.1) = ${figure(skive[4])}; of the ground lift, 155 − 142.5 = ${figure(skive[7])}. The angle is that of the ramp, atan(40 / 100) = ${figure(angle)}°.`,
        'Ten pairs need 20 of each.',
      ],
      'PIECES',
    ),
    section(
      'Cutting',
      [
        `A sheet has 500,000 mm². Cork 7: 20 × (9,300 + 8,535 + 7,485 + 6,435) = 635,100 mm², more than one sheet. The others take one each: ${list(sheets)} sheets.`,
        `Of the sheets ${list(areaUse)} % are used.`,
      ],
      'CUTTING',
    ),
    section(
      'Order',
      [
        `One sheet of Cork 7 is on hand, so one of each is bought. Their prices: 12; 0.5 m² × 3 mm × 250 kg/m³ = 0.375 kg at 20; 0.5 m² at 30; 500,000 / 92,903.04 = 5.382 ft² at 4. That is ${list(price)}, together ${figure(toPay)}.`,
      ],
      'ORDER',
    ),
    section(
      'Cost',
      [
        `Stock of a pair, the sheet on hand counted too: (24 + 7.5 + 15 + 21.5278) / 10 = ${figure(stock)}.`,
        `Adhesive: the wedge meets the last on 9,300 mm², lifts meet lifts on 41,295, wedge, platform and outsole on 14,631 twice: 79,857 mm². Two faces and two feet at 4 m² a litre are ${figure(adhesive)} ml, at 10 a litre 0.79857.`,
        `Work: 2 × (10 pieces + 8 skives × 2 + 10 joints) + 15 = ${figure(minutes)} minutes, at 30 an hour 43.50. Sundries 1.50. Spoilage: 0.05 × (6.80278 + 0.79857) = 0.38007.`,
        `The run of ten: 10 × 52.9814 = ${figure(run)}.`,
      ],
      'COST',
    ),
    section(
      'Batches and heights',
      [`Two pairs of lasts make ten pairs in ${figure(batches)} batches of two days: ${figure(days)} days.`],
      'BATCHES',
    ),
    section(
      'The ticket',
      [
        `A gauge at the back reads, from the last downward, ${list(gauge)} mm: 52 under the seat and 12 under the tread, which differ by the last’s heel of 40.`,
      ],
      'TICKET',
      answer('TICKET', ['Ramp shoe', ...rampShoe]),
    ),
  ].join('\n');
  return { file: 'worked-by-hand.html', title: 'A style worked by hand', body };
}
