import { itemAt } from '../item-at';
import type { Layer } from '../bottom/layer';
import type { Assembly } from './assembly';
import { faceOf, operation, overlap } from './operation';
import type { Operation } from './step';

/**
 * Where a ground face is levelled to its height, off the last or on it: under a stack of lifts and under a wedge's
 * platform, flat for what comes below; elsewhere where a height is built too high. What is covered is levelled before.
 */
export function levelling(assembly: Assembly, apart: boolean): readonly Operation[] {
  const { style, lifts, flat, following, covered, apart: off } = assembly;
  const platforms = flat.filter(({ part }) => part === 'platform');
  const outsole = flat.some(({ part }) => part === 'outsole');
  const stackApart = lifts.length > 0 && off.includes(itemAt(lifts, 0));
  const uncovered = !overlap(covered, lifts);
  const list: Operation[] = [];
  if (apart) {
    const early = stackApart && (platforms.length > 0 || !uncovered);
    if (early) list.push(...level(assembly, lifts, true));
    if (stackApart && platforms.length > 0 && !uncovered) list.push(...level(assembly, off, true));
    if (style.raise === 'none' && off.some(({ rasped, part }) => rasped && part === 'platform')) {
      list.push(
        ...level(
          assembly,
          off.filter(({ part }) => part !== 'outsole'),
          true,
        ),
      );
    }
    return list;
  }
  // A covered heel is built level, and levelled once more when it is fixed.
  if (stackApart && !uncovered && style.raise === 'heel') {
    // Its margins lie on the ground face by then.
    for (const one of level(assembly, lifts)) {
      list.push({ ...one, faces: one.faces.map((ground) => ({ ...ground, within: true })) });
    }
  }
  if (stackApart && uncovered && platforms.length === 0) list.push(...level(assembly, lifts));
  if (stackApart && uncovered && platforms.length > 0 && outsole) list.push(...level(assembly, off));
  if (lifts.length > 0 && !stackApart) list.push(...level(assembly, lifts));
  if (!stackApart && platforms.some(({ rasped }) => rasped)) list.push(...level(assembly, platforms));
  for (const piece of following) {
    if (piece.rasped && !off.includes(piece)) list.push(...level(assembly, [piece]));
  }
  return list;
}

/**
 * A face that is moulded to be walked on is left alone: what is too much comes off the other side of its piece. Of a block
 * the saw has taken that off already.
 */
function level({ moulded }: Assembly, stack: readonly Layer[], apart = false): readonly Operation[] {
  const low = stack.at(-1);
  if (!low || (moulded(low) && (!low.rasped || low.sawn))) return [];
  if (moulded(low)) return [operation('rasp', ['thin'], [low], { faces: [faceOf(low, 'upper')] })];
  return [operation('rasp', ['level'], stack, { apart, faces: [faceOf(low, 'lower')] })];
}
