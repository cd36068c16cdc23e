import DxfDrawing from 'dxf-writer';
import type { Point } from '../core/geometry/ring';
import { type FileLayer, LETTER_SIZES, type Marks, singly } from '../drawing/mark';
import { plainWords } from './plain-words';

/** Names of the layers in files. */
export const LAYER_NAMES: Readonly<Record<FileLayer, string>> = {
  cut: 'CUT',
  'finished edge': 'FINISHED EDGE',
  skive: 'SKIVE',
  mark: 'MARK',
  text: 'TEXT',
};

/**
 * Marks as a DXF file in mm, y upward: closed lines for areas, one layer for each kind of line. Marks without a layer are
 * for the eye alone and are left out.
 * @param height of the drawing, mm: its lower edge becomes y = 0
 */
export function writeDxf(marks: Marks, height = 0): string {
  const drawing = new DxfDrawing();
  drawing.setUnits('Millimeters');
  const { ACI } = DxfDrawing;
  const colours: Record<FileLayer, number> = {
    cut: ACI.WHITE,
    'finished edge': ACI.GREEN,
    skive: ACI.BLUE,
    mark: ACI.RED,
    text: ACI.CYAN,
  };
  for (const [layer, name] of Object.entries(LAYER_NAMES)) {
    drawing.addLayer(name, colours[layer as FileLayer], 'CONTINUOUS');
  }
  const up = ([x, y]: Point): [number, number] => [exact(x), exact(height - y)];
  for (const mark of singly(marks)) {
    if (!mark.layer) continue;
    drawing.setActiveLayer(LAYER_NAMES[mark.layer]);
    if (mark.kind === 'line') drawing.drawPolyline(mark.points.map(up), false);
    else if (mark.kind === 'area') for (const ring of mark.rings) drawing.drawPolyline(ring.map(up), true);
    else if (mark.kind === 'circle') drawing.drawCircle(...up(mark.at), mark.radius);
    else {
      const { size = LETTER_SIZES[mark.lettering], turn = 0, words, anchor } = mark;
      const align = anchor === 'start' ? 'left' : anchor === 'middle' ? 'center' : 'right';
      // Capitals are 0.72 of the em; a caret begins a control sign in these files.
      const said = plainWords(words).replaceAll('^', ' ').replaceAll('%%', '% %');
      drawing.drawText(...up(mark.at), 0.72 * size, turn, said, align, 'baseline');
    }
  }
  return drawing.toDxfString();
}

/** To a ten-thousandth of a millimetre, without a negative nought. */
function exact(value: number): number {
  return Math.round(value * 1e4) / 1e4 + 0;
}
