import type { Layer } from '../bottom/layer';
import type { Assembly } from './assembly';
import { type FixingLimits, heelFixing, holdsNails, liftNails } from './fixing';
import { facesOf, faceOf, operation, overlap, piecesOf } from './operation';
import type { Joint, Operation } from './step';

/** What a heel asks for besides its joints: the seat nailed, a rand, what fixes it, its breast, the trial of its top piece. */
export function heelWork(assembly: Assembly, limits: FixingLimits): readonly Operation[] {
  const { style, lifts, following, nailed, topPiece, flapped, bottom, covered } = assembly;
  if (style.raise !== 'heel' || lifts.length === 0) return [];
  const over = following.findLast(({ underSeat }) => underSeat);
  const fixing = nailed ? undefined : heelFixing(bottom, limits);
  return [
    ...(over && holdsNails(over) ? [operation('fix', ['nail seat'], [over])] : []),
    ...(nailed ? [operation('fix', ['lay rand'], [])] : []),
    ...(fixing
      ? [
          operation('finish', ['last out'], [], { onHeel: lifts }),
          operation('fix', fixing.screws ? ['nail from inside', 'screw from inside'] : ['nail from inside'], lifts, {
            fixing,
          }),
          operation('prepare', ['filler last in'], [], { onHeel: lifts }),
        ]
      : []),
    // Where the ends of a cover are turned in on to it, it is cut before it is covered.
    ...(flapped && !overlap(covered, lifts) ? breastCut(lifts) : []),
    ...(topPiece ? [operation('check', ['try on ground'], [topPiece])] : []),
  ];
}

/** The breast of a heel cut clean for the flap of a sole. */
export function breastCut(lifts: readonly Layer[], apart = false): readonly Operation[] {
  return [operation('trim', ['cut breast'], lifts, { apart, faces: lifts.map((lift) => faceOf(lift, 'breast')) })];
}

/** A lift that is nailed on: pasted, nailed, its nails punched under, trimmed, peened, skived level for the next. */
export function nailedOn(joint: Joint, lifts: readonly Layer[]): Operation {
  const faces = facesOf(joint);
  const [lift] = joint.adds as readonly [Layer];
  const fixing = liftNails(lift, lifts.indexOf(lift), lifts.length);
  return operation(
    'fix',
    ['paste', 'join', 'nail', 'punch under', 'trim lift', 'peen', 'skive level'],
    piecesOf(joint.below),
    { joint, faces, coated: faces, fixing },
  );
}
