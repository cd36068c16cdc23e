import { itemAt } from '../core/item-at';
import type { Bottom } from '../core/bottom/bottom';
import { builtThickness, type Layer } from '../core/bottom/layer';
import { skiveThen } from '../core/bottom/skive-then';
import type { SheetDirection } from '../core/stock/stock';
import type { Style } from '../core/bottom/style';
import { box } from '../core/geometry/box';
import { tightestCurve } from '../core/last/tightest-curve';
import { type Figures, inSentence } from '../tables/figures';
import { takenDown } from '../tables/step-in-words';
import { PART_WORDS } from '../tables/words';
import { buildShape } from './build-shape';
import { marks } from './mark';
import { planView } from './plan-view';
import { greatestStrain, outerHeight, percent, sideView } from './side-view';
import type { Picture, PictureItem } from './svg';
import { unrolledView } from './unrolled-view';

export interface BuildPictureInput {
  readonly style: Style;
  /** Such as "EU 38". */
  readonly size: string;
  readonly foot: 'L' | 'R';
  readonly bottom: Bottom;
  /** Item shown from above; without it, the lowest lift or else the first layer. */
  readonly item?: number | undefined;
  readonly figures: Figures;
  /** How the stock of a layer may lie. */
  directionOf(layer: Layer): SheetDirection;
}

/** Room for dimension lines around the drawing, beside their figures, u. */
const LEFT = 1.1;
const RIGHT = 4;
/** Room for the item numbers beside the toe. */
const NUMBERS = 9.5;
/** Width of a figure of 3.5 u. */
const LETTER = 1.95;

/** Side view of a build and, under it at the same scale, one of its pieces from above. */
export function buildPicture(input: BuildPictureInput, width: number): Picture {
  const { bottom, style, foot } = input;
  const shape = buildShape(bottom);
  const piece = shownPiece(bottom, input.item);
  const stack = bottom.layers.filter(({ part }) => part !== 'cover' && part !== 'welt');
  const longest = stack.reduce((best, one) => (one.length > best.length ? one : best), itemAt(stack, 0));
  const xs = [...shape.faces.flatMap(({ ring }) => ring.map(([px]) => px)), ...longest.ring.map(([px]) => px)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const { figures } = input;
  const { before, behind } = roomBeside(bottom, longest, figures);
  const scale = (width - before - behind) / (right - left);
  const x = (mm: number) => before + scale * (mm - left);

  const highest = Math.max(...shape.last.map(([, z]) => z));
  const top = Math.max(highest + 8.6 / scale, 60);
  const ground = top * scale + 3;
  const ring = longest.ring;
  const frame = box(ring);
  // The right foot's outside is down, so that its toe points the same way.
  const [up, down] = foot === 'L' ? [frame.top, -frame.bottom] : [-frame.bottom, frame.top];
  const middle = ground + 8.2 + scale * up;
  const height = middle + scale * down + 10.9;
  const drawn = marks(
    sideView(bottom, shape, {
      x,
      y: (z) => ground - scale * z,
      scale,
      top,
      figures,
      selected: laidFlat(piece) ? undefined : piece.item,
    }),
    laidFlat(piece)
      ? unrolledView(
          piece,
          { left: x(frame.left), right: x(frame.right), top: middle - scale * up, bottom: middle + scale * down },
          { scale, foot, direction: input.directionOf(piece), words: scale > 0.22, figures },
        )
      : planView(bottom, piece, {
          x,
          y: (mm) => middle - scale * (foot === 'L' ? mm : -mm),
          scale,
          behind: longest,
          foot,
          direction: input.directionOf(piece),
          words: scale > 0.22,
          figures,
          frontSlant: style.raise === 'wedge' ? style.frontSlant : 0,
        }),
  );
  return {
    width,
    height,
    marks: drawn,
    label: sentence(input, piece),
    facts: facts(input, piece),
    items: bottom.layers.map((layer) => itemOf(input, layer)),
    scale,
  };
}

/** What dimension lines and numbers take to the left and to the right of the drawing, u. */
function roomBeside(
  bottom: Bottom,
  longest: Layer,
  figures: Figures,
): { readonly before: number; readonly behind: number } {
  const room = (words: readonly string[]) => LETTER * Math.max(...words.map(({ length }) => length));
  const width = figures.length(longest.width);
  return {
    before: LEFT + outerHeight(bottom, figures) + room([figures.height(bottom.seatStack), width]),
    behind: Math.max(NUMBERS, RIGHT + room([width])),
  };
}

function itemOf({ figures }: BuildPictureInput, layer: Layer): PictureItem {
  const { item, part, stock, thickness, skive } = layer;
  const covers = part === 'cover';
  const size = [layer.length, layer.width].map((mm) => inSentence(figures, figures.length(mm)));
  return {
    id: String(item),
    label: [
      `${PART_WORDS[part]} ${item}, ${stock}, ${figures.thickness(thickness, covers)} ${figures.thicknessUnit(covers)} thick${layer.rasped ? `, ${takenDown(layer)} to ${figures.thickness(builtThickness(layer), covers)}` : ''}`,
      `${size[0]} long, ${size[1]} wide`,
      ...(skive ? [`skive ${inSentence(figures, figures.length(skive.width))}`] : []),
    ].join(', '),
  };
}

/** The piece to show from above: the one asked for, else the lowest lift, else the first layer. */
export function shownPiece({ layers }: Bottom, item?: number): Layer {
  const asked = layers.find((layer) => layer.item === item);
  const lift = layers.find((layer) => layer.part === 'lift' && layer.item === 1);
  return asked ?? lift ?? itemAt(layers, 0);
}

function sentence({ style, size, foot, bottom, figures }: BuildPictureInput, piece: Layer): string {
  const curve = tightestCurve(bottom.last.profile, 'over');
  const length = (mm: number) => inSentence(figures, figures.length(mm));
  const height = (mm: number) => inSentence(figures, figures.height(mm));
  return [
    `${style.code}, ${size}, ${foot === 'L' ? 'left' : 'right'}, side view and view from above.`,
    `${capital(layersInWords(bottom, figures))};`,
    `${height(bottom.seatStack)} at the back, ${height(bottom.treadStack)} under the tread;`,
    curve ? `tightest curve radius ${length(curve.radius)} at the ball${stretched(bottom, curve.radius)};` : '',
    `${PART_WORDS[piece.part].toLowerCase()} ${piece.item} ${seen(piece)}, ${length(piece.length)} long, ${length(piece.width)} wide`,
    piece.skive ? `with a skive of ${length(piece.skive.width)}.` : '.',
  ]
    .filter(Boolean)
    .join(' ')
    .replace(' .', '.');
}

/** Whether a piece goes round the edge, so that it has no outline seen from above. */
function laidFlat({ part }: Layer): boolean {
  return part === 'cover' || part === 'welt';
}

function seen(piece: Layer): string {
  return laidFlat(piece) ? 'laid flat' : 'from above';
}

function stretched(bottom: Bottom, radius: number): string {
  const bent = greatestStrain(bottom, radius);
  return bent ? `, where the ${PART_WORDS[bent.layer.part].toLowerCase()} is stretched ${percent(bent.strain)}` : '';
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** One row of the parts list: neighbouring layers of one part and stock. */
export interface PartRow {
  readonly first: number;
  readonly last: number;
  readonly layer: Layer;
  readonly count: number;
  /** As they are built in, mm together. */
  readonly sum: number;
  /** The one of them that something is rasped or sawn off. */
  readonly rasped?: Layer | undefined;
}

/** The parts list of a bottom, in its own order. */
export function partRows({ layers }: Bottom): readonly PartRow[] {
  const rows: PartRow[] = [];
  for (const layer of layers) {
    const before = rows.at(-1);
    const own = layer.rasped ? layer : undefined;
    // Covers go round the edge, each round its own: they do not add up.
    if (before && !layer.cover && before.layer.part === layer.part && before.layer.stock === layer.stock) {
      rows[rows.length - 1] = {
        ...before,
        first: Math.min(before.first, layer.item),
        last: Math.max(before.last, layer.item),
        count: before.count + 1,
        sum: before.sum + builtThickness(layer),
        rasped: before.rasped ?? own,
      };
    } else rows.push({ first: layer.item, last: layer.item, layer, count: 1, sum: builtThickness(layer), rasped: own });
  }
  return rows;
}

/** What adds up to a row's sum, with what is rasped as thick as it is then: "7 × 5.9 + 5.6". */
export function summands({ layer, count, rasped }: PartRow, figures: Figures): string {
  const covers = layer.part === 'cover';
  const each = figures.thickness(layer.thickness, covers);
  if (!rasped) return `${count} × ${each}`;
  const left = figures.thickness(builtThickness(rasped), covers);
  return count === 1 ? `${each} ${takenDown(rasped)} to ${left}` : `${count - 1} × ${each} + ${left}`;
}

function layersInWords(bottom: Bottom, figures: Figures): string {
  return partRows(bottom)
    .map(({ layer, count, rasped }) => {
      const name = PART_WORDS[layer.part].toLowerCase();
      const unit = figures.unit === 'mm' ? '' : ` ${figures.thicknessUnit(layer.part === 'cover')}`;
      const thick = figures.thickness(layer.thickness, layer.part === 'cover') + unit;
      const said =
        count === 1 ? `${layer.material} ${name} of ${thick}` : `${count} ${layer.material} ${name}s of ${thick}`;
      if (!rasped) return said;
      return `${said} (${name} ${rasped.item} ${takenDown(rasped)} to ${figures.thickness(builtThickness(rasped))})`;
    })
    .join(', ');
}

function facts({ bottom, figures }: BuildPictureInput, piece: Layer): Picture['facts'] {
  const { unit } = figures;
  const skive = skiveThen(piece);
  const curve = tightestCurve(bottom.last.profile, 'over');
  return [
    ...partRows(bottom).map((row): readonly [string, string] => {
      const { first, last, layer, count, rasped, sum } = row;
      const covers = layer.part === 'cover';
      const together = `${figures.thickness(sum, covers)} ${figures.thicknessUnit(covers)}`;
      return [
        `${first === last ? first : `${first} to ${last}`} ${PART_WORDS[layer.part]} from ${layer.stock}`,
        rasped && count === 1
          ? `${summands(row, figures)} ${figures.thicknessUnit(covers)}`
          : `${summands(row, figures)} = ${together}`,
      ];
    }),
    ['At the back', `${figures.height(bottom.seatStack)} ${unit}`],
    ['Under the tread', `${figures.height(bottom.treadStack)} ${unit}`],
    ['Heel of the last', `${figures.height(bottom.last.heelHeight)} ${unit}`],
    ...(curve
      ? [
          [
            'Tightest curve',
            `radius ${figures.length(curve.radius)} ${unit}${stretched(bottom, curve.radius)}`,
          ] as const,
        ]
      : []),
    [
      `${capital(seen(piece))}: ${PART_WORDS[piece.part]} ${piece.item}`,
      `${figures.length(piece.length)} × ${figures.length(piece.width)} ${unit}`,
    ],
    ...(skive
      ? [
          [
            'Its skive',
            `${figures.height(skive.width)} ${unit} wide, ${Math.round(skive.angle)}°, ${figures.height(skive.edge)} ${unit} left of ${figures.height(skive.thickness)}`,
          ] as const,
        ]
      : []),
  ];
}
