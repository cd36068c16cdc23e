import fc from 'fast-check';
import { loadBundle } from '../bundle';
import { anyArguments, complaint } from '../functions/any-cells';
import type { Findings, Options } from './main';

/** A longer campaign of tests/functions/any-cells.test.ts: every function in turn with new seeds until time is up. */
export function fuzz({ seconds = 60 }: Options): Findings {
  const bundle = loadBundle();
  const end = performance.now() + 1000 * seconds;
  const complaints: string[] = [];
  let calls = 0;
  for (let seed = 1; performance.now() < end; seed++) {
    for (const metadata of bundle.metadata) {
      const heavy = metadata.parameters.some(({ name }) => name === 'pairage');
      const result = fc.check(
        fc.property(anyArguments(metadata), (args) => {
          calls++;
          const found = complaint(bundle, metadata, args);
          if (found !== undefined) throw new Error(found);
        }),
        { numRuns: heavy ? 10 : 300, seed, endOnFailure: true },
      );
      if (result.failed) {
        complaints.push(
          `${metadata.name}, seed ${seed}: ${String(result.errorInstance)} with ${fc.stringify(result.counterexample).slice(0, 400)}`,
        );
      }
      if (performance.now() > end) break;
    }
  }
  return {
    lines: [{ calls, complaints: complaints.length }, ...complaints.map((complaint) => ({ complaint }))],
    holds: complaints.length === 0,
  };
}
