import { box } from '../../core/geometry/box';
import type { Box } from '../../core/geometry/ring';
import type { SizeRun } from '../../core/plan/runs';
import { blockTemplate } from './block-template';
import { chosenPieces, type InParts, type PaperJob, sizeWords, stockOf } from './chosen';
import type { Marks } from '../mark';
import { templatesOf } from './template';
import type { TrueDrawing } from './true-pages';

/** A drawing for a file of its own, mm, y downward within its box. */
export interface FileDrawing {
  readonly name: string;
  readonly box: Box;
  draw(): Marks;
}

function fileOf({ name, ground, draw }: TrueDrawing): FileDrawing {
  const { left, right, bottom, top } = box(ground);
  return {
    name,
    box: { left: left - 1, right: right + 1, bottom: -top - 1, top: -bottom + 1 },
    draw: () => draw(0),
  };
}

/** One drawing a template, at true size, heel left; a block has its side view as well. */
export function* pieceFiles(job: PaperJob): InParts<readonly FileDrawing[]> {
  const files: FileDrawing[] = [];
  const blocks = new Set<SizeRun>();
  for (const line of chosenPieces(job)) {
    const size = sizeWords(line.sizeRun);
    for (const template of templatesOf(line, stockOf(job, line.layer.stock), size)) files.push(fileOf(template));
    if (line.layer.sawn && !blocks.has(line.sizeRun)) {
      blocks.add(line.sizeRun);
      const block = blockTemplate(line.run, line.sizeRun, size);
      if (block) files.push(fileOf(block));
    }
    yield line.run.style.code;
  }
  return files;
}
