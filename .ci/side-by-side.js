import { spawn } from 'node:child_process';
import { availableParallelism } from 'node:os';
import process from 'node:process';

/**
 * Runs scripts of package.json beside each other, as many at a time as there are processors, in the order given: put the
 * longest first. What a script says is shown when it ends, in one piece; of the last one at work, as it says it. Fails when
 * any has failed, once all have ended.
 *
 *     node .ci/side-by-side.js SCRIPT…
 */
const waiting = process.argv.slice(2);
const failed = [];
/** Of the scripts at work, what each has said that is not shown yet. */
const atWork = new Map();

/** Shows what a script has said and is not shown yet. */
function show(name) {
  process.stdout.write(Buffer.concat(atWork.get(name).splice(0)));
}

/** The script that is left, or undefined while there are more. */
function lastAtWork() {
  return atWork.size === 1 && waiting.length === 0 ? [...atWork.keys()][0] : undefined;
}

function run(name) {
  return new Promise((resolve) => {
    const begun = performance.now();
    const said = [];
    atWork.set(name, said);
    process.stdout.write(`\n== ${name}: begun\n`);
    const script = spawn('npm', ['run', '--silent', name], {
      stdio: ['ignore', 'pipe', 'pipe'],
      shell: process.platform === 'win32',
    });
    for (const stream of [script.stdout, script.stderr]) {
      stream.on('data', (chunk) => {
        said.push(chunk);
        if (lastAtWork() === name) show(name);
      });
    }
    const ended = (ok, why) => {
      if (!ok) failed.push(name);
      const seconds = ((performance.now() - begun) / 1000).toFixed(0);
      process.stdout.write(`\n== ${name}: ${ok ? 'passed' : why} after ${seconds} s\n`);
      show(name);
      atWork.delete(name);
      const last = lastAtWork();
      if (last) {
        process.stdout.write(`\n== ${last}: still at work\n`);
        show(last);
      }
      resolve();
    };
    script.on('error', (error) => ended(false, `could not be run (${error.message})`));
    script.on('close', (code) => ended(code === 0, 'FAILED'));
  });
}

async function runWaiting() {
  for (let name = waiting.shift(); name !== undefined; name = waiting.shift()) await run(name);
}

await Promise.all(Array.from({ length: Math.min(availableParallelism(), waiting.length) }, runWaiting));
if (failed.length > 0) {
  process.stdout.write(`\nFailed: ${failed.join(', ')}\n`);
  process.exitCode = 1;
}
