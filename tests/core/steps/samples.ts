import { type Bottom, buildBottom } from '../../../src/core/bottom/bottom';
import type { Style } from '../../../src/core/bottom/style';
import { lastInSize } from '../../../src/core/last/last-in-size';
import { Rates } from '../../../src/core/plan/cost/rates';
import { assemblyOf } from '../../../src/core/steps/assembly';
import type { Step } from '../../../src/core/steps/step';
import { type Bench, stepsOf } from '../../../src/core/steps/steps';
import type { Stock } from '../../../src/core/stock/stock';
import { findSample, lastOf, type Named, ratesOf, stockOf, styleOf } from '../samples';
import type { Listed } from './precedence';

const MORE: readonly Named[] = [
  { Stock: 'Lift 3', Material: 'leather', Thick: 3.3, Width: 500, Length: 1000 },
  { Stock: 'Foam 12 M', Material: 'foam', Thick: 12, Width: 500, Length: 1000, 'Moulded face': 'yes' },
  { Stock: 'Felt 2', Material: 'fabric', Thick: 2, Width: 500, Length: 1000 },
];

/** Stocks by their codes, the usual samples and some more. */
export function findStock(code: string): Stock {
  const named = MORE.find(({ Stock }) => Stock === code);
  return named ? stockOf(named) : findSample(code);
}

export const LIMITS = { heelFixing: 30, screwedHeel: 50, highBuild: 50 };

export function bench(...rates: readonly Named[]): Bench {
  return {
    rates: new Rates(ratesOf(...rates)),
    limits: LIMITS,
    mouldedFace: (code) => findStock(code).mouldedFace,
  };
}

export interface Built {
  readonly style: Style;
  readonly bottom: Bottom;
}

/** A style on a last of a heel height, in its base size. */
export function built(named: Named, heel = 40): Built {
  const style = styleOf({ 'Most rasping': 4, ...named });
  const last = lastInSize(lastOf({ 'Heel height': heel }), 38, 'EU');
  return { style, bottom: buildBottom(style, last, findStock) };
}

export function stepsFor({ style, bottom }: Built, ...rates: readonly Named[]): readonly Step[] {
  return stepsOf(bottom, style, bench(...rates));
}

/** What the precedence rules look at. */
export function listed({ style, bottom }: Built, steps: readonly Step[]): Listed {
  const { moulded } = assemblyOf(bottom, style, (code) => findStock(code).mouldedFace);
  return { steps, moulded };
}
