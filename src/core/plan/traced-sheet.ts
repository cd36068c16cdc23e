import { box } from '../geometry/box';
import { outline as soundRing } from '../geometry/outline';
import type { Ring } from '../geometry/ring';
import { BEST, fromOrigin, type NaturalSheet } from '../cutting/sheet/natural-sheet';
import { Problem } from '../problem';
import { fold } from './codes';
import type { Outline } from './inputs';

/** More points than this on all rings of a sheet would take too long to lay pieces within. */
const MOST_POINTS = 2000;

/** The row of Bottom stock that names a traced sheet. */
export interface NamesSheet {
  readonly row: number;
  readonly outline: string;
  /** Whether pairs are to match across its backbone. */
  readonly across: boolean;
}

/**
 * The traced sheet of a code: its outline, holes and zones, moved so that the box about it begins at the origin.
 * @throws Problem where the code has no outline or several, a ring is none, or a zone lacks its quality
 */
export function tracedSheet({ row, outline: code, across }: NamesSheet, outlines: readonly Outline[]): NaturalSheet {
  const own = outlines.filter((one) => fold(one.code) === fold(code));
  const named = (reason: string) =>
    new Problem('invalid', { argument: 'stock', table: 'Bottom stock', row, column: 'Outline' }, reason);
  const sheets = own.filter(({ role }) => role === 'sheet');
  const [sheet] = sheets;
  if (!sheet) {
    throw named(
      `"${code}" has no outline in Outlines; enter its points there with the role sheet, or leave this blank`,
    );
  }
  if (sheets.length > 1) {
    throw named(
      `"${code}" has ${sheets.length} rings with the role sheet in Outlines; give each sheet a code of its own`,
    );
  }
  if (own.reduce((sum, { points }) => sum + points.length, 0) > MOST_POINTS) {
    throw named(`"${code}" has more than ${MOST_POINTS} points in Outlines; leave some out`);
  }
  const traced: NaturalSheet = {
    outline: ringOf(sheet),
    holes: own.filter(({ role }) => role === 'hole').map(ringOf),
    zones: own
      .filter(({ role }) => role === 'zone')
      .map((zone) => {
        if (zone.quality === undefined)
          throw atOutline(zone, 'Quality', 'a zone needs its quality; enter a letter from A');
        return { ring: ringOf(zone), quality: zone.quality };
      }),
    quality: sheet.quality ?? BEST,
    backbone: 0,
  };
  const { bottom, top } = box(traced.outline);
  if (across && (bottom >= 0 || top <= 0)) {
    throw named(`pairs match across y = 0, and "${code}" lies on one side of it; trace it from its backbone`);
  }
  return fromOrigin(traced);
}

function ringOf(traced: Outline): Ring {
  try {
    return soundRing(traced.points, 'outlines');
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    throw atOutline(traced, 'x', `${traced.code}, ring ${traced.ring}: ${error.reason}`);
  }
}

function atOutline({ row }: Outline, column: string, reason: string): Problem {
  return new Problem('invalid', { argument: 'outlines', table: 'Outlines', row, column }, reason);
}
