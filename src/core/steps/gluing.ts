import type { Material } from '../stock/stock';
import { facesOf, operation, piecesOf } from './operation';
import type { Act, Face, Joint, Operation } from './step';

/**
 * How a face of a material is made ready for adhesive (common practice): leather is roughened on whichever side is glued,
 * foam loses its skin and is primed, rubber is ground, washed and primed, cork is dusted off.
 */
const READY: Readonly<Record<Material, readonly Act[]>> = {
  cork: ['dust'],
  foam: ['roughen', 'dust', 'prime'],
  leather: ['roughen', 'dust'],
  rubber: ['roughen', 'degrease', 'prime'],
  board: ['roughen', 'dust'],
  fabric: ['dust'],
  steel: ['roughen', 'degrease'],
};

/** Steps that make faces ready, one for all that are made ready alike. The lasted bottom has a step of its own. */
export function readying(faces: readonly Face[], rest: Partial<Operation> = {}): readonly Operation[] {
  const alike = new Map<string, { readonly acts: readonly Act[]; readonly faces: Face[] }>();
  for (const face of faces) {
    // A cover's flesh side is as good as roughened: it is coated all over as it is. A welt is made ready with the lasted bottom.
    if (!face.piece || face.side === 'flesh' || face.piece.part === 'welt') continue;
    const acts = READY[face.piece.material];
    const group = alike.get(acts.join()) ?? { acts, faces: [] };
    alike.set(acts.join(), group);
    group.faces.push(face);
  }
  return [...alike.values()].map(({ acts, faces: own }) =>
    operation('prepare', acts, piecesOf(own), { faces: own, ...rest }),
  );
}

/**
 * What is done for a joint: its faces are made ready, coated, brought together and pressed.
 * @param soft whether a moulded face is to be pressed on, which wants a soft pad under it (common practice)
 */
export function gluing(joint: Joint, soft = false): readonly Operation[] {
  const faces = facesOf(joint).filter(({ area }) => area > 0);
  const pieces = piecesOf(faces);
  const rest = { joint, apart: joint.apart, faces };
  const between = faces.filter(({ within }) => within);
  return [
    ...readying(faces, { joint, apart: joint.apart }),
    // Filled flush, so that what lies on the margins finds a level face.
    ...(between.length > 0
      ? [operation('prepare', ['fill margins'], piecesOf(between), { ...rest, faces: between })]
      : []),
    operation('cement', ['coat'], pieces, { ...rest, coated: faces }),
    operation('join', ['join'], pieces, rest),
    operation('press', soft ? ['pad', 'press'] : ['press'], pieces, rest),
  ];
}
