import type { LastInSize } from '../last/last-in-size';
import { Problem } from '../problem';
import { HEADINGS } from './layer';
import { layerMix, type LayerMix } from './layer-mix';
import type { FindStock } from './stock';
import type { Style } from './style';
import { styleCell, within } from './style-problem';

/** Height that a style's lifts are to fill under the seat, mm: the last's heel without a top piece. */
export function liftHeight(style: Style, last: Pick<LastInSize, 'heelHeight'>, find: FindStock): number {
  if (style.raise === 'none') return 0;
  const topPiece =
    style.raise === 'heel' && style.topPiece !== undefined ? find(style.topPiece, HEADINGS.topPiece).thickness : 0;
  const height = last.heelHeight - topPiece;
  if (height > 0) return height;
  throw new Problem(
    'invalid',
    styleCell(style, 'Raise'),
    `the last's heel of ${last.heelHeight} mm leaves nothing for lifts; set Raise to none or take a higher last`,
  );
}

/**
 * How many lifts of each of a style's thicknesses fill its height; undefined where nothing is raised. Bent layers are
 * counted square to the seat, which is pitched.
 */
export function liftMix(style: Style, last: LastInSize, find: FindStock): LayerMix | undefined {
  if (style.raise === 'none') return undefined;
  const height = liftHeight(style, last, find);
  if (style.lifts.length === 0) {
    throw new Problem(
      'invalid',
      styleCell(style, 'Lifts'),
      `a ${style.raise} needs stock for its lifts; name one or more`,
    );
  }
  const pitch = style.laying === 'bent' ? (last.profile.slope[0] as number) : 0;
  const offers = style.lifts.map((code) => {
    const { thickness, price } = find(code, HEADINGS.lifts);
    return { thickness, cost: price };
  });
  return within(style, 'Lifts', () => layerMix(height * Math.cos((pitch * Math.PI) / 180), offers, style.rasping));
}
