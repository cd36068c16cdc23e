import { defineConfig } from 'vitest/config';

// The root is the project's folder, which is where npm runs: a path here would resolve against it, not against this file.
export default defineConfig({
  test: {
    root: '.',
    projects: [
      {
        test: {
          name: 'unit',
          root: '.',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**'],
          testTimeout: 30_000,
          // Vitest would leave one processor for watching, which is half of a machine with two.
          maxWorkers: '100%',
          sequence: { groupOrder: 0 },
          setupFiles: ['tests/holds-something.ts'],
        },
      },
      {
        test: {
          name: 'browser',
          root: '.',
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
          sequence: { groupOrder: 1 },
          // A busy machine may starve the browser. The report names each test that was run twice.
          retry: 1,
        },
      },
    ],
  },
});
