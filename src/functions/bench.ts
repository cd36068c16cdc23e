import { breakEven as breakEvenOf } from '../core/plan/cost/break-even';
import { convertUnit } from '../core/units';
import { isBlank, readNumber, readText } from '../tables/cell';
import { answer, IN_G, IN_ML, measured } from './answer';
import { readThickness } from './arguments';

const AREA = { unit: 'mm2', least: 0 };
const MONEY = { least: 0, most: 1e9 };

/**
 * Adhesive for an area of faces: area × coats / coverage.
 * @customfunction ADHESIVE
 * @param {any} area Area of all faces to coat, mm² (of a joint, both faces).
 * @param {any} coats Number of coats.
 * @param {any} coverage What a litre covers with one coat, m²; by brush usual 3 to 4.
 * @returns {any} Adhesive, ml.
 */
export function adhesive(area: any, coats: any, coverage: any): any {
  return measured(
    () =>
      (readNumber(area, AREA, { argument: 'area' }) *
        readNumber(coats, { least: 0, most: 20 }, { argument: 'coats' })) /
      (readNumber(coverage, { least: 0.1, most: 1000 }, { argument: 'coverage' }) * 1000),
    IN_ML,
  );
}

/**
 * Weight of a piece of sheet.
 * @customfunction WEIGHT
 * @param {any} area Its area, mm².
 * @param {any} thickness Its thickness, mm.
 * @param {any} density Density of the sheet, kg/m³.
 * @returns {any} Weight, g.
 */
export function weight(area: any, thickness: any, density: any): any {
  return measured(
    () =>
      (readNumber(area, AREA, { argument: 'area' }) *
        readThickness(thickness) *
        readNumber(density, { above: 0, most: 25_000 }, { argument: 'density' })) /
      1e6,
    IN_G,
  );
}

/**
 * Pairs from which buying finished units beats building: tooling / (make − buy), and no fewer than the least order. A bought unit fits one last only.
 * @customfunction BREAKEVEN
 * @param {any} tooling Tooling for all sizes together.
 * @param {any} make Cost of building a pair.
 * @param {any} buy Price of a bought pair.
 * @param {any} [minimum] Fewest pairs that are sold; without it none.
 * @returns {number} Pairs.
 */
export function breakEven(tooling: any, make: any, buy: any, minimum?: any): number {
  return answer(
    () =>
      breakEvenOf(
        readNumber(tooling, MONEY, { argument: 'tooling' }),
        readNumber(make, MONEY, { argument: 'make' }),
        readNumber(buy, MONEY, { argument: 'buy' }),
        isBlank(minimum) ? 0 : readNumber(minimum, { least: 0, most: 1e6, whole: true }, { argument: 'minimum' }),
      ).pairs,
  );
}

/**
 * A measure in another unit of the same kind: mm, cm, m, in, ft, iron (1/48 in), ounce (1/64 in), mm2, cm2, dm2, m2, in2, ft2, g, kg, oz, lb, ml, l, usgal.
 * @customfunction UNIT
 * @param {any} value Value to convert.
 * @param {any} from_unit Unit that it is in.
 * @param {any} to_unit Unit wanted.
 * @returns {any} The value in the unit wanted.
 */
export function unit(value: any, from_unit: any, to_unit: any): any {
  return measured(
    () =>
      convertUnit(
        readNumber(value, {}, { argument: 'value' }),
        readText(from_unit, { argument: 'from_unit' }),
        readText(to_unit, { argument: 'to_unit' }),
      ),
    () => `General "${String(to_unit).trim()}"`,
  );
}
