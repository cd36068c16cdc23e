import type { Layer } from '../bottom/layer';
import { area } from '../geometry/area';
import type { Ring } from '../geometry/ring';
import type { Act, Face, Joint, Operation, StepKind } from './step';

/** An operation with what most have not left out. All look alike to the engine: they are looked through thousands of times. */
export function operation(
  kind: StepKind,
  acts: readonly Act[],
  pieces: readonly Layer[] = [],
  {
    faces = [],
    joint,
    coated,
    whole,
    onHeel,
    apart,
    fixing,
  }: Partial<Omit<Operation, 'kind' | 'acts' | 'pieces'>> = {},
): Operation {
  return { kind, acts, pieces, faces, joint, coated, whole, onHeel, apart, fixing };
}

const areas = new WeakMap<Ring, number>();

/** Area of a piece, mm²: it is asked for once a face. */
export function areaOf({ ring }: Pick<Layer, 'ring'>): number {
  let size = areas.get(ring);
  if (size === undefined) {
    size = area(ring);
    areas.set(ring, size);
  }
  return size;
}

/** A side of a piece, or the part of it in a zone, with the area of its outline. */
export function faceOf(piece: Layer, side: Face['side'], zone?: Face['zone']): Face {
  return { piece, side, zone, area: areaOf(piece) };
}

/** Whether an operation does one of some acts. */
export function does(operation: Operation, ...acts: readonly Act[]): boolean {
  for (const act of operation.acts) if (acts.includes(act)) return true;
  return false;
}

/**
 * Whether an operation marks a piece on its sheet and cuts it out: it is done once the cutting is booked. Of all that is
 * prepared it alone is; skiving and making ready are of the bench (derived).
 */
export function isCuttingOut(operation: Operation): boolean {
  return does(operation, 'cut');
}

/** All faces of a joint. */
export function facesOf({ above, below }: Joint): readonly Face[] {
  return [...above, ...below];
}

/** The pieces whose faces they are, each once. */
export function piecesOf(faces: readonly Face[]): readonly Layer[] {
  const pieces: Layer[] = [];
  for (const { piece } of faces) if (piece && !pieces.includes(piece)) pieces.push(piece);
  return pieces;
}

const underMargin = ({ zone }: Face) => zone === 'over' || zone === 'under' || zone === 'in';

/** Whether two faces are the same or lie within one another. */
export function sameFace(one: Face, other: Face): boolean {
  return (
    one.piece === other.piece &&
    one.side === other.side &&
    (one.zone === undefined || other.zone === undefined || one.zone === other.zone) &&
    (one.beneath === undefined || other.beneath === undefined || one.beneath === other.beneath) &&
    !(one.within && underMargin(other)) &&
    !(other.within && underMargin(one))
  );
}

export function overlap<T>(one: readonly T[], other: readonly T[]): boolean {
  return one.some((each) => other.includes(each));
}
