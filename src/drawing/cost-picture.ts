import { fixed } from '../tables/figures';
import { MATERIALS, type Material } from '../core/stock/stock';
import type { OrderLine } from '../core/plan/order';
import { hatch } from './hatching';
import { group, line, marks, rectangle, text } from './mark';
import type { Picture, PictureItem } from './svg';

export interface CostPictureInput {
  readonly orders: readonly OrderLine[];
  /** The sheet's own money. */
  readonly money: string;
  /** The material of the stock that the pane shows. */
  readonly shown?: Material | undefined;
}

/** What the stock to buy comes to, of one material. */
export interface MaterialCost {
  readonly material: Material;
  readonly toPay: number;
  /** Codes of its stock, those without a price apart. */
  readonly stocks: readonly string[];
  readonly withoutPrice: readonly string[];
}

const NAME = 18;
const ROW = 7;
const BAR = 3.6;
/** A bar is never drawn shorter, u: its hatching would not be seen. */
const SHORTEST = 0.5;

/** What is to be paid for each material, dearest first. */
export function costByMaterial(orders: readonly OrderLine[]): readonly MaterialCost[] {
  return MATERIALS.flatMap((material): MaterialCost[] => {
    const own = orders.filter(({ cutting }) => cutting.stock.material === material);
    if (own.length === 0) return [];
    const codes = (lines: readonly OrderLine[]) => lines.map(({ cutting }) => cutting.stock.code);
    return [
      {
        material,
        toPay: own.reduce((sum, { toPay }) => sum + (toPay ?? 0), 0),
        stocks: codes(own.filter(({ toPay }) => toPay !== undefined)),
        withoutPrice: codes(own.filter(({ toPay }) => toPay === undefined)),
      },
    ];
  }).sort((a, b) => b.toPay - a.toPay);
}

/** What the order costs, a level bar a material, hatched as the material is. */
export function costPicture({ orders, money, shown }: CostPictureInput, width: number): Picture {
  const costs = costByMaterial(orders);
  const sum = costs.reduce((total, { toPay }) => total + toPay, 0);
  const figure = (value: number) => fixed(value, 2);
  const right = Math.max(14, figure(sum).length * 2 + money.length * 2 + 4);
  const most = Math.max(...costs.map(({ toPay }) => toPay), 1e-9);
  const room = width - NAME - right;
  const parts = costs.flatMap(({ material, toPay, withoutPrice }, i) => {
    const y = i * ROW;
    const long = toPay > 0 ? Math.max(SHORTEST, (room * toPay) / most) : 0;
    const lacks = withoutPrice.length > 0 ? ' +' : '';
    const fill = hatch(material);
    const bar = marks(
      rectangle(0, y, width, ROW, { fill: 'nothing' }),
      long > 0 && rectangle(NAME, y + 1.6, long, BAR, { pen: 'face', fill, accent: material === shown }),
    );
    return [
      text(0, y + 4.6, capital(material), material === shown ? 'bold' : 'plain', 'start'),
      group(bar, { item: material }),
      text(width, y + 4.6, figure(toPay) + lacks, 'plain', 'end'),
    ];
  });
  const foot = costs.length * ROW;
  return {
    width,
    height: foot + 8,
    marks: [
      line('narrow', NAME, 0.6, NAME, foot + 0.6),
      ...parts,
      line('narrow', 0, foot + 1.4, width, foot + 1.4),
      text(0, foot + 6, 'To buy', 'bold', 'start'),
      text(width, foot + 6, [money, figure(sum)].filter(Boolean).join(' '), 'bold', 'end'),
    ],
    label: `Cost by material, ${money || 'money'}: ${costs
      .map(({ material, toPay }) => `${material} ${figure(toPay)}`)
      .join(', ')}; to buy ${figure(sum)}.${costs.some(lacksPrice) ? ' Stock without a price is left out.' : ''}`,
    facts: [
      ...costs.map(({ material, toPay, stocks, withoutPrice }) => {
        const lacks = withoutPrice.length > 0 ? ` without a price: ${withoutPrice.join(', ')}` : '';
        return [
          capital(material),
          `${figure(toPay)}${stocks.length > 0 ? ` (${stocks.join(', ')})` : ''}${lacks}`,
        ] as const;
      }),
      ['To buy', [money, figure(sum)].filter(Boolean).join(' ')],
    ],
    items: costs.map(({ material, toPay, stocks }): PictureItem => ({
      id: material,
      label: `${capital(material)}: ${figure(toPay)}, ${stocks.join(', ')}`,
    })),
  };
}

function lacksPrice({ withoutPrice }: MaterialCost): boolean {
  return withoutPrice.length > 0;
}

function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}
