import { itemAt } from '../core/item-at';
import { firstWaste } from '../core/cutting/pattern/first-waste';
import { roomOn } from '../core/cutting/sheet/sheet';
import type { Way } from '../core/cutting/sheet/way';
import { area } from '../core/geometry/area';
import { letOutArea } from '../core/geometry/let-out-area';
import { readFirstWaste, sheetOfOne } from '../functions/sheet-arguments';
import type { Cell } from '../tables/cell';
import { cells, givenOr, type WorkingOf } from './arguments';
import { given, step, told } from './working';

const ROWS =
  'rows of the piece one way round and end for end, hooked into each other, along and across, in one block, in two or in any sequence (derived); checked piece by piece';

function inWords(way: Way): string {
  return {
    any: 'any way',
    endForEnd: 'end for end',
    oneWay: 'one way',
    within: `end for end, ${way.kind === 'within' ? way.degrees : 0}° to either side of the length`,
  }[way.kind];
}

/** What a sheet that is cut from one piece starts from, and the steps to the number of pieces. */
function layout(args: readonly Cell[]) {
  const [outline, width, length, knifeRoom, edgeTrim, direction, feet] = args;
  const laid = sheetOfOne(cells(outline), width, length, knifeRoom, edgeTrim, direction, feet);
  const { ring, format, way, count, bound } = laid;
  const room = roomOn(format);
  return {
    ...laid,
    given: [
      given('A', 'Area of the piece', area(ring), 'mm²', 'outline'),
      given('W', 'Width of the sheet', format.width, 'mm', 'sheet_width'),
      given('L', 'Length of the sheet', format.length, 'mm', 'sheet_length'),
      givenOr('k', 'Room between pieces', format.knifeRoom, 'mm', 'knife_room', knifeRoom),
      givenOr('e', 'Lost along each edge', format.edgeTrim, 'mm', 'edge_trim', edgeTrim),
      givenOr(undefined, 'Direction', inWords(way), undefined, 'direction', direction),
      givenOr(
        undefined,
        'The sheet is cut for',
        laid.feet === 'both' ? 'both feet' : 'one foot',
        undefined,
        'feet',
        feet,
      ),
    ],
    possible: [
      step(
        'B',
        'Area for pieces that are let out by half the room between them',
        '(L − 2 · (e − k / 2)) · (W − 2 · (e − k / 2))',
        room.length * room.width,
        'mm²',
      ),
      step(
        'P',
        'Area of the piece let out by half that room',
        undefined,
        letOutArea(ring, format.knifeRoom / 2),
        'mm²',
      ),
      step('M', 'No layout holds more than', '⌊B / P⌋', bound, 'pieces'),
    ],
    counted: step('n', 'The most that rows place on the sheet', undefined, count, 'pieces'),
  };
}

export const sheets: Readonly<Record<string, WorkingOf>> = {
  PIECESPERSHEET: (args) => {
    const one = layout(args);
    return { given: one.given, steps: [...one.possible, one.counted], source: ROWS };
  },
  AREAUSE: (args) => {
    const { given: from, counted, areaUse } = layout(args);
    return {
      given: from,
      steps: [counted, step('u', 'Net area of the pieces over the area of the sheet', 'n · A / (W · L)', areaUse)],
      source: ROWS,
    };
  },
  FIRSTWASTE: ([outline, knifeRoom, direction]) => {
    const [ring, room, way] = readFirstWaste(cells(outline), knifeRoom, direction);
    const { share, ground } = firstWaste(ring, room, way);
    return {
      given: [
        given('A', 'Area of the piece', area(ring), 'mm²', 'outline'),
        givenOr(undefined, 'Room between pieces', room, 'mm', 'knife_room', knifeRoom),
        givenOr(undefined, 'Direction', inWords(way), undefined, 'direction', direction),
      ],
      steps: [
        step('G', 'Ground that one piece takes in the densest endless rows', undefined, ground, 'mm²'),
        step('w', 'First waste, as a share of that ground', '1 − A / G', share),
      ],
      source: 'parallelogram through like points of four neighbours; the term from A Manual of Shoemaking, 1912',
    };
  },
  PLACEMENTS: (args, { row, column }) => {
    const one = layout(args);
    const { placements, areaUse } = one;
    const place = placements[row - 1];
    const start = { given: one.given, source: ROWS };
    if (place) {
      const value = [row, place.x, place.y, place.turn, place.piece === 0 ? 'L' : 'R'][column];
      const what = [
        'Number of the piece',
        'Its origin along the sheet',
        'Its origin across the sheet',
        'Turned counter-clockwise by',
        'Left foot, or its mirror image for the right',
      ];
      return {
        ...start,
        steps: [one.counted, told(itemAt(what, column), value, [undefined, 'mm', 'mm', '°', undefined][column])],
      };
    }
    const label = ['Pieces', 'Most possible', 'Area use %'][row - 1 - placements.length];
    if (label === undefined || column !== 1) return undefined;
    if (label === 'Pieces') return { ...start, steps: [one.counted] };
    if (label === 'Most possible') return { ...start, steps: one.possible };
    return { ...start, steps: [one.counted, step('u', 'Area use', '100 · n · A / (W · L)', 100 * areaUse, '%')] };
  },
};
