import { flatForepart, isForepartGround } from '../bottom/flat-forepart';
import type { Assembly } from './assembly';
import { covering } from './covering';
import { gluing } from './gluing';
import { breastCut } from './heel';
import { levelling } from './levelling';
import { faceOf, operation, overlap } from './operation';
import type { Joint, Operation } from './step';

/** What is built up off the last: glued, levelled, rasped to the last, its edge rasped as one, covered. */
export function builtApart(assembly: Assembly, joints: readonly Joint[]): readonly Operation[] {
  const { style, apart, flapped, moulded } = assembly;
  if (apart.length === 0) return [];
  const covers = joints.find(({ apart: off, adds }) => off && adds.some(({ part }) => part === 'cover'));
  const glued = joints.filter((joint) => joint.apart && joint !== covers);
  const lifts = assembly.lifts.filter((lift) => apart.includes(lift));
  const laid = glued.filter(({ adds }) => adds.every(({ part }) => part === 'lift'));
  const up = joints.find((joint) => !joint.apart && overlap(joint.brings, apart));
  const off = { apart: true };
  const block = style.laying === 'block' && lifts.length > 0;
  const glue = (joint: Joint) => gluing(joint, joint.adds.some(moulded));
  const list: Operation[] = laid.flatMap(glue);
  if (block && laid.length > 0) list.push(operation('wait', ['cure'], lifts, off));
  if (style.raise === 'heel' && style.heelCore !== 'none') {
    list.push(operation('fix', ['bore core', 'glue core'], lifts, off), operation('wait', ['cure core'], lifts, off));
  }
  if (block) list.push(operation('saw', ['saw'], lifts, { ...off, faces: lifts.map((lift) => faceOf(lift, 'edge')) }));
  list.push(...levelling(assembly, true), ...glued.filter((joint) => !laid.includes(joint)).flatMap(glue));
  if (lifts.length > 0) {
    const tops = lifts.map((lift) => faceOf(lift, 'upper', 'top'));
    list.push(
      operation('rasp', ['rasp to last'], lifts, { ...off, joint: up, faces: tops }),
      operation('check', ['try on last'], apart, { ...off, joint: up }),
    );
  }
  list.push(...toeGround(assembly, up, glued.length > 0));
  // The edge of a bare slab is rasped at the end, flush with all that is under it.
  if (lifts.length > 0 || covers) {
    const edges = apart.map((piece) => faceOf(piece, 'edge'));
    // A block that nothing was glued to since has cured.
    if (glued.length > (block ? laid.length : 0)) list.push(operation('wait', ['cure'], apart, off));
    list.push(operation('rasp', ['rasp edge'], apart, { ...off, faces: edges }));
  }
  if (covers && flapped) list.push(...breastCut(lifts, true));
  if (covers) list.push(...covering(covers, style));
  return list;
}

/** A forepart that is too stout to be bent is ground to the last's toe spring, above and below, and tried. */
function toeGround({ bottom, lifts }: Assembly, up: Joint | undefined, glued: boolean): readonly Operation[] {
  if (!isForepartGround(bottom)) return [];
  const pieces = flatForepart(bottom);
  const [top, low] = [pieces[0], pieces.at(-1)];
  if (!top || !low) return [];
  const faces = [faceOf(top, 'upper', lifts.length > 0 ? 'forepart' : undefined), faceOf(low, 'lower')];
  const off = { apart: true, joint: up };
  return [
    ...(glued && pieces.length > 1 && lifts.length === 0 ? [operation('wait', ['cure'], pieces, { apart: true })] : []),
    operation('rasp', ['grind toe'], pieces, { ...off, faces }),
    // With lifts all is tried at once.
    ...(lifts.length === 0 ? [operation('check', ['try on last'], pieces, off)] : []),
  ];
}
