import { bendStrain, leastRadius } from '../../bottom/bend';
import type { Bottom } from '../../bottom/bottom';
import { flatForepart, forepartThickness, isForepartGround } from '../../bottom/flat-forepart';
import type { Layer } from '../../bottom/layer';
import { derived } from '../../derived';
import type { Profile } from '../../last/profile';
import { type BendSide, tightestCurve } from '../../last/tightest-curve';
import type { Stock } from '../../stock/stock';
import { fold } from '../codes';
import type { StyleRun } from '../runs';
import type { Check } from './check';
import { worst, worstSize } from './worst';

/**
 * Smallest tube over thickness of the least flexible sheet that figures are published for, expanded cork: what a curve asks
 * of that, any sheet takes (ISO 4708:2015 gives the test; the figure is a maker's of cork).
 */
const LEAST_FLEXIBLE = 60;

/**
 * Each stock that follows the last, in the size where it comes nearest to cracking: over the ball, and into the waist. Of
 * which it is not known what it takes, once, where it is stretched most, unless any sheet takes that.
 */
export function bendChecks({ style, sizes }: StyleRun, stocks: ReadonlyMap<string, Stock>): readonly Check[] {
  const subject = style.code;
  const unknown = new Map<string, Check & { readonly kind: 'tubeUnknown' }>();
  const known = (['over', 'hollow'] as const).flatMap((side) => {
    const tightest = worst(sizes, ({ bottom }) => 1 / (radiusOf(bottom, side) ?? Infinity));
    const radius = tightest && radiusOf(tightest.bottom, side);
    if (!tightest || radius === undefined) return [];
    const bent = new Map<string, Layer>();
    for (const layer of tightest.bottom.layers)
      if (layer.follows) bent.set(`${layer.part} ${fold(layer.stock)}`, layer);
    return [...bent.values()].flatMap((layer): readonly Check[] => {
      const { part, thickness } = layer;
      const strain = 2 * radius > thickness ? bendStrain(thickness, radius, side) : 1;
      const stock = fold(layer.stock);
      const tube = stocks.get(stock)?.smallestTube;
      if (tube === undefined) {
        if (radius >= leastRadius(thickness, LEAST_FLEXIBLE, side)) return [];
        if (strain > (unknown.get(stock)?.strain ?? -Infinity))
          unknown.set(stock, { kind: 'tubeUnknown', subject, verdict: 'lookAt', part, strain, found: radius });
        return [];
      }
      const wanted = leastRadius(thickness, tube / thickness, side);
      return [
        {
          kind: 'bend',
          subject,
          verdict: radius >= wanted ? 'holds' : 'lookAt',
          found: radius,
          wanted,
          part,
          side,
          strain,
        },
      ];
    });
  });
  return [...known, ...unknown.values(), ...toeChecks(subject, sizes, stocks)];
}

/** What is glued up flat under the tread, in the size in which it is to bend up most: bent as one, or ground. */
function toeChecks(subject: string, sizes: StyleRun['sizes'], stocks: ReadonlyMap<string, Stock>): readonly Check[] {
  const tightest = worstSize(sizes, ({ bottom }) => 1 / (toeRadius(bottom.last.profile) ?? Infinity));
  const bottom = tightest?.sizeRun.bottom;
  const radius = bottom && toeRadius(bottom.last.profile);
  const [first] = bottom ? flatForepart(bottom) : [];
  if (!bottom || !first || radius === undefined) return [];
  const found = forepartThickness(bottom);
  const { part } = first;
  const { toeSpring } = bottom.last;
  if (isForepartGround(bottom))
    return [
      {
        kind: 'toeGround',
        subject,
        verdict: 'lookAt',
        part,
        toeSpring,
        found,
        wanted: found + toeSpring,
        size: tightest.size,
      },
    ];
  // Pieces glued on one another bend as one; of each it is known what it takes, or what the least flexible does. Foam that
  // nobody has tried serves as a slab all the same (common practice).
  const least = flatForepart(bottom).flatMap(({ stock, thickness, material }) => {
    const tube = stocks.get(fold(stock))?.smallestTube;
    if (tube === undefined && material === 'foam') return [];
    return leastRadius(found, tube === undefined ? LEAST_FLEXIBLE : tube / thickness, 'over');
  });
  if (least.length === 0) return [];
  const wanted = Math.max(...least);
  const strain = bendStrain(found, radius, 'over');
  const verdict = radius >= wanted ? 'holds' : 'lookAt';
  return [{ kind: 'bend', subject, verdict, found: radius, wanted, part, side: 'toe', strain }];
}

const toes = derived<Profile, { readonly radius: number | undefined }>('tightest radius before the tread of a last');

function toeRadius(profile: Profile): number | undefined {
  return toes(profile, [], () => ({ radius: tightestCurve(profile, 'over', 'toe')?.radius })).radius;
}

const radii = derived<Profile, Readonly<Record<BendSide, number | undefined>>>('tightest radii of a last');

function radiusOf({ last: { profile } }: Bottom, side: BendSide): number | undefined {
  const radius = (one: BendSide) => tightestCurve(profile, one)?.radius;
  return radii(profile, [], () => ({ over: radius('over'), hollow: radius('hollow') }))[side];
}
