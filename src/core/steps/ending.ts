import type { Layer } from '../bottom/layer';
import type { Material } from '../stock/stock';
import type { Assembly } from './assembly';
import { type FixingLimits, heelFixing } from './fixing';
import { faceOf, operation } from './operation';
import type { Act, Operation } from './step';

/** How an edge that is seen is finished (common practice). */
const FINISH: Readonly<Record<Material, readonly Act[]>> = {
  leather: ['sand edge', 'ink', 'iron and wax'],
  cork: ['sand edge', 'seal'],
  foam: ['sand edge'],
  rubber: ['sand edge'],
  board: ['sand edge', 'seal'],
  fabric: [],
  steel: [],
};

/** What is done when all is joined: edges trimmed flush, heights and stand checked, edges finished, the last out. */
export function ending(assembly: Assembly, limits: FixingLimits): readonly Operation[] {
  const { bottom, covered, style, lifts, nailed } = assembly;
  const stack = bottom.layers.filter(({ part }) => part !== 'cover' && part !== 'insole');
  const seen = stack.filter((layer) => !covered.includes(layer));
  const edges = (pieces: readonly Layer[]) => pieces.map((piece) => faceOf(piece, 'edge'));
  const alike = new Map<string, Layer[]>();
  for (const layer of seen) {
    const acts = FINISH[layer.material].join();
    if (acts) alike.set(acts, [...(alike.get(acts) ?? []), layer]);
  }
  const outAlready = style.raise === 'heel' && !nailed && lifts.length > 0 && heelFixing(bottom, limits) !== undefined;
  return [
    operation('wait', ['cure'], stack, { whole: true }),
    operation('trim', ['trim edge'], seen, { faces: edges(seen) }),
    operation('check', ['check height', 'check stand', 'check pair'], stack),
    ...[...alike].map(([acts, pieces]) =>
      operation('finish', acts.split(',') as Act[], pieces, { faces: edges(pieces) }),
    ),
    operation('finish', [outAlready ? 'filler last out' : 'last out', 'sock'], []),
  ];
}
