import { THICKEST } from '../core/stock/stock';
import { type BendSide } from '../core/last/tightest-curve';
import type { Point, Ring } from '../core/geometry/ring';
import { outline } from '../core/geometry/outline';
import { Problem } from '../core/problem';
import { SIZE_SYSTEMS, type SizeSystem } from '../core/sizes/systems';
import {
  type Cell,
  type Cells,
  isBlank,
  isLeftOut,
  isNought,
  type NumberRule,
  readChoice,
  readNumber,
} from '../tables/cell';

/** No bench measure in mm is beyond this. */
const MOST = 1000;

/** A length in mm that may be 0. */
export function readLength(cell: Cell, argument: string, rule: NumberRule = {}): number {
  return readNumber(cell, lengthRule(rule), { argument });
}

function lengthRule(rule: NumberRule): NumberRule {
  return { unit: 'mm', least: 0, most: MOST, ...rule };
}

/** A thickness of a sheet, as Bottom stock takes it. */
export const THICKNESS: NumberRule = { unit: 'mm', least: 0.1, most: THICKEST };

export function readThickness(cell: Cell, argument = 'thickness'): number {
  return readNumber(cell, THICKNESS, { argument });
}

/** A length in mm, or the fallback where it is left out. */
export function readLengthOr<T>(cell: Cell, argument: string, fallback: T, rule: NumberRule = {}): number | T {
  return isLeftOut(cell, lengthRule(rule)) ? fallback : readLength(cell, argument, rule);
}

/** An angle above 0 and below 90°. */
export function readAngle(cell: Cell, argument: string): number {
  return readNumber(cell, { unit: 'deg', least: 0.1, most: 89.9 }, { argument });
}

/** On which side of a curve a layer lies; blank is over. */
export function readSide(cell: Cell, argument = 'side'): BendSide {
  return isLeftOut(cell) ? 'over' : readChoice(cell, ['over', 'hollow'] as const, { argument }, { outside: 'over' });
}

/** A size of any system. */
export function readSize(cell: Cell, argument: string): number {
  return readNumber(cell, { least: -10, most: 450 }, { argument });
}

export function readSystem(cell: Cell, argument: string): SizeSystem {
  return readChoice(cell, SIZE_SYSTEMS, { argument });
}

/** Numbers of a range in reading order, blanks passed over. */
export function readNumbers(cells: Cells, argument: string, rule: NumberRule): readonly number[] {
  const list = cells.flatMap((row) =>
    row.filter((cell) => !isLeftOut(cell, rule)).map((cell) => readNumber(cell, rule, { argument })),
  );
  if (list.length === 0) throw new Problem('invalid', { argument }, 'the range is blank; give at least one number');
  return list;
}

/** How far an outline is let out, or taken in. */
export function readDistance(cell: Cell): number {
  return readLength(cell, 'distance', { least: -500, most: 500 });
}

/** The most points of an outline. */
const MOST_POINTS = 5000;

/**
 * An outline: two columns, x and y in mm, one point a row. A first row of headings and blank rows are passed over.
 * @throws Problem for other columns, text among the points, and outlines that are none.
 */
export function readOutline(cells: Cells, argument = 'outline'): Ring {
  const bad = (reason: string) => new Problem('invalid', { argument }, reason);
  const rows = cells.filter((row) => !row.every(isBlank));
  const [first] = rows;
  const headed = first?.every((cell) => typeof cell === 'string' && !/^[-+\d]/.test(cell.trim()));
  const points = headed ? rows.slice(1) : rows;
  if (points.length > MOST_POINTS) throw bad(`it has ${points.length} points; ${MOST_POINTS} is the most`);
  const noughts = points.length - 1 - points.findLastIndex((row) => !row.every((cell) => isLeftOut(cell)));
  // Blank rows, as some versions of the office suite hand them over, are no corner; a ring that begins there has it.
  if (noughts > 1 && !points[0]?.every(isNought)) {
    throw bad(`it ends in ${noughts} rows of 0, 0; give the range without the blank rows below the points`);
  }
  return outline(
    points.map((row, i): Point => {
      if (row.length !== 2) throw bad(`it has ${row.length} columns; give two, x and y in mm`);
      const [x, y] = row.map((cell, column) =>
        readNumber(
          cell,
          { unit: 'mm', least: -1e5, most: 1e5 },
          { argument, row: i + 1, column: column === 0 ? 'x' : 'y' },
        ),
      );
      return [x as number, y as number];
    }),
    argument,
  );
}

/** An outline as cells, headings first. */
export function writeOutline(ring: Ring): (string | number)[][] {
  return [['x\nmm', 'y\nmm'], ...ring.map(([x, y]) => [x, y])];
}
