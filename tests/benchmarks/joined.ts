import { turnsFor } from '../../src/core/cutting/search/sheets';
import { roomOn } from '../../src/core/cutting/sheet/sheet';
import { area } from '../../src/core/geometry/area';
import { letOut } from '../../src/core/geometry/let-out';
import { OutlineIndex } from '../../src/core/geometry/outline-index';
import { itemAt } from '../../src/core/item-at';
import { useCompiledKernel } from '../../src/workers/compiled-engine';
import type { Findings, Options } from './main';
import { type Job, sheetJobs } from './sheet-jobs';
import { packStrip, type StripPiece } from './strip/pack-strip';

/** Jobs of more outlines in their turns are left out: to prepare every two of them takes longer than to lay them. */
const MOST_SHAPES = 200;

/**
 * What is to be expected of a search for fewer sheets: the pieces of each job that `sheets` lays on plain rectangles, laid in
 * one strip of all their sheets joined end to end, in which they have more freedom. Where strips at the published means
 * (`cutting`) need more than so many sheets, a search that lays them on so few is hardly to be had. Of offcuts the area is taken off.
 */
export function joined({ evaluations = 20 }: Options): Findings {
  useCompiledKernel();
  const lines = sheetJobs()
    .filter(({ format, least, start }) => !format.natural && format.pairs === undefined && start.sheets.length > least)
    .map((job) => ({ ...job, outlines: stripPieces(job) }))
    .filter(({ outlines }) => outlines.reduce((sum, { turns }) => sum + turns.length, 0) <= MOST_SHAPES)
    .map((job) => {
      const { length, width } = roomOn(job.format);
      const pieces = job.outlines;
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

/** Outlines as a search has them: let out by half the knife room, in the turns that it tries; those of several styles as one. */
function stripPieces({ pieces, format, start }: Job): readonly StripPiece[] {
  const turns = turnsFor(pieces, start);
  const outlines = new OutlineIndex();
  const counts: number[] = [];
  const first: number[] = [];
  pieces.forEach(({ ring, count }, kind) => {
    const { number, mirrored } = outlines.find(ring);
    const own = 2 * number + (mirrored ? 1 : 0);
    first[own] ??= kind;
    counts[own] = (counts[own] ?? 0) + count;
  });
  return first.flatMap((kind, own) => {
    const ring = letOut(itemAt(pieces, kind).ring, format.knifeRoom / 2);
    return { ring, count: counts[own] ?? 0, turns: turns[kind] ?? [0] };
  });
}
