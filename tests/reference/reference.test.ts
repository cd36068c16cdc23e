import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type CellError, loadBundle } from '../bundle';

/** One published or derived value, and where it comes from. null in a table stands for any cell. */
interface Reference {
  readonly function: string;
  readonly arguments: readonly unknown[];
  readonly source: string;
  readonly regime?: string;
  readonly expect?: unknown;
  readonly within?: number;
  /** Rows that the table holds somewhere. */
  readonly contains?: readonly (readonly unknown[])[];
  /** The error due instead of a value. */
  readonly error?: string;
}

const folder = 'tests/reference';
const bundle = loadBundle();

function agree(found: unknown, wanted: unknown, within: number): boolean {
  if (wanted === null) return true;
  if (Array.isArray(wanted)) {
    return (
      Array.isArray(found) &&
      found.length >= wanted.length &&
      wanted.every((one, i) => agree((found as unknown[])[i], one, within))
    );
  }
  return typeof wanted === 'number'
    ? typeof found === 'number' && Math.abs(found - wanted) <= within
    : found === wanted;
}

for (const file of readdirSync(folder).filter((name) => name.endsWith('.json'))) {
  const references = JSON.parse(readFileSync(`${folder}/${file}`, 'utf8')) as Reference[];
  describe(`published and derived values of ${file}`, () => {
    it.each(
      references.map((one, i) => [`${one.function} ${one.regime ?? ''} (${i + 1}): ${one.source}`, one] as const),
    )('%s', (_title, { function: name, arguments: args, expect: wanted, within = 0, contains, error, source }) => {
      expect(source).toBeTruthy();
      if (error !== undefined) {
        let caught: unknown;
        try {
          bundle.call(name, ...args);
        } catch (thrown) {
          caught = thrown;
        }
        expect((caught as CellError | undefined)?.code).toBe(error);
        return;
      }
      const found = bundle.call(name, ...args);
      const sound =
        (wanted === undefined || agree(found, wanted, within)) &&
        (contains ?? []).every((row) => (found as unknown[][]).some((line) => agree(line, row, within)));
      expect(sound, `found ${JSON.stringify(found)}, wanted ${JSON.stringify(wanted ?? contains)}`).toBe(true);
    });
  });
}
