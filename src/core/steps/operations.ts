import type { Assembly, Wrapped } from './assembly';
import { bending } from './bending';
import { builtApart } from './built-apart';
import { covering, isOfHeel } from './covering';
import { ending } from './ending';
import type { FixingLimits } from './fixing';
import { gluing, readying } from './gluing';
import { breastCut, heelWork, nailedOn } from './heel';
import { jointsOf } from './joints';
import { lastedBottom, lasting, piecesReady } from './lasted-bottom';
import { levelling } from './levelling';
import { faceOf, facesOf, operation } from './operation';
import { stitching } from './sewing';
import type { Joint, Operation } from './step';

/**
 * Everything that the bench does to a bottom, as its construction asks for it. What comes first here is taken first where
 * the rules leave a choice; what must wait for something is taken as soon as that is done.
 */
export function operationsOf(assembly: Assembly, limits: FixingLimits): readonly Operation[] {
  const joints = jointsOf(assembly);
  return [
    ...piecesReady(assembly),
    ...lasting(assembly),
    ...builtApart(assembly, joints),
    ...lastedBottom(assembly),
    ...stitching(assembly),
    ...levelling(assembly, false),
    ...heelWork(assembly, limits),
    ...assembly.covers.flatMap((one) => coveredOnLast(assembly, one, joints)),
    ...joinedOnLast(assembly, joints),
    ...ending(assembly, limits),
  ];
}

/** A wall that is on the last before it is covered. */
function coveredOnLast(
  { style, flapped }: Assembly,
  { cover, covered }: Wrapped,
  joints: readonly Joint[],
): readonly Operation[] {
  const joint = joints.find(({ apart, adds }) => !apart && adds.includes(cover));
  if (!joint) return [];
  return [
    operation('wait', ['cure'], covered),
    operation('rasp', ['rasp edge'], covered, { faces: covered.map((piece) => faceOf(piece, 'edge')) }),
    ...(flapped && isOfHeel(covered, style) ? breastCut(covered) : []),
    ...covering(joint, style),
  ];
}

function joinedOnLast(assembly: Assembly, joints: readonly Joint[]): readonly Operation[] {
  const { covers, lifts, nailed, flapped, moulded } = assembly;
  const onLast = joints.filter(({ apart, adds }) => !apart && !covers.some(({ cover }) => adds.includes(cover)));
  const nails = nailed ? onLast.filter(({ adds }) => adds.some((piece) => lifts.includes(piece))) : [];
  return onLast.flatMap((joint) => {
    if (nails.includes(joint)) {
      const first = joint === nails[0] ? readying(nails.flatMap(facesOf)) : [];
      return [...first, nailedOn(joint, lifts)];
    }
    const flap = joint.below.some(({ zone }) => zone === 'flap');
    return [
      ...joint.adds.flatMap((piece) => bending(assembly, piece)),
      ...gluing(joint, joint.brings.some(moulded)),
      ...(flap && flapped?.flap?.tabLength ? [operation('join', ['turn tab'], [flapped], { joint })] : []),
    ];
  });
}
