import { itemAt } from '../core/item-at';
import { heelHeight, platform } from '../core/bottom/heel-height';
import { layerMix, type LayerMix } from '../core/bottom/layer-mix';
import { layers } from '../core/bottom/layers';
import { readHeelHeight, readLayerMix, readLayers, readPlatform } from '../functions/heights-arguments';
import { cells, givenOr, type WorkingOf } from './arguments';
import { type At, given, type Given, step, type WorkedStep, told } from './working';

const STANDS = 'derived: at the back the last’s heel stands on platform and outsole, under the tread these alone';

export const heights: Readonly<Record<string, WorkingOf>> = {
  LAYERS: ([height, thickness, rasping]) => {
    const [h, t, most] = readLayers(height, thickness, rasping);
    const { count, rasped } = layers(h, t, most);
    return {
      given: [
        given('h', 'Height to reach', h, 'mm', 'height'),
        given('t', 'Thickness of a layer', t, 'mm', 'thickness'),
        most === undefined
          ? given(undefined, 'The most that may be rasped off', 'any surplus')
          : given(undefined, 'The most that may be rasped off', most, 'mm', 'most_rasping'),
      ],
      steps: [
        step('r', 'Left to rasp', '⌈h / t⌉ · t − h', rasped, 'mm'),
        step('n', 'Layers: the fewest that reach the height', '⌈h / t⌉', count),
      ],
      source: 'derived',
    };
  },
  LAYERMIX: ([height, thicknesses, rasping, onHand], at) => {
    const [h, offers, r] = readLayerMix(height, cells(thicknesses), rasping, cells(onHand));
    const list = offers.map(({ thickness }) => thickness);
    const steps = chosen(layerMix(h, offers, r), list, at);
    if (!steps) return undefined;
    return {
      given: [
        given('h', 'Height to reach', h, 'mm', 'height'),
        ...mixGiven(list),
        givenOr('a', 'The most that may be rasped off', r, 'mm', 'most_rasping', rasping),
        ...offers.flatMap(({ thickness, onHand: count }) =>
          count === undefined ? [] : [given(undefined, `On hand of ${thickness} mm`, count, undefined, 'on_hand')],
        ),
      ],
      steps,
      source: 'exact search over all mixes (dynamic programming over the heights, to 0.01 mm)',
    };
  },
  HEELHEIGHT: ([lastHeel, under, outsole]) => {
    const [h, p, o] = readHeelHeight(lastHeel, under, outsole);
    return {
      given: [
        given('h', 'Heel height of the last', h, 'mm', 'last_heel'),
        given('p', 'Thickness of the platform', p, 'mm', 'platform'),
        givenOr('o', 'Thickness of outsole and top piece', o, 'mm', 'outsole', outsole),
      ],
      steps: [step('H', 'Finished heel height', 'h + p + o', heelHeight(h, p, o), 'mm')],
      source: STANDS,
    };
  },
  PLATFORM: ([finished, lastHeel, outsole]) => {
    const [f, h, o] = readPlatform(finished, lastHeel, outsole);
    return {
      given: [
        given('H', 'Finished heel height wanted', f, 'mm', 'finished_heel'),
        given('h', 'Heel height of the last', h, 'mm', 'last_heel'),
        givenOr('o', 'Thickness of the outsole', o, 'mm', 'outsole', outsole),
      ],
      steps: [step('p', 'Thickness of the platform', 'H − h − o', platform(f, h, o), 'mm')],
      source: STANDS,
    };
  },
};

/** A number written below the line. */
export function below(number: number): string {
  return [...String(number)].map((digit) => '₀₁₂₃₄₅₆₇₈₉'[Number(digit)]).join('');
}

function mixGiven(thicknesses: readonly number[]): readonly Given[] {
  return thicknesses.map((thickness, i) =>
    given(`t${below(i + 1)}`, 'Thickness on offer', thickness, 'mm', 'thicknesses'),
  );
}

/** The mix, what it builds and leaves to rasp; last what stands in the cell, if that is a figure. */
function chosen(mix: LayerMix, thicknesses: readonly number[], { row, column }: At): readonly WorkedStep[] | undefined {
  const { counts, built, rasped } = mix;
  const at = row - 1;
  if (at < 0 || (column === 0 && at >= counts.length)) return undefined;
  const sum = counts.map((_, i) => `n${below(i + 1)} · t${below(i + 1)}`).join(' + ');
  const steps = [
    ...counts.map((count, i) => {
      const what = `Layers of ${thicknesses[i]} mm`;
      const how = 'in the mix with the fewest layers, then the least rasping, of all within what may be rasped off';
      return step(`n${below(i + 1)}`, i === 0 ? `${what}, ${how}` : what, undefined, count);
    }),
    step('b', 'Height built', sum, built, 'mm'),
    step('r', 'Left to rasp', 'b − h', rasped, 'mm'),
  ];
  const thickness = thicknesses[at];
  if (thickness === undefined) return at === counts.length ? steps.slice(0, -1) : steps;
  if (column === 0) return [told('The thickness of this row, as it was given', thickness, 'mm')];
  return [...steps, told(`Layers of ${thickness} mm`, itemAt(counts, at))];
}
