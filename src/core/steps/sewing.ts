import type { Assembly } from './assembly';
import { holdsNails } from './fixing';
import { faceOf, operation } from './operation';
import type { Operation } from './step';

/**
 * Stitching a sole to its welt: leather has a channel opened for the thread and closed over it, rubber a groove. Where the
 * welt ends at the seat, leather is nailed there; a heel's seat is nailed with the heel.
 */
export function stitching({ stitched, welt, openSeat, style }: Assembly): readonly Operation[] {
  const outer = stitched.at(-1);
  if (!outer || !welt) return [];
  const channelled = outer.material === 'leather';
  const ground = { faces: [faceOf(outer, 'lower')] };
  const nailed = openSeat && style.raise !== 'heel' && outer.underSeat && holdsNails(outer);
  return [
    operation('trim', ['trim round'], stitched),
    ...(channelled ? [operation('prepare', ['damp', 'open channel'], [outer], ground)] : []),
    operation('sew', ['stitch'], [...stitched, welt]),
    ...(channelled
      ? [operation('press', ['hammer seam', 'dry'], stitched), operation('sew', ['close channel'], [outer])]
      : []),
    ...(nailed ? [operation('fix', ['nail seat'], [outer])] : []),
  ];
}
