import { itemAt } from '../../core/item-at';
import type { CoverPiece } from '../../core/bottom/cover-piece';
import { finishedEdge } from '../../core/bottom/finished-edge';
import type { Layer } from '../../core/bottom/layer';
import { skiveThen } from '../../core/bottom/skive-then';
import { skiveLine } from '../../core/bottom/skive-line';
import { box } from '../../core/geometry/box';
import { mirrorOnce } from '../../core/geometry/ring-content';
import { rectangleAbout } from '../../core/geometry/rectangle';
import type { Box, Point, Ring } from '../../core/geometry/ring';
import { groundOutline } from '../../core/last/ground-outline';
import type { Foot, PieceLine } from '../../core/plan/pieces';
import type { Stock } from '../../core/stock/stock';
import { decimals } from '../../tables/figures';
import { PART_WORDS } from '../../tables/words';
import { arrowhead } from '../dimensions';
import { group, line as stroke, type Marks, marks, outline, polyline, type Scale, text } from '../mark';
import { movedMarks, readable } from '../move-marks';
import { edgesAt, stationsOf } from '../stations';
import { blockBox, blockGround, blockSize, blockWords, type LabelBlock, placeIn } from './label-block';
import { strokeBeside } from './stroke-beside';

/** A piece at true size, to be cut out and drawn round. */
export interface Template {
  readonly line: PieceLine;
  /** The foot that it is drawn for; of `turned` ones the other foot's is had by turning it over. */
  readonly foot: Foot;
  readonly turned: boolean;
  /** Such as "Betony 38 L, Lift 3". */
  readonly name: string;
  /** Such as "Lift 3". */
  readonly short: string;
  /** The outline to cut, as core has it, mirrored for the right foot; y upward. */
  readonly ring: Ring;
  /** What it takes up on a page: the outline, and words beside it where it is too small for them. */
  readonly ground: Ring;
  /** Its marks about its own origin, y downward, for a page on which it is turned by `turn` degrees counter-clockwise. */
  draw(turn: number): Marks;
}

/** Length of a notch, mm. */
const NOTCH = 4;
/** Notches of the inside edge stand so far apart, mm. */
const TWO = 2.4;

/**
 * Templates of a piece: one that is turned over for the right foot; where the sheet has a moulded face, on whose back the
 * marks are drawn, one of each foot.
 * @param sizeName such as "EU 38"
 */
export function templatesOf(line: PieceLine, stock: Stock, sizeName: string): readonly Template[] {
  if (stock.mouldedFace) return (['L', 'R'] as const).map((foot) => template(line, stock, sizeName, foot, false));
  return [template(line, stock, sizeName, 'L', true)];
}

function template(line: PieceLine, stock: Stock, sizeName: string, foot: Foot, turned: boolean): Template {
  const { layer, run } = line;
  const ring = foot === 'L' ? layer.ring : mirrorOnce(layer.ring);
  const block = labelOf(line, stock, sizeName, foot, turned);
  const drawn: Ring = ring.map(([x, y]): Point => [x, -y]);
  const stations = markedStations(line);
  const place = placeIn(
    drawn,
    block,
    stations.map(({ at }) => at),
  );
  const { right, left, bottom, top } = box(ring);
  // A piece too small for its words has them beside it.
  const [wide, high] = blockSize(block, place.size);
  const beside = { ...place, at: [right + 3 + wide / 2, -(bottom + top) / 2] as Point };
  const [low, up] = [Math.min(bottom, (bottom + top - high) / 2), Math.max(top, (bottom + top + high) / 2)];
  const ground: Ring = place.fits ? ring : rectangleAbout({ left, bottom: low, right: right + 4 + wide, top: up });
  return {
    line,
    foot,
    turned,
    name: `${run.style.code} ${sizeName} ${foot}, ${PART_WORDS[layer.part]} ${layer.item}`,
    short: `${PART_WORDS[layer.part]} ${layer.item}`,
    ring,
    ground,
    draw: (turn) =>
      marks(
        piece(
          line,
          stock,
          foot,
          stations,
          turn,
          place.fits ? { ground: blockGround(block, place), box: blockBox(block, place) } : { ground: [] },
        ),
        blockWords(block, place.fits ? place : beside, turn),
        !place.fits && stroke('narrow', right + 0.5, beside.at[1], right + 2.5, beside.at[1]),
      ),
  };
}

/** What is lettered on a piece. */
function labelOf(line: PieceLine, stock: Stock, sizeName: string, foot: Foot, turned: boolean): LabelBlock {
  const { run, layer, count } = line;
  const { skive } = layer;
  // What is rasped off later is still on it, as ticket and Pieces have it.
  const then = skiveThen(layer);
  const each = count / 2;
  const strip = layer.part === 'welt' || layer.part === 'cover';
  return {
    lines: [
      `${run.style.code} ${sizeName} ${foot}`,
      `${PART_WORDS[layer.part]} ${layer.item} from ${layer.stock}`,
      turned ? `cut ${each} L; turn over for R: ${each}` : `cut ${each} ${foot}`,
      ...(strip && stock.direction === 'any way' ? [] : [directionInWords(layer, stock)]),
      ...(skive && then
        ? [
            `skive ${skive.face} face ${decimals(then.width, 1)} mm, ${Math.round(then.angle)}°, from ${decimals(then.thickness, 1)} to ${decimals(then.edge, 1)}`,
          ]
        : []),
    ],
  };
}

/** How a piece lies on its sheet. */
export function directionInWords({ material, part }: Layer, { direction, mouldedFace }: Stock): string {
  const way =
    direction === 'any way'
      ? 'lies any way'
      : `${part === 'welt' ? 'its length' : 'arrow'} ${material === 'leather' ? 'along the backbone' : 'along the sheet'}`;
  // A cover or a welt must not stretch along the edge that it goes round (common practice).
  if (material === 'leather' && (part === 'welt' || part === 'cover')) return `${way}, the tight way`;
  return mouldedFace ? `${way}, drawn on its plain face` : way;
}

interface Station {
  readonly name: string;
  readonly at: number;
}

/** Lines that are marked across a piece: where it reaches well beyond them. */
function markedStations({ layer, run, sizeRun }: PieceLine): readonly Station[] {
  if (layer.part === 'welt' || layer.part === 'cover') return [];
  const { seat, tread, breast } = stationsOf(sizeRun.bottom, layer);
  const { left, right } = box(layer.ring);
  const all = [
    { name: 'seat', at: seat },
    { name: 'tread', at: tread },
    ...(run.style.raise === 'heel' ? [{ name: 'breast', at: breast }] : []),
  ];
  return all.filter(({ at }) => {
    const [inside, outside] = edgesAt(layer.ring, at);
    return at > left + 4 && at < right - 4 && outside - inside > 3 * NOTCH;
  });
}

function piece(
  line: PieceLine,
  stock: Stock,
  foot: Foot,
  stations: readonly Station[],
  turn: number,
  label: { readonly ground: Marks; readonly box?: Box },
): Marks {
  const { layer, sizeRun } = line;
  const at: Scale = { x: (mm) => mm, y: (mm) => (foot === 'L' ? -mm : mm) };
  const { left, right } = box(layer.ring);
  const finished = layer.rounding > 0 ? finishedEdge(layer.ring, layer.rounding) : undefined;
  const skive = skiveLine(layer);
  const { last, liftHeight } = sizeRun.bottom;
  const whole = layer.underTread && layer.part !== 'insole' && layer.part !== 'welt' && layer.part !== 'cover';
  const own = layer.follows || liftHeight === 0 ? last.outline : groundOutline(last.outline, last.profile);
  return marks(
    outline('wide', layer.ring, at, { fill: 'paper', layer: 'cut' }),
    whole && group([outline('dashed', own, at)], { clip: layer.ring.map(([x, y]): Point => [at.x(x), at.y(y)]) }),
    layer.part !== 'cover' &&
      layer.part !== 'welt' &&
      strokeBeside(label.box, 'chain', [left + 1, 0], [right - 1, 0], { layer: 'mark' }),
    directionMark(layer, stock, at),
    label.ground,
    finished && outline('narrow', finished, at, { layer: 'finished edge' }),
    skive?.closed && outline('narrow', skive.points, at, { layer: 'skive' }),
    skive && !skive.closed && polyline('narrow', skive.points, at, { layer: 'skive' }),
    layer.cover && foldLines(layer.cover, at, turn),
    stations.flatMap((station) => stationMarks(layer.ring, station, at, turn, label.box)),
  );
}

/** A station's line across, its name, one stroke on the outside edge and two on the inside edge. */
function stationMarks(
  ring: Ring,
  { name, at: place }: Station,
  at: Scale,
  turn: number,
  label: Box | undefined,
): Marks {
  const [inside, outside] = edgesAt(ring, place);
  const notch = (x: number, from: number, to: number) =>
    stroke('wide', at.x(x), at.y(from), at.x(x), at.y(to), { layer: 'mark' });
  const word = text(0, 0.8, name, 'plain', 'middle', { size: 2.5, layer: 'text' });
  const beside = outside - NOTCH - 3.5;
  return [
    ...strokeBeside(label, 'chain', [at.x(place), at.y(inside)], [at.x(place), at.y(outside)], { layer: 'mark' }),
    notch(place, outside, outside - NOTCH),
    ...[-TWO / 2, TWO / 2].map((d) => notch(place + d, inside, inside + NOTCH)),
    ...(outside - inside > 30 ? movedMarks([word], readable(90, turn), at.x(place + 1.8), at.y(beside)) : []),
  ];
}

/** The way of the piece on its sheet: arrowheads on the centre line, both ends where it may lie end for end. */
function directionMark({ ring, part }: Layer, { direction }: Stock, at: Scale): Marks {
  if (direction === 'any way' || part === 'welt') return [];
  const { left, right, bottom, top } = box(ring);
  // Others have their centre line along the length; a cover has its lower edge there.
  const middle = part === 'cover' ? at.y((bottom + top) / 2) : 0;
  const [from, to] = [left + 0.06 * (right - left), right - 0.06 * (right - left)];
  return marks(
    stroke('narrow', at.x(from), middle, at.x(to), middle),
    arrowhead(at.x(to), middle, Math.PI),
    direction === 'end for end' && arrowhead(at.x(from), middle, 0),
  );
}

/** Where a cover is turned, and the line that comes to the middle of the back; without one, the seam stands there. */
function foldLines({ unturned, back, lap }: CoverPiece, at: Scale, turn: number): Marks {
  const { left } = box(unturned);
  const word = text(0, -1, 'seam at the back', 'plain', 'start', { size: 2.5, layer: 'text' });
  return marks(
    polyline('dashed', [...unturned, itemAt(unturned, 0)], at, { layer: 'mark' }),
    back && polyline('chain', back, at, { layer: 'mark' }),
    !back && lap > 0 && movedMarks([word], readable(90, turn), at.x(left), at.y(0)),
  );
}
