import type { Material, Stock } from '../stock/stock';
import { MATERIALS } from '../stock/stock';
import { type Laying, LAYINGS, type Style } from '../bottom/style';
import type { Variant } from './compare';
import { byCode, fold } from './codes';
import { pricePerArea } from '../stock/price';

/** What two ways to build a style may differ in. */
export const ASPECTS = ['laying', 'lifts', 'platform', 'sole', 'outsole'] as const;
export type Aspect = (typeof ASPECTS)[number];

/** Lifts are of such sheet, mm (common practice): what is thinner lines or covers, what is thicker serves as a slab. */
const LIFT = { least: 2, most: 10 };
/** More ways than this are no longer a choice. */
const MOST = 8;

/** How layings are called. */
const LAYING_NAMES: Readonly<Record<Laying, string>> = { flat: 'Flat lifts', bent: 'Bent round', block: 'Block, sawn' };

/** The aspects in which a style can differ: one that has no lifts cannot lay them otherwise. */
export function aspectsOf(style: Style): readonly Aspect[] {
  return ASPECTS.filter((aspect) => {
    if (aspect === 'laying') return style.raise === 'wedge' && style.lifts.length > 0;
    const named = style[aspect];
    return Array.isArray(named) ? named.length > 0 : named !== undefined;
  });
}

/**
 * Ways to build a style that differ from its row in Styles in one aspect; the first is as it stands there.
 * Lifts: every material on offer, in all thicknesses that serve as lifts. Platform, sole and outsole: each stock whose
 * thickness is within a half of what stands there.
 */
export function variantsOf(style: Style, stocks: readonly Stock[], aspect: Aspect): readonly Variant[] {
  const as = (name: string): Variant => ({ name: `${name}, as planned`, changes: {} });
  if (aspect === 'laying') {
    const others = LAYINGS.filter((laying) => laying !== style.laying);
    return [
      as(LAYING_NAMES[style.laying]),
      ...others.map((laying): Variant => ({ name: LAYING_NAMES[laying], changes: { laying } })),
    ];
  }
  if (aspect === 'lifts') return [as(style.lifts.join(', ')), ...liftsOfMaterials(style, stocks)];
  const given = style[aspect];
  const codes = typeof given === 'string' ? [given] : (given ?? []);
  const known = byCode(stocks);
  const thickness = codes.reduce((sum, code) => sum + (known.get(fold(code))?.thickness ?? 0), 0);
  const others = stocks.filter(
    (stock) =>
      serves(stock) &&
      (aspect !== 'outsole' || isWalkedOn(stock)) &&
      isPriced(stock) &&
      !codes.some((code) => fold(code) === fold(stock.code)) &&
      stock.thickness >= thickness / 2 &&
      stock.thickness <= thickness * 1.5,
  );
  return [
    as(codes.join(', ')),
    ...others
      .slice(0, MOST - 1)
      .map(({ code }): Variant => ({ name: code, changes: { [aspect]: aspect === 'platform' ? [code] : code } })),
  ];
}

/** Materials that a bottom is not built up from. */
function serves({ material }: Stock): boolean {
  return material !== 'fabric' && material !== 'steel';
}

/** Bare foam, cork and board wear away on the ground, unless one face is moulded for it. */
function isWalkedOn({ material, mouldedFace }: Stock): boolean {
  return material === 'leather' || material === 'rubber' || mouldedFace;
}

function liftsOfMaterials(style: Style, stocks: readonly Stock[]): readonly Variant[] {
  const present = [...style.lifts].map(fold).sort().join();
  const byMaterial = (material: Material) =>
    stocks.filter(
      (stock) =>
        stock.material === material &&
        serves(stock) &&
        stock.thickness >= LIFT.least &&
        stock.thickness <= LIFT.most &&
        isPriced(stock),
    );
  return MATERIALS.flatMap((material): Variant[] => {
    const lifts = byMaterial(material).map(({ code }) => code);
    if (lifts.length === 0 || [...lifts].map(fold).sort().join() === present) return [];
    return [{ name: capital(`${material}: ${lifts.join(', ')}`), changes: { lifts } }];
  }).slice(0, MOST - 1);
}

/** Whether a price can be told; without one a comparison would favour it. */
function isPriced(stock: Stock): boolean {
  return pricePerArea(stock) !== undefined;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
