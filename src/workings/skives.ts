import { lapSkive, skiveAngle, skiveWidth, turnedEdge } from '../core/bottom/skive';
import { readLapSkive, readSkiveAngle, readSkiveWidth, readTurnedEdge } from '../functions/skives-arguments';
import type { WorkingOf } from './arguments';
import { given, step } from './working';

const TRIANGLE = 'derived: the skive is a right triangle';

const thicknessOf = (t: number) => given('t', 'Thickness of the piece', t, 'mm', 'thickness');
const edgeOf = (e: number) => given('e', 'Thickness that the edge is skived to', e, 'mm', 'skive_to');

export const skives: Readonly<Record<string, WorkingOf>> = {
  SKIVEWIDTH: ([thickness, edge, angle]) => {
    const [t, e, a] = readSkiveWidth(thickness, edge, angle);
    return {
      given: [thicknessOf(t), edgeOf(e), given('α', 'Angle of the skive', a, '°', 'angle')],
      steps: [step('w', 'Width of the skive', '(t − e) / tan(α)', skiveWidth(t, e, a), 'mm')],
      source: TRIANGLE,
    };
  },
  SKIVEANGLE: ([thickness, edge, width]) => {
    const [t, e, w] = readSkiveAngle(thickness, edge, width);
    return {
      given: [thicknessOf(t), edgeOf(e), given('w', 'Width of the skive', w, 'mm', 'width')],
      steps: [step('α', 'Angle of the skive', 'atan((t − e) / w)', skiveAngle(t, e, w), '°')],
      source: TRIANGLE,
    };
  },
  LAPSKIVE: ([thickness, edge, ratio]) => {
    const [t, e, n] = readLapSkive(thickness, edge, ratio);
    return {
      given: [thicknessOf(t), edgeOf(e), given('n', 'Width for each mm taken off', n, undefined, 'ratio')],
      steps: [step('w', 'Width of the skive', 'n · (t − e)', lapSkive(t, e, n), 'mm')],
      source: 'derived; laps of 1 : 4 to 1 : 8 are common practice',
    };
  },
  TURNEDEDGE: ([thickness, fold]) => {
    const [t, f] = readTurnedEdge(thickness, fold);
    return {
      given: [thicknessOf(t), given('f', 'Width of the fold', f, 'mm', 'fold')],
      steps: [step('w', 'Width to skive', '2 · f + t', turnedEdge(t, f), 'mm')],
      source: 'common practice: the fold lies double, and turns over the thickness',
    };
  },
};
