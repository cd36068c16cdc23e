import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';

const slashed = (path: string) => path.replaceAll('\\', '/');

/** Names below a folder, with their folders, without what they end in. */
const namesIn = (folder: string, end: string) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith(end))
    .map((name) => slashed(name).slice(0, -end.length));

/** Whether there is anything to test: a file of types says nothing that could be wrong at work. */
const works = (file: string) => /^export (async )?(function|const|class)/m.test(readFileSync(file, 'utf8'));

const known = new Map<string, readonly string[]>();

/** Files of the project that a file imports. */
function importsOf(file: string): readonly string[] {
  let found = known.get(file);
  if (!found) {
    const paths = [...readFileSync(file, 'utf8').matchAll(/ from '(\.[^']*)'/g)].map(([, path = '']) => path);
    found = paths.map((path) => `${slashed(join(dirname(file), path))}.ts`).filter((one) => existsSync(one));
    known.set(file, found);
  }
  return found;
}

/** All files that a file comes to by its imports. */
function reached(from: string, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(from)) return seen;
  seen.add(from);
  for (const file of importsOf(from)) reached(file, seen);
  return seen;
}

describe('every file of core', () => {
  it('has its test at the same place, or is a part of what a test of its room is about', () => {
    const tests = namesIn('tests/core', '.test.ts').map((name) => ({
      room: dirname(name),
      uses: reached(`tests/core/${name}.test.ts`),
    }));
    const files = namesIn('src/core', '.ts').filter((name) => works(`src/core/${name}.ts`));
    const alone = files.filter((name) => !existsSync(`tests/core/${name}.test.ts`));
    // Those that have none must not come to be most.
    expect(alone.length).toBeLessThan(files.length / 2);
    const held = (name: string) => {
      const room = dirname(name) === '.' ? '' : `${dirname(name)}/`;
      return tests.some((test) => `${test.room}/`.startsWith(room) && test.uses.has(`src/core/${name}.ts`));
    };
    expect(alone.filter((name) => !held(name))).toEqual([]);
  });
});
