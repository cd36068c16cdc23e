import type { Stock } from '../../stock/stock';
import { fold } from '../codes';
import type { StyleRun } from '../runs';
import type { Check } from './check';

export function groundChecks({ style, sizes }: StyleRun, stocks: ReadonlyMap<string, Stock>): readonly Check[] {
  const subject = style.code;
  const layers = sizes[0]?.bottom.layers ?? [];
  const list: Check[] = [];
  // What is walked on: under the tread the lowest layer there, under the seat the lowest of all.
  const stack = layers.filter(({ part }) => part !== 'cover' && part !== 'welt');
  const walked = new Set([stack.at(-1), stack.filter(({ underTread }) => underTread).at(-1)]);
  for (const layer of walked) {
    if (!layer) continue;
    const { part, material, stock } = layer;
    // All but leather, rubber and a steel tip wear fast on the ground unless one face is moulded to be walked on.
    const soft = material !== 'leather' && material !== 'rubber' && material !== 'steel';
    if (soft && !stocks.get(fold(stock))?.mouldedFace) {
      list.push({ kind: 'bareGround', subject, verdict: 'putRight', part, material });
    }
  }
  return list;
}
