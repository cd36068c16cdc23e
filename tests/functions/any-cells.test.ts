import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadBundle } from '../bundle';
import { anyArguments, complaint } from './any-cells';

const bundle = loadBundle();

describe('whatever the cells hold', () => {
  it.each(bundle.metadata.map((one) => [one.name, one] as const))(
    '%s answers with what a cell can show or with a sentence that names the place',
    (name, metadata) => {
      // A plan takes some hundred times as long as one number, a search for the densest rows some ten times; pairs that fill up
      // a run are many plans.
      const takes = (argument: string) => metadata.parameters.some((one) => one.name === argument);
      const trials = name === 'FILLUP' ? 4 : 25;
      const numRuns = takes('pairage') ? trials : takes('outline') ? 60 : 400;
      fc.assert(
        fc.property(anyArguments(metadata), (args) => {
          expect(complaint(bundle, metadata, args)).toBeUndefined();
        }),
        { numRuns, seed: 1912 },
      );
    },
    60_000,
  );
});
