import type { Assembly } from './assembly';
import { faceOf, operation } from './operation';
import type { Operation } from './step';

/** Stitching a sole to its welt: leather has a channel opened for the thread and closed over it, rubber a groove. */
export function stitching({ stitched, welt }: Assembly): readonly Operation[] {
  const outer = stitched.at(-1);
  if (!outer || !welt) return [];
  const channelled = outer.material === 'leather';
  const ground = { faces: [faceOf(outer, 'lower')] };
  return [
    operation('trim', ['trim round'], stitched),
    ...(channelled ? [operation('prepare', ['damp', 'open channel'], [outer], ground)] : []),
    operation('sew', ['stitch'], [...stitched, welt]),
    ...(channelled
      ? [operation('press', ['hammer seam', 'dry'], stitched), operation('sew', ['close channel'], [outer])]
      : []),
  ];
}
