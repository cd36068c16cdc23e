import type { Token } from '../core/cutting/search/effort';
import { fewestSheets, type Progress, type SheetsJob } from '../core/cutting/search/fewest-sheets';
import { mustBeSound, verifyLayout } from '../core/cutting/verify-layout';
import type { Crew } from './crew';

export type { Progress, SheetsJob, Token };

/**
 * Searches for the fewest sheets. The same job gives the same answer, whatever the crew; stopped, it gives the best that
 * it had. No layout leaves that has not been verified.
 * @param listener told of the best so far, at first of what it begins with
 * @throws Problem that names a piece which fits on no sheet
 */
export async function run(
  job: SheetsJob,
  listener: (progress: Progress) => void,
  token: Token,
  crew: Crew,
): Promise<Progress> {
  const steps = fewestSheets(job);
  let step = steps.next();
  let best: Progress | undefined;
  while (!step.done) {
    best = sound(job, step.value.progress);
    listener(best);
    const answers = token.stopped ? undefined : await crew.perform(step.value.tasks, token);
    if (!answers) return best;
    step = steps.next(answers);
  }
  best = sound(job, step.value);
  listener(best);
  return best;
}

function sound({ pieces, format }: SheetsJob, progress: Progress): Progress {
  mustBeSound(verifyLayout(pieces, format, progress.layout));
  return progress;
}
