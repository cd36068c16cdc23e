import { firstWaste as firstWasteOf } from '../core/cutting/pattern/first-waste';
import { answer, IN_PERCENT, measured } from './answer';
import { readFirstWaste, sheetOfOne } from './sheet-arguments';

/**
 * How many of one piece a sheet takes, laid in rows of any sequence, hooked into each other, in one block or two.
 * @customfunction PIECESPERSHEET
 * @param {any[][]} outline Outline of the piece, its length along x: two columns, x and y in mm.
 * @param {any} sheet_width Width of the sheet, mm.
 * @param {any} sheet_length Length of the sheet, of leather along the backbone, mm.
 * @param {any} [knife_room] Room between pieces, mm; 0 is none, without it 4.
 * @param {any} [edge_trim] Lost along each edge, mm; 0 is none, without it 10.
 * @param {any} [direction] any way, end for end, one way, or degrees to either side of the length, 0 as end for end; without it any way.
 * @param {any} [feet] one foot, or both feet for left and right pieces on the sheet; without it one foot.
 * @returns {number} Pieces.
 */
export function piecesPerSheet(
  outline: any[][],
  sheet_width: any,
  sheet_length: any,
  knife_room?: any,
  edge_trim?: any,
  direction?: any,
  feet?: any,
): number {
  return answer(() => sheetOfOne(outline, sheet_width, sheet_length, knife_room, edge_trim, direction, feet).count);
}

/**
 * Share of a sheet that one piece, cut from it as often as it goes, uses.
 * @customfunction AREAUSE
 * @param {any[][]} outline Outline of the piece, its length along x: two columns, x and y in mm.
 * @param {any} sheet_width Width of the sheet, mm.
 * @param {any} sheet_length Length of the sheet, of leather along the backbone, mm.
 * @param {any} [knife_room] Room between pieces, mm; 0 is none, without it 4.
 * @param {any} [edge_trim] Lost along each edge, mm; 0 is none, without it 10.
 * @param {any} [direction] any way, end for end, one way, or degrees to either side of the length, 0 as end for end; without it any way.
 * @param {any} [feet] one foot, or both feet for left and right pieces on the sheet; without it one foot.
 * @returns {any} Share of the whole sheet, 0 to 1.
 */
export function areaUse(
  outline: any[][],
  sheet_width: any,
  sheet_length: any,
  knife_room?: any,
  edge_trim?: any,
  direction?: any,
  feet?: any,
): any {
  return measured(
    () => sheetOfOne(outline, sheet_width, sheet_length, knife_room, edge_trim, direction, feet).areaUse,
    IN_PERCENT,
  );
}

/**
 * First waste: what is lost between interlocked pieces in the densest endless rows, as a share of the cutting area.
 * @customfunction FIRSTWASTE
 * @param {any[][]} outline Outline of the piece, its length along x: two columns, x and y in mm.
 * @param {any} [knife_room] Room between pieces, mm; without it 0.
 * @param {any} [direction] any way, end for end, one way, or degrees to either side of the length, 0 as end for end; without it any way.
 * @returns {any} Share of the cutting area, 0 to 1.
 */
export function firstWaste(outline: any[][], knife_room?: any, direction?: any): any {
  return measured(() => firstWasteOf(...readFirstWaste(outline, knife_room, direction)).share, IN_PERCENT);
}

/**
 * Where each piece lies on a sheet that is cut from one piece throughout.
 * @customfunction PLACEMENTS
 * @param {any[][]} outline Outline of the piece, its length along x: two columns, x and y in mm.
 * @param {any} sheet_width Width of the sheet, mm.
 * @param {any} sheet_length Length of the sheet, of leather along the backbone, mm.
 * @param {any} [knife_room] Room between pieces, mm; 0 is none, without it 4.
 * @param {any} [edge_trim] Lost along each edge, mm; 0 is none, without it 10.
 * @param {any} [direction] any way, end for end, one way, or degrees to either side of the length, 0 as end for end; without it any way.
 * @param {any} [feet] one foot, or both feet for left and right pieces on the sheet; without it one foot.
 * @returns {any[][]} A table: number, place of the outline's origin along and across the sheet in mm, turn in degrees, foot; then pieces, most possible, area use.
 */
export function placements(
  outline: any[][],
  sheet_width: any,
  sheet_length: any,
  knife_room?: any,
  edge_trim?: any,
  direction?: any,
  feet?: any,
): any[][] {
  return answer(() => {
    const {
      count,
      bound,
      areaUse,
      placements: places,
    } = sheetOfOne(outline, sheet_width, sheet_length, knife_room, edge_trim, direction, feet);
    return [
      ['No.', 'Along\nmm', 'Across\nmm', 'Turn\n°', 'Foot'],
      // The outline is the left foot's, as all are, and the right foot's is its mirror image.
      ...places.map(({ piece, x, y, turn }, i) => [i + 1, x, y, turn, piece === 0 ? 'L' : 'R']),
      ['Pieces', count, '', '', ''],
      ['Most possible', bound, '', '', ''],
      ['Area use %', 100 * areaUse, '', '', ''],
    ];
  });
}
