import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { stylesTable } from '../../src/tables/styles';

/** What a maker waits for when the add-in loads, kB as sent: bounds that the project sets itself. */
const bounds: Readonly<Record<string, number>> = { 'functions.js': 135, 'taskpane.js': 288 };

describe('what the office suite loads', () => {
  it('functions.js has no words that only help and blank tables show', () => {
    expect(readFileSync('dist/functions.js', 'utf8')).not.toContain(stylesTable.columns.last.meaning);
  });

  it.each(Object.entries(bounds))('%s is no more than %d kB, compressed', (file, most) => {
    expect(gzipSync(readFileSync(`dist/${file}`), { level: 9 }).length / 1000).toBeLessThan(most);
  });
});
