import { existsSync, statSync, watch } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';

/** Programs write a file in several steps: it is read once it has rested, ms. */
const REST = 300;

/**
 * Works files out again as they change, one after the other, until it is stopped.
 * @param named files, and folders of files
 * @param jobs what there is to do now
 * @param failed told of what keeps a file from being worked on; the others go on
 */
export async function watchFiles<J extends { readonly file: string }>(
  named: readonly string[],
  isWanted: (name: string) => boolean,
  jobs: () => readonly J[],
  work: (job: J) => Promise<unknown>,
  failed: (error: unknown) => void,
  stop: AbortSignal,
): Promise<void> {
  const resting = new Map<string, ReturnType<typeof setTimeout>>();
  let line: Promise<unknown> = Promise.resolve();
  const changed = (file: string) => {
    clearTimeout(resting.get(file));
    const begin = () => {
      resting.delete(file);
      line = line
        .then(async () => {
          const job = existsSync(file) ? jobs().find((one) => resolve(one.file) === resolve(file)) : undefined;
          if (job && !stop.aborted) await work(job);
        })
        .catch(failed);
    };
    resting.set(file, setTimeout(begin, REST));
  };
  const watchers = named.map((name) => {
    const folder = existsSync(name) && statSync(name).isDirectory();
    // A folder is watched for a single file too: programs put a new file in the old one's place.
    return watch(folder ? name : dirname(resolve(name)), (_, file) => {
      if (file !== null && isWanted(file) && (folder || file === basename(name)))
        changed(folder ? join(name, file) : name);
    });
  });
  await new Promise<void>((ended) => {
    if (stop.aborted) ended();
    else stop.addEventListener('abort', () => ended(), { once: true });
  });
  for (const watcher of watchers) watcher.close();
  for (const timer of resting.values()) clearTimeout(timer);
  await line;
}
