import { area } from '../../geometry/area';
import type { Stepwise } from '../../stepwise';
import { fittingOn } from '../sheet/fitting-on';
import { allPlacements, laidSheets, type Layout, layoutOf, type NamedSheet, type Placements } from '../sheet/layout';
import type { Piece } from '../sheet/piece';
import type { SheetFormat } from '../sheet/sheet';
import { chance } from './chance';
import { packRowsStepwise } from './pack-rows';

/** In larger runs a sheet counts little, and to lay them anew takes long. */
const MOST = { pieces: 350, kinds: 100 };

/** Sheets that would have to be fuller than the fullest by more than this are not tried for. */
const FULLER = 1.02;

/** Ways tried to fill the sheets, all together. */
const TRIES = 100;

/**
 * The pieces on a sheet fewer, as often as that succeeds: a run of which little lies on the last sheet is laid anew in rows
 * varied by chance, and stays as it is where these need as many.
 * @param layout of rows, on rectangles without pairs that match
 */
export function* onFewerSheets(pieces: readonly Piece[], format: SheetFormat, layout: Layout): Stepwise<Layout> {
  const all = allPlacements(layout);
  if (pieces.length > MOST.kinds || all.length > MOST.pieces) return layout;
  const areas = pieces.map(({ ring }) => area(ring));
  const areaOf = (placements: Placements) => placements.reduce((sum, { piece }) => sum + areas[piece]!, 0);
  const share = chance();
  for (let best = layout; ;) {
    const laid = laidSheets(best, format);
    const fill = FULLER * Math.max(...laid.map((sheet) => areaOf(sheet.placements) / sizeOf(sheet)));
    const sheets = laid.slice(0, best.sheets.length > 0 ? -1 : 0);
    const left = pieces.map(({ count }) => count);
    let rest = areaOf(all);
    let room = sheets.reduce((sum, sheet) => sum + sizeOf(sheet), 0);
    const anew: NamedSheet[] = [];
    for (const sheet of sheets) {
      // What is left could not lie on the sheets that are still to come.
      if (rest > fill * room) return best;
      const fitting = fittingOn(sheet.format, pieces, left);
      const [placements = []] = yield* packRowsStepwise(fitting, sheet.format, 1, share, TRIES / sheets.length);
      for (const { piece } of placements) left[piece]!--;
      anew.push({ ...sheet, placements });
      rest -= areaOf(placements);
      room -= sizeOf(sheet);
    }
    if (left.some((count) => count > 0) || sheets.length === 0) return best;
    best = layoutOf(anew);
  }
}

function sizeOf({ format }: NamedSheet): number {
  return format.length * format.width;
}
