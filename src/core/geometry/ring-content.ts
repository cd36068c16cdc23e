import { derived } from '../derived';
import { Fingerprint } from '../fingerprint';
import { mirror } from './mirror';
import type { Ring } from './ring';

const contents = derived<Ring, string>('content of a ring');
const mirrored = derived<Ring, Ring>('mirror image of a ring');

/** Stands for a ring in keys: the same for rings that are equal point for point. */
export function ringContent(ring: Ring): string {
  return contents(ring, [], () => {
    const print = new Fingerprint();
    for (let i = 0; i < ring.length; i++) print.number(ring[i]![0]).number(ring[i]![1]);
    return print.toString();
  });
}

/** The mirror image of a ring, made once for it. */
export function mirrorOnce(ring: Ring): Ring {
  return mirrored(ring, [], () => mirror(ring));
}
