import type { Bottom } from '../bottom/bottom';
import { finishedWidth } from '../bottom/finished-edge';
import { type SkiveThen, skiveThen } from '../bottom/skive-then';
import type { Style } from '../bottom/style';
import { assemblyOf } from './assembly';
import { caresOf, looksOf } from './care';
import type { FixingLimits } from './fixing';
import { Build } from './heights';
import { inOrder } from './in-order';
import { does } from './operation';
import { operationsOf } from './operations';
import type { Operation, Step } from './step';
import { type BenchRates, type Times, timesOf } from './times';

/** What a bottom's steps depend on besides its construction. */
export interface Bench {
  readonly rates: BenchRates;
  readonly limits: FixingLimits & { readonly highBuild: number };
  /** Whether a stock, by its code, has a face that is moulded to be walked on. */
  readonly mouldedFace: (code: string) => boolean;
}

/** Times, minutes and adhesive of all steps of a bottom, one pair: what sums are made from, which need no order. */
export function timesOfSteps(
  bottom: Bottom,
  style: Style,
  { rates, limits, mouldedFace }: Bench,
): readonly (Times & Operation)[] {
  return timesOf(operationsOf(assemblyOf(bottom, style, mouldedFace), limits), style, rates);
}

/** The steps of a bottom in the order of the bench, for one pair. */
export function stepsOf(bottom: Bottom, style: Style, { rates, limits, mouldedFace }: Bench): readonly Step[] {
  const assembly = assemblyOf(bottom, style, mouldedFace);
  const operations = timesOf(inOrder(operationsOf(assembly, limits)), style, rates);
  const build = new Build(bottom, assembly.openSeat, style.raise === 'heel');
  const high = bottom.seatStack > limits.highBuild;
  return operations.map((operation, i): Step => {
    const skive = skiveMade(operation, build);
    const low = operation.pieces.at(-1);
    const before = low && build.thicknessOf(low);
    const height = build.after(operation);
    const after = low && build.thicknessOf(low);
    return {
      ...operation,
      number: i + 1,
      height,
      left: after === before ? undefined : after,
      skive,
      width: does(operation, 'rasp edge') ? finishedWidth(operation.pieces) : undefined,
      looks: looksOf(operation),
      cares: caresOf(operation, high),
    };
  });
}

function skiveMade({ acts, pieces: [piece] }: Operation, build: Build): SkiveThen | undefined {
  if (!piece || !acts.some((act) => act === 'skive front' || act === 'skive edge')) return undefined;
  return skiveThen(piece, build.thicknessOf(piece));
}
