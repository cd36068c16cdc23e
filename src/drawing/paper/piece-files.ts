import { box } from '../../core/geometry/box';
import type { Box } from '../../core/geometry/ring';
import { chosenPieces, type InParts, type PaperJob, sizeWords, stockOf } from './chosen';
import type { Marks } from '../mark';
import { templatesOf } from './template';

/** A drawing for a file of its own, mm, y downward within its box. */
export interface FileDrawing {
  readonly name: string;
  readonly box: Box;
  draw(): Marks;
}

/** One drawing a template, at true size, heel left. */
export function* pieceFiles(job: PaperJob): InParts<readonly FileDrawing[]> {
  const files: FileDrawing[] = [];
  for (const line of chosenPieces(job)) {
    for (const template of templatesOf(line, stockOf(job, line.layer.stock), sizeWords(line.sizeRun))) {
      const { left, right, bottom, top } = box(template.ground);
      files.push({
        name: template.name,
        box: { left: left - 1, right: right + 1, bottom: -top - 1, top: -bottom + 1 },
        draw: () => template.draw(0),
      });
    }
    yield line.run.style.code;
  }
  return files;
}
