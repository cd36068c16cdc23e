import { area } from '../../geometry/area';
import { letOutArea } from '../../geometry/let-out-area';
import { greatestOf } from '../../numerics/extremes';
import { costOfSheets } from '../../stock/purchase';
import type { Piece } from '../sheet/piece';
import { roomOn, type SheetFormat } from '../sheet/sheet';
import type { Column } from './columns';
import type { Ground } from './ground';
import { type BuyFormat, SAME_MONEY } from './job';

/** Sheets of each format that are cut, from the shelf and bought, and the money for them. */
export interface Purchase {
  readonly sheets: readonly number[];
  readonly cost: number;
}

/** What is known of the pieces and of how sheets can be cut. */
export interface Known {
  readonly kinds: readonly Piece[];
  readonly formats: readonly BuyFormat[];
  readonly grounds: readonly Ground[];
  readonly columns: readonly Column[];
  /** Money of the cheapest that is known, and the least that is proven. */
  readonly cost: number;
  readonly least: number;
}

/** How much fuller than the fullest sheet that is known all sheets of a purchase may have to be: so much the search gains. */
const FULLER = 0.1;

/** Purchases looked at. */
const MOST_LOOKED_AT = 50_000;

/**
 * Purchases that cost less than the cheapest that is known, no less than the least, and whose sheets would hold all pieces were each
 * little fuller than the fullest known: the cheapest first, of each cost the one that holds most.
 */
export function cheaperPurchases({ kinds, formats, grounds, columns, cost, least }: Known): readonly Purchase[] {
  const need = kinds.reduce((sum, kind) => sum + kind.count * sizeOf(kind, formats[0]!.format), 0);
  const fills = grounds.map((ground, i) => fullestOf(i, ground, columns));
  const fullest = greatestOf(fills);
  const holds = grounds.map(({ format }, i) => roomArea(format) * Math.min(1, (fills[i]! || fullest) + FULLER));
  const onOffcuts = grounds.reduce((sum, { offcut }, i) => (offcut === undefined ? sum : sum + holds[i]!), 0);
  const byCost = new Map<number, Purchase & { readonly held: number }>();
  let looked = 0;
  const choose = (at: number, sheets: readonly number[], paid: number, held: number): void => {
    if (at === formats.length) {
      looked++;
      const key = Math.round(paid / SAME_MONEY);
      if (paid < least - SAME_MONEY || held < need || (byCost.get(key)?.held ?? 0) >= held) return;
      byCost.set(key, { sheets, cost: paid, held });
      return;
    }
    const { terms } = formats[at]!;
    const most = Math.ceil(need / holds[at]!) + 1;
    const onHand = terms.reduce((sum, one) => sum + one.onHand, 0);
    for (let count = Math.min(most, onHand); count <= most && looked < MOST_LOOKED_AT; count++) {
      const own = costOfSheets(terms, count);
      if (own === undefined || paid + own >= cost - SAME_MONEY) break;
      choose(at + 1, [...sheets, count], paid + own, held + count * holds[at]!);
    }
  };
  choose(0, [], 0, onOffcuts);
  return [...byCost.values()].sort((a, b) => a.cost - b.cost);
}

/** Room on a sheet, mm²; a traced one counts as its whole area. */
export function roomArea(format: SheetFormat): number {
  if (format.natural) return area(format.natural.outline);
  const { length, width } = roomOn(format);
  return Math.max(1, length) * Math.max(1, width);
}

/** How full the fullest known sheet of a ground is; 0 where none is known. */
function fullestOf(at: number, { shares }: Ground, columns: readonly Column[]): number {
  const own = columns.filter(({ ground }) => ground === at);
  return greatestOf(own.map(({ counts }) => counts.reduce((sum, count, kind) => sum + count * shares[kind]!, 0)));
}

function sizeOf({ ring }: Piece, { knifeRoom }: Pick<SheetFormat, 'knifeRoom'>): number {
  return letOutArea(ring, knifeRoom / 2);
}
