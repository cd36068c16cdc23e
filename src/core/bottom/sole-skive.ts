import type { Course } from './courses';
import type { Skive } from './layer';
import { skiveWidth } from './skive';
import type { Style } from './style';
import { within } from './style-problem';

/**
 * The skive of a leather sole's edge, from the side that opens no joint: the uppermost piece from above, the lowest from
 * below. A piece between two others stays square, since either side would leave a gap.
 * @param pile what lies at the edge, from the last downward, without the insole
 * @param raised how far from the back lifts lie under the pile, which a skive from below leaves alone, mm
 */
export function soleSkive(
  style: Style,
  pile: readonly Course[],
  course: Course,
  raised: number | undefined,
): Skive | undefined {
  const { soleSkive: angle, soleSkiveTo: edge } = style;
  const { part, stock } = course;
  const isSole = part === 'sole' || part === 'midsole' || part === 'outsole';
  if (angle === undefined || !isSole || stock.material !== 'leather') return undefined;
  const place = pile.indexOf(course);
  const [uppermost, lowest] = [place === 0, place === pile.length - 1];
  if (!uppermost && !lowest) return undefined;
  const width = within(style, 'Sole skive', () => skiveWidth(stock.thickness, edge, angle), {
    skive_to: 'Sole skive to',
  });
  if (uppermost) return { at: 'edge', face: 'upper', width, angle, edge };
  return { at: 'edge', face: 'lower', width, angle, edge, from: course.follows ? raised : undefined };
}
