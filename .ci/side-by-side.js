import { spawn } from 'node:child_process';
import { availableParallelism } from 'node:os';
import process from 'node:process';

/**
 * Runs scripts of package.json beside each other, as many at a time as there are processors, in the order given: put the
 * longest first. What a script says is shown when it ends, in one piece. Fails when any has failed, once all have ended.
 *
 *     node .ci/side-by-side.js SCRIPT…
 */
const waiting = process.argv.slice(2);
const failed = [];

function run(name) {
  return new Promise((resolve) => {
    const begun = performance.now();
    const said = [];
    const script = spawn('npm', ['run', '--silent', name], {
      stdio: ['ignore', 'pipe', 'pipe'],
      shell: process.platform === 'win32',
    });
    for (const stream of [script.stdout, script.stderr]) stream.on('data', (chunk) => said.push(chunk));
    const ended = (ok, why) => {
      if (!ok) failed.push(name);
      const seconds = ((performance.now() - begun) / 1000).toFixed(0);
      process.stdout.write(`\n== ${name}: ${ok ? 'passed' : why} after ${seconds} s\n${Buffer.concat(said)}`);
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
