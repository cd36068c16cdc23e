import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Names under which Chromium is installed. */
const names = ['chromium', 'chromium-browser', 'google-chrome'];

const wanted =
  'The tests in the browser need Chromium. Install it (on Debian or Ubuntu: apt-get install chromium), ' +
  'or name its program in the environment variable CHROMIUM.';

/**
 * Path of a Chromium on this machine: the one that CHROMIUM names, else the first found on the PATH.
 * @throws Error that says what to install where there is none
 */
export function chromiumPath(): string {
  const named = process.env['CHROMIUM'];
  if (named) {
    const found = named.includes('/') ? runnable(named) : onPath(named);
    if (!found) throw new Error(`CHROMIUM names ${named}, which is no program that can be run. ${wanted}`);
    return found;
  }
  const found = names.map(onPath).find((path) => path !== undefined);
  if (!found) throw new Error(wanted);
  return found;
}

/** Finds Chromium, or installs Debian's package where this user may. @throws Error where neither works */
export function ensureChromium(): string {
  try {
    return chromiumPath();
  } catch (error) {
    if (process.env['CHROMIUM']) throw error;
    const install = installer();
    if (!install) throw error;
    console.log('Installing Debian’s package chromium for the tests in the browser.');
    const done =
      install(['update', '-qq']) &&
      install(['install', '-y', '-qq', '--no-install-recommends', 'chromium', 'fonts-liberation']);
    if (!done) throw new Error(`Chromium could not be installed. ${wanted}`, { cause: error });
    return chromiumPath();
  }
}

/** Runs apt-get as root, directly or by a sudo that asks for no password; undefined where neither is possible. */
function installer(): ((args: readonly string[]) => boolean) | undefined {
  if (!onPath('apt-get')) return undefined;
  const asRoot = process.getuid?.() === 0;
  if (!asRoot && (!onPath('sudo') || spawnSync('sudo', ['-n', 'true']).status !== 0)) return undefined;
  const command = asRoot ? ['apt-get'] : ['sudo', '-n', 'apt-get'];
  return (args) => {
    const [program, ...first] = command as [string, ...string[]];
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    return spawnSync(program, [...first, ...args], { stdio: 'inherit', env }).status === 0;
  };
}

function onPath(name: string): string | undefined {
  return (process.env['PATH'] ?? '')
    .split(delimiter)
    .filter(Boolean)
    .map((folder) => runnable(join(folder, name)))
    .find((path) => path !== undefined);
}

function runnable(path: string): string | undefined {
  try {
    accessSync(path, constants.X_OK);
    return path;
  } catch {
    return undefined;
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    console.log(`Tests in the browser run in ${ensureChromium()}.`);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exit(1);
  }
}
