import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { count, LEAST_VALUES } from './count';

describe('the table of check values', () => {
  it('is as the values are; else write it anew with npx tsx tests/reference/count.ts', () => {
    expect(readFileSync('tests/reference/README.md', 'utf8')).toBe(count().table);
  });

  it('holds at least 130 of them', () => {
    expect(count().values).toBeGreaterThanOrEqual(LEAST_VALUES);
  });
});
