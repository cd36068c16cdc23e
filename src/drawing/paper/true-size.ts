import type { Box } from '../../core/geometry/ring';
import { line, type Marks, marks, rectangle, text } from '../mark';
import { type JobFacts, MARGIN } from './page';
import { TITLE_HEIGHT, titleBlock } from './title-block';

/** Side of the square and length of the rules by which a print is measured, mm. */
export const CHECK_SIDE = 100;
export const RULE = 200;

/** Depth of the rules along the edges, with their figures, mm. */
const RULE_BAND = 7;
/** Height of the sentence under the title block. */
const SENTENCE = 4.5;

/** The part of a page in which things are drawn at true size: mm from the upper left corner, y downward. */
export interface TrueArea {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export function trueArea({ width, height }: { readonly width: number; readonly height: number }): TrueArea {
  const below = MARGIN + SENTENCE + TITLE_HEIGHT + 2 + RULE_BAND;
  return {
    left: MARGIN + RULE_BAND,
    top: MARGIN,
    width: width - 2 * MARGIN - RULE_BAND,
    height: height - MARGIN - below,
  };
}

/** What a page at true size says of itself. */
export interface TrueTitle {
  readonly what: string;
  readonly detail: string;
}

/** Rules along both edges, title block and the sentence that tells how to print and what to measure. */
export function trueFrame(job: JobFacts, { what, detail }: TrueTitle, square: boolean, n: number, of: number): Marks {
  const { width, height } = job.paper;
  const origin = { x: MARGIN, y: height - MARGIN - SENTENCE - TITLE_HEIGHT - 2 };
  const along = Math.min(RULE, Math.floor((width - 2 * MARGIN) / 10) * 10);
  const up = Math.min(RULE, Math.floor((origin.y - MARGIN) / 10) * 10);
  return marks(
    rule(origin.x, origin.y, along, true),
    rule(origin.x, origin.y, up, false),
    titleBlock(MARGIN, height - MARGIN - SENTENCE - TITLE_HEIGHT, width - 2 * MARGIN, [
      { head: 'Template', say: what, share: 5 },
      { head: 'Holds', say: detail, share: 4 },
      { head: 'Run', say: job.run, share: 4 },
      { head: 'Date', say: job.date, share: 2.4 },
      { head: 'Scale, paper', say: `1 : 1, ${job.paper.name}`, share: 2.8 },
      { head: 'Page', say: `${n} of ${of}`, share: 2.2 },
    ]),
    text(
      MARGIN,
      height - MARGIN - 0.6,
      `Print at 100 %, measure before cutting: ${square ? `the square must be ${CHECK_SIDE} mm both ways, ` : ''}${rulesInWords(along, up, !square)}.`,
      'plain',
      'start',
      { size: 3 },
    ),
  );
}

function rulesInWords(along: number, up: number, must: boolean): string {
  const be = must ? 'must be ' : '';
  return along === up
    ? `the rules ${be}${along} mm${must ? ' both ways' : ''}`
    : `the rule below ${be}${along} mm, the one at the left ${up} mm`;
}

/** A rule with a stroke every 10 mm and figures at fifties. */
function rule(x: number, y: number, length: number, along: boolean): Marks {
  const at = (mm: number, off: number): readonly [number, number] => (along ? [x + mm, y - off] : [x + off, y - mm]);
  const stroke = (mm: number, depth: number) => line('narrow', ...at(mm, 0), ...at(mm, depth));
  const strokes = Array.from({ length: length / 10 + 1 }, (_, i) =>
    stroke(10 * i, i % 10 === 0 ? 4 : i % 5 === 0 ? 3 : 1.8),
  );
  const figures = Array.from({ length: Math.floor(length / 50) }, (_, i) => {
    const mm = 50 * (i + 1);
    const [fx, fy] = along ? [x + mm - 0.7, y - 1.4] : [x + 2, y - mm + 3];
    return text(fx, fy, mm, 'plain', along ? 'end' : 'start', { size: 2.3 });
  });
  return [line('narrow', ...at(0, 0), ...at(length, 0)), ...strokes, ...figures];
}

/** The check square with its words, its upper left corner at a spot; nothing where there is none: the rules remain. */
export function checkSquare(spot: Spot | undefined): Marks {
  if (!spot) return [];
  const [x, y] = spot;
  const side = CHECK_SIDE;
  return [
    rectangle(x, y, side, side, { pen: 'narrow' }),
    text(x + side / 2, y + side / 2, `${side} × ${side} mm`, 'plain', 'middle', { size: 4.5 }),
    text(x + side / 2, y + side / 2 + 6, 'Measure both ways before cutting.', 'plain', 'middle', { size: 3 }),
  ];
}

/** The upper left corner of the check square on a page, mm. */
export type Spot = readonly [x: number, y: number];

/**
 * A free place for the check square, as far to the lower right as may be; none where the page has no room for it.
 * @param taken boxes of what lies on the page
 */
export function freeSpot(area: TrueArea, taken: readonly Box[]): Spot | undefined {
  const need = CHECK_SIDE + 4;
  for (let y = area.top + area.height - need; y >= area.top; y -= 4) {
    for (let x = area.left + area.width - need; x >= area.left; x -= 4) {
      const free = taken.every(
        ({ left, right, bottom, top }) => right < x || left > x + need || top < y || bottom > y + need,
      );
      if (free) return [x + 2, y + 2];
    }
  }
  return undefined;
}
