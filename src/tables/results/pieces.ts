import { builtThickness } from '../../core/bottom/layer';
import { skiveThen } from '../../core/bottom/skive-then';
import type { PieceLine } from '../../core/plan/pieces';
import { figure, type ResultTable, words } from '../result';
import { GENERAL } from '../schema';
import { plainSize } from '../sizes-in-words';
import { PART_WORDS } from '../words';

/** Every piece to cut. */
export const piecesTable = (sizeWords = plainSize): ResultTable<PieceLine> => ({
  name: 'Pieces',
  meaning: 'Every piece to cut, by style and size',
  columns: [
    words('Style', ({ run }) => run.style.code),
    figure('Size', ({ sizeRun }) => sizeWords(sizeRun), { format: GENERAL }),
    figure('No.', ({ layer }) => layer.item, { format: '0', width: 44 }),
    words('Piece', ({ layer }) => PART_WORDS[layer.part]),
    words('Stock', ({ layer }) => layer.stock),
    figure('Thick', ({ layer }) => layer.thickness, { unit: 'mm', format: '0.0#' }),
    figure('Down to', ({ layer }) => (layer.rasped ? builtThickness(layer) : undefined), {
      unit: 'mm',
      format: '0.0#',
    }),
    figure('Length', ({ layer }) => layer.length, { unit: 'mm' }),
    figure('Width', ({ layer }) => layer.width, { unit: 'mm' }),
    figure('Area', ({ area }) => area / 100, { unit: 'cm²' }),
    figure('Skive', ({ layer }) => layer.skive?.width, { unit: 'mm' }),
    figure('Angle', ({ layer }) => skiveThen(layer)?.angle, { unit: '°', format: '0' }),
    figure('Skive to', ({ layer }) => skiveThen(layer)?.edge, { unit: 'mm' }),
    figure('Cut', ({ count }) => count, { unit: 'number', format: '0' }),
  ],
});
