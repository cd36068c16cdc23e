import { itemAt } from '../item-at';
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
  const operations = operationsOf(assemblyOf(bottom, style, mouldedFace), limits);
  const times = timesOf(operations, style, rates);
  return operations.map((operation, i) => timed(operation, itemAt(times, i)));
}

/** Named one by one, which makes a record ten times as fast as to spread two into one. */
function timed(
  { kind, acts, pieces, faces, joint, coated, whole, onHeel, apart, fixing }: Operation,
  { coats, usualCoats, open, pressed, wait, warm, minutes, adhesive }: Times,
): Times & Operation {
  return {
    kind,
    acts,
    pieces,
    faces,
    joint,
    coated,
    whole,
    onHeel,
    apart,
    fixing,
    coats,
    usualCoats,
    open,
    pressed,
    wait,
    warm,
    minutes,
    adhesive,
  };
}

/** The steps of a bottom in the order of the bench, for one pair. */
export function stepsOf(bottom: Bottom, style: Style, { rates, limits, mouldedFace }: Bench): readonly Step[] {
  const assembly = assemblyOf(bottom, style, mouldedFace);
  const operations = inOrder(operationsOf(assembly, limits));
  const times = timesOf(operations, style, rates);
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
      ...itemAt(times, i),
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
