import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Memory } from '../../src/core/memory';

describe('Memory', () => {
  it('never holds more than its bound, but for what is kept just now, and counts what it holds', () => {
    const act = fc.record({
      key: fc.integer({ min: 0, max: 12 }),
      bytes: fc.integer({ min: 0, max: 900 }),
      how: fc.constantFrom('keep', 'find', 'grow'),
    });
    fc.assert(
      fc.property(fc.array(act, { maxLength: 60 }), (acts) => {
        const memory = new Memory(3000);
        // By a list, the least lately used first: what the memory is to do, said otherwise.
        let model: { key: string; bytes: number }[] = [];
        const total = () => model.reduce((sum, one) => sum + one.bytes, 0);
        const trim = () => {
          while (model.length > 1 && total() > 3000) model = model.slice(1);
        };
        for (const { key: number, bytes, how } of acts) {
          const key = `key ${number}`;
          const known = model.find((one) => one.key === key);
          if (how === 'keep') {
            memory.keep(key, {}, bytes);
            model = [...model.filter((one) => one !== known), { key, bytes: bytes + key.length + 120 }];
          } else if (how === 'find') {
            expect(memory.find(key) !== undefined).toBe(known !== undefined);
            if (known) model = [...model.filter((one) => one !== known), known];
          } else if (known) {
            memory.grow(key, bytes);
            known.bytes += bytes;
          }
          trim();
          expect(memory.bytes).toBe(total());
        }
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it('keeps a single result however large it is, and forgets all on request', () => {
    const memory = new Memory(100);
    memory.keep('large', { large: true }, 1e6);
    expect(memory.find('large')).toEqual({ large: true });
    memory.forget();
    expect(memory.find('large')).toBeUndefined();
    expect(memory.bytes).toBe(0);
  });

  it('counts how often something had to be made', () => {
    const memory = new Memory(1e6);
    memory.keep('a', {}, 1);
    memory.find('a');
    memory.grow('a', 5);
    expect(memory.made).toBe(2);
  });
});
