import { adhesiveForArea } from '../core/steps/adhesive-for-area';
import { breakEven as breakEvenOf } from '../core/plan/cost/break-even';
import { sheetWeight } from '../core/stock/weight';
import { convertUnit } from '../core/units';
import { answer, IN_G, IN_ML, measured } from './answer';
import { readAdhesive, readBreakEven, readUnits, readWeight } from './bench-arguments';

/**
 * Adhesive for an area of faces: area × coats / coverage.
 * @customfunction ADHESIVE
 * @param {any} area Area of all faces to coat, mm² (of a joint, both faces); in another unit with its name, such as "360 cm2".
 * @param {any} coats Number of coats.
 * @param {any} coverage What a litre covers with one coat, m²; by brush usual 3 to 4.
 * @returns {any} Adhesive, ml.
 */
export function adhesive(area: any, coats: any, coverage: any): any {
  return measured(() => adhesiveForArea(...readAdhesive(area, coats, coverage)), IN_ML);
}

/**
 * Weight of a piece of sheet.
 * @customfunction WEIGHT
 * @param {any} area Its area, mm²; in another unit with its name, such as "180 cm2".
 * @param {any} thickness Its thickness, mm.
 * @param {any} density Density of the sheet, kg/m³.
 * @returns {any} Weight, g.
 */
export function weight(area: any, thickness: any, density: any): any {
  return measured(() => sheetWeight(...readWeight(area, thickness, density)), IN_G);
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
  return answer(() => breakEvenOf(...readBreakEven(tooling, make, buy, minimum)).pairs);
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
    () => convertUnit(...readUnits(value, from_unit, to_unit)),
    () => `General "${String(to_unit).trim()}"`,
  );
}
