import process from 'node:process';
import { whatWentWrong } from '../core/what-went-wrong';
import { CODE, run } from './recompute-command';

/** Entry of recompute.cjs. Ctrl+C ends what may end early; a second one ends all. */
const stop = new AbortController();
process.once('SIGINT', () => stop.abort());

run(process.argv.slice(2), {
  folder: __dirname,
  out: (text) => void process.stdout.write(text),
  say: (text) => void process.stderr.write(text),
  live: process.stderr.isTTY,
  stop: stop.signal,
}).then(
  (code) => {
    process.exitCode = code;
  },
  (error: unknown) => {
    console.error(whatWentWrong(error));
    process.exitCode = CODE.unread;
  },
);
