import { turnsFor } from '../../src/core/cutting/search/sheets';
import { roomOn } from '../../src/core/cutting/sheet/sheet';
import { area } from '../../src/core/geometry/area';
import { letOut } from '../../src/core/geometry/let-out';
import { useCompiledKernel } from '../../src/workers/compiled-engine';
import type { Findings, Options } from './main';
import { type Job, sheetJobs } from './sheet-jobs';
import { packStrip, type StripPiece } from './strip/pack-strip';

/**
 * What is to be expected of a search for fewer sheets: the pieces of each job that `sheets` lays on plain rectangles, laid in
 * one strip of all their sheets joined end to end, in which they have more freedom. Where strips at the published means
 * (`cutting`) need more than so many sheets, a search that lays them on so few is hardly to be had. Of offcuts the area is taken off.
 */
export function joined({ evaluations = 20 }: Options): Findings {
  useCompiledKernel();
  const lines = sheetJobs()
    .filter(({ format, least, start }) => !format.natural && format.pairs === undefined && start.sheets.length > least)
    .map((job) => {
      const { length, width } = roomOn(job.format);
      const pieces = stripPieces(job);
      const strip = packStrip({ pieces, width, evaluations: evaluations * 1e6, seed: 1 }, { stopped: false });
      const laid = pieces.reduce((sum, { ring, count }) => sum + count * area(ring), 0);
      const shelf = (job.format.offcuts ?? []).reduce((sum, offcut) => {
        const room = roomOn({ ...job.format, ...offcut });
        return sum + room.length * room.width;
      }, 0);
      const sheets = strip.length / length - shelf / (length * width);
      return {
        run: job.name,
        least: job.least,
        quick: job.start.sheets.length,
        'joined, sheets': Math.round(sheets * 100) / 100,
        'filled %': Math.round((1000 * laid) / (strip.length * width)) / 10,
      };
    });
  return { lines, holds: true };
}

/** Outlines as a search has them: let out by half the knife room, in the turns that it tries. */
function stripPieces({ pieces, format, start }: Job): readonly StripPiece[] {
  const turns = turnsFor(pieces, start);
  return pieces.map(({ ring, count }, kind) => ({
    ring: letOut(ring, format.knifeRoom / 2),
    count,
    turns: turns[kind] ?? [0],
  }));
}
