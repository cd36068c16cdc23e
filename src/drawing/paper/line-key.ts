import { line, type Marks, marks, type Pen, singly, text } from '../mark';
import { widthOf } from './letter-width';
import { MARGIN } from './page';

/** Height of the lettering, length of a line that is shown, and what is left beside it, mm. */
const [SIZE, SHOWN, BESIDE] = [2.4, 5, 1];

/**
 * The key of a page's outlines, where it has more than that which is cut along: in the lower right corner, beside the
 * sentence that tells how to print.
 */
export function lineKey({ width, height }: { readonly width: number; readonly height: number }, drawn: Marks): Marks {
  const kinds = kindsOf(drawn);
  if (kinds.length < 2) return [];
  const y = height - MARGIN - 0.6;
  let right = width - MARGIN;
  return [...kinds].reverse().flatMap(([pen, words]): Marks => {
    const from = right - widthOf(words, SIZE);
    right = from - BESIDE - SHOWN - 2 * BESIDE;
    return marks(
      line(pen, from - BESIDE - SHOWN, y - 0.8, from - BESIDE, y - 0.8),
      text(from, y, words, 'plain', 'start', { size: SIZE }),
    );
  });
}

/** Kinds of outlines with their names, in the order in which they are said. */
function kindsOf(drawn: Marks): readonly (readonly [pen: Pen, words: string])[] {
  const all = singly(drawn);
  const has = (layer: 'cut' | 'finished edge' | 'skive') => all.some((mark) => mark.layer === layer);
  const thin = [...(has('finished edge') ? ['finished edge'] : []), ...(has('skive') ? ['skive'] : [])];
  const dashed = (layer?: 'mark') =>
    all.some((mark) => 'pen' in mark && mark.pen === 'dashed' && mark.layer === layer && 'rings' in mark === !layer);
  const broken = [...(dashed() ? ['last'] : []), ...(dashed('mark') ? ['fold'] : [])];
  return [
    ...(has('cut') ? [['wide', 'cut'] as const] : []),
    ...(thin.length > 0 ? [['narrow', thin.join(', ')] as const] : []),
    ...(broken.length > 0 ? [['dashed', broken.join(', ')] as const] : []),
  ];
}
