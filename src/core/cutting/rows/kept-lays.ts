import { ringContent } from '../../geometry/ring-content';
import type { Ring } from '../../geometry/ring';
import { Memo } from '../../memo';
import { Memory } from '../../memory';
import { shared } from '../../shared';
import { Lays } from './lay';

/** Bytes that outlines may hold as they lie in rows. */
const MOST = 24e6;

/**
 * Bytes of an outline and of each of its corners in every turn, both feet: the curve about it, and four sides of two turns,
 * each seen from either end (derived from what they hold).
 */
const BYTES = { outline: 2000, corner: 500 };

const kept = new Memo<{ readonly lays: Lays; readonly corners: number }>(
  shared('outlines as they lie in rows', () => new Memory(MOST)),
  'lays',
  ({ corners }) => BYTES.outline + BYTES.corner * corners,
);

/** An outline in its turns, those of the last time where it is the same. @param halfRoom what it is let out by, mm */
export function keptLays(ring: Ring, halfRoom: number): Lays {
  const make = () => ({ lays: Lays.of(ring, halfRoom), corners: ring.length });
  return kept.get(`${halfRoom} ${ringContent(ring)}`, make).lays;
}
