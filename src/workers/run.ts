import type { Token } from '../core/cutting/search/effort';
import { fewestSheets, type Progress, type SheetsJob } from '../core/cutting/search/fewest-sheets';
import { mustBeSound, verifyLayout } from '../core/cutting/sheet/verify-layout';
import type { Answer, Task } from '../core/cutting/search/perform';
import type { Crew } from './crew';

export type { Progress, SheetsJob, Token };

/**
 * Searches for the fewest sheets. The same job gives the same answer, whatever the crew; stopped, it gives the best that
 * it had. No layout leaves that has not been verified.
 * @param listener told of the best so far, at first of what it begins with
 * @param rank among searches that share the crew: the lowest comes first
 * @throws Problem that names a piece which fits on no sheet
 */
export async function run(
  job: SheetsJob,
  listener: (progress: Progress) => void,
  token: Token,
  crew: Crew<Task, Answer>,
  rank = 0,
): Promise<Progress> {
  const steps = fewestSheets(job);
  let step = steps.next();
  let best: Progress | undefined;
  const tell = (progress: Progress) => {
    if (progress.layout !== best?.layout) mustBeSound(verifyLayout(job.pieces, job.format, progress.layout));
    best = progress;
    listener(best);
  };
  while (!step.done) {
    const { tasks, after } = step.value;
    tell(after([]));
    const answers = token.stopped ? undefined : await crew.perform(tasks, token, (some) => tell(after(some)), rank);
    if (!answers) return best as Progress;
    step = steps.next(answers);
  }
  tell(step.value);
  return best as Progress;
}
