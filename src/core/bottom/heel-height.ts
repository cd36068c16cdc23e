import { Problem } from '../problem';

/**
 * Finished heel height at the back, mm: the last's heel height on the platform and the outsole. Under the tread stand
 * platform and outsole alone, so the difference of the two stacks is the last's heel height (derived).
 */
export function heelHeight(lastHeel: number, platform: number, outsole = 0): number {
  return lastHeel + platform + outsole;
}

/**
 * Thickness of the platform that gives a finished heel height, mm.
 * @throws Problem where last and outsole alone are higher.
 */
export function platform(finishedHeel: number, lastHeel: number, outsole = 0): number {
  const thickness = finishedHeel - lastHeel - outsole;
  if (thickness < 0) {
    throw new Problem(
      'unavailable',
      { argument: 'finished_heel' },
      `the last and the outsole alone stand ${lastHeel + outsole} mm high; ask for that or more, or take a lower last`,
    );
  }
  return thickness;
}
