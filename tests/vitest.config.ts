import { readdirSync, readFileSync } from 'node:fs';
import { defineConfig } from 'vitest/config';

/** All unit tests. */
const UNIT = readdirSync('tests', { recursive: true, encoding: 'utf8' })
  .map((name) => `tests/${name.replaceAll('\\', '/')}`)
  .filter((name) => name.endsWith('.test.ts') && !name.startsWith('tests/browser/'));

/** Of them those that put something in the place of what all share: the clock, a global, the database, a part of a module. */
const APART = UNIT.filter((name) => /\bvi\b|\bglobalThis\b|fake-indexeddb/.test(readFileSync(name, 'utf8')));

const unit = {
  // The project's folder, which is where npm runs: a path here would resolve against it, not against this file.
  root: '.',
  testTimeout: 30_000,
  setupFiles: ['tests/holds-something.ts'],
  sequence: { groupOrder: 0 },
};

export default defineConfig({
  test: {
    root: '.',
    // Vitest would leave one processor for watching, which is half of a machine with two.
    maxWorkers: '100%',
    projects: [
      {
        // Files share what they import: to load it anew for each takes longer than most of their tests.
        test: {
          ...unit,
          name: 'unit-together',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', ...APART],
          pool: 'threads' as const,
          isolate: false,
        },
      },
      {
        test: { ...unit, name: 'unit', include: APART },
      },
      {
        test: {
          name: 'browser',
          root: '.',
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          // How long to look again and again for what is to come, where the test says nothing else; Vitest's second is short.
          expect: { poll: { timeout: 30_000 } },
          // After the unit tests: beside a Chromium, which takes what it gets, those would wait in vain.
          sequence: { groupOrder: 1 },
          // A busy machine may starve the browser. The report names each test that was run twice.
          retry: 1,
        },
      },
    ],
  },
});
