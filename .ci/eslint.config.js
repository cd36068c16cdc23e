import { dirname } from 'node:path';
import tseslint from 'typescript-eslint';

export default tseslint.config(
  { ignores: ['dist/**', '.cache/**'] },
  ...tseslint.configs.recommended,
  {
    rules: {
      eqeqeq: ['error', 'always', { null: 'ignore' }],
      'no-console': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/consistent-type-imports': 'error',
    },
  },
  {
    // A promise that nobody waits for hides its failure, and "void" before it only hides that.
    files: ['**/*.ts'],
    languageOptions: { parserOptions: { project: 'tsconfig.json', tsconfigRootDir: dirname(import.meta.dirname) } },
    rules: {
      '@typescript-eslint/no-floating-promises': ['error', { ignoreVoid: false }],
      '@typescript-eslint/no-misused-promises': 'error',
    },
  },
  {
    // A program at the command line speaks through the console.
    files: ['src/cli/**', '.ci/**', 'tests/benchmarks/**'],
    rules: { 'no-console': 'off' },
  },
  {
    // The metadata tool reads parameter types from the source and knows no name for a cell but any.
    files: ['src/functions/**'],
    rules: { '@typescript-eslint/no-explicit-any': 'off' },
  },
);
