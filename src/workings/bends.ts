import { bendStrain, maxThickness } from '../core/bottom/bend';
import { readBendStrain, readMaxThickness } from '../functions/bends-arguments';
import { givenOr, type WorkingOf } from './arguments';
import { given, step } from './working';

const radiusOf = (r: number) => given('R', 'Radius of the last’s curve', r, 'mm', 'radius');

export const bends: Readonly<Record<string, WorkingOf>> = {
  BENDSTRAIN: ([thickness, radius, place]) => {
    const [t, r, side] = readBendStrain(thickness, radius, place);
    return {
      given: [
        given('t', 'Thickness of the layer', t, 'mm', 'thickness'),
        radiusOf(r),
        givenOr(undefined, 'Side of the curve', side, undefined, 'side', place),
      ],
      steps: [
        step(
          'ε',
          'Stretch of the outer face, as a share of its length',
          side === 'over' ? 't / (2 · R + t)' : 't / (2 · R − t)',
          bendStrain(t, r, side),
        ),
      ],
      source: 'derived: the middle of the layer keeps its length, the outer face is half a thickness further out',
    };
  },
  MAXTHICKNESS: ([radius, tube, place]) => {
    const [r, f, side] = readMaxThickness(radius, tube, place);
    return {
      given: [
        radiusOf(r),
        given('F', 'Smallest tube over thickness, from a test', f, undefined, 'tube_per_thickness'),
        givenOr(undefined, 'Side of the curve', side, undefined, 'side', place),
      ],
      steps: [
        step(
          't',
          'Thickest layer that goes round uncracked',
          side === 'over' ? 'R / (F / 2)' : 'R / (F / 2 + 1)',
          maxThickness(r, f, side),
          'mm',
        ),
      ],
      source: 'flexibility factor of ISO 4708:2015, 7.6, solved for the thickness',
    };
  },
};
