import type { Bottom } from '../core/build/bottom';
import type { Layer } from '../core/build/layer';
import type { Lies } from '../core/build/stock';
import type { Style } from '../core/build/style';
import { box } from '../core/geometry/box';
import { tightestCurve } from '../core/last/tightest-curve';
import { PART_WORDS } from '../tables/words';
import { buildShape } from './build-shape';
import { planView } from './plan-view';
import { sideView } from './side-view';
import { type Picture, tenth, whole } from './svg';

export interface BuildPictureInput {
  readonly style: Style;
  /** Such as "EU 38". */
  readonly size: string;
  readonly foot: 'L' | 'R';
  readonly bottom: Bottom;
  /** Item shown from above; without it, the lowest lift or else the first layer. */
  readonly item?: number | undefined;
  /** How the stock of a layer may lie. */
  lies(layer: Layer): Lies;
}

/** Room for dimensions and numbers around the drawing, u. */
const LEFT = 15.5;
const RIGHT = 9.5;

/** Side view of a build and, under it at the same scale, one of its pieces from above. */
export function buildPicture(input: BuildPictureInput, width: number): Picture {
  const { bottom, style, foot } = input;
  const shape = buildShape(bottom);
  const piece = shownPiece(bottom, input.item);
  const stack = bottom.layers.filter(({ part }) => part !== 'cover' && part !== 'welt');
  const longest = stack.reduce((best, one) => (one.length > best.length ? one : best), stack[0] as Layer);
  const xs = [...shape.faces.flatMap(({ ring }) => ring.map(([px]) => px)), ...longest.ring.map(([px]) => px)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const scale = (width - LEFT - RIGHT) / (right - left);
  const x = (mm: number) => LEFT + scale * (mm - left);

  const highest = Math.max(...shape.last.map(([, z]) => z));
  const top = Math.max(highest + 8.6 / scale, 60);
  const ground = top * scale + 3;
  const ring = longest.ring;
  const frame = box(ring);
  const middle = ground + 8.2 + scale * frame.top;
  const height = middle - scale * frame.bottom + 10.9;
  const body =
    sideView(bottom, shape, {
      x,
      y: (z) => ground - scale * z,
      scale,
      top,
      selected: piece.part === 'cover' || piece.part === 'welt' ? undefined : piece.item,
    }) +
    planView(bottom, piece, {
      x,
      y: (mm) => middle - scale * (foot === 'L' ? mm : -mm),
      scale,
      behind: longest,
      foot,
      lies: input.lies(piece),
      words: scale > 0.22,
      frontSlant: style.raise === 'wedge' ? style.frontSlant : 0,
    });
  return { width, height, body, label: sentence(input, piece), facts: facts(bottom, piece) };
}

/** The piece to show from above: the one asked for, else the lowest lift, else the first layer. */
export function shownPiece({ layers }: Bottom, item?: number): Layer {
  const asked = layers.find((layer) => layer.item === item);
  const lift = layers.find((layer) => layer.part === 'lift' && layer.item === 1);
  return asked ?? lift ?? (layers[0] as Layer);
}

function sentence({ style, size, foot, bottom }: BuildPictureInput, piece: Layer): string {
  const curve = tightestCurve(bottom.last.profile, 'outside');
  return [
    `${style.code}, ${size}, ${foot === 'L' ? 'left' : 'right'}, side view and view from above.`,
    `${capital(layersInWords(bottom))};`,
    `${tenth(bottom.seatStack)} under the seat, ${tenth(bottom.treadStack)} under the tread;`,
    curve ? `tightest curve radius ${whole(curve.radius)} at the ball;` : '',
    `${PART_WORDS[piece.part].toLowerCase()} ${piece.item} from above, ${whole(piece.length)} long, ${whole(piece.width)} wide`,
    piece.skive ? `with a skive of ${whole(piece.skive.width)}.` : '.',
  ]
    .filter(Boolean)
    .join(' ')
    .replace(' .', '.');
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
  /** mm together */
  readonly sum: number;
}

/** The parts list of a bottom, in its own order. */
export function partRows({ layers }: Bottom): readonly PartRow[] {
  const rows: PartRow[] = [];
  for (const layer of layers) {
    const before = rows.at(-1);
    if (before && before.layer.part === layer.part && before.layer.stock === layer.stock) {
      rows[rows.length - 1] = {
        ...before,
        first: Math.min(before.first, layer.item),
        last: Math.max(before.last, layer.item),
        count: before.count + 1,
        sum: before.sum + layer.thickness,
      };
    } else rows.push({ first: layer.item, last: layer.item, layer, count: 1, sum: layer.thickness });
  }
  return rows;
}

function layersInWords(bottom: Bottom): string {
  return partRows(bottom)
    .map(({ layer, count }) => {
      const name = PART_WORDS[layer.part].toLowerCase();
      return count === 1
        ? `${layer.material} ${name} of ${tenth(layer.thickness)}`
        : `${count} ${layer.material} ${name}s of ${tenth(layer.thickness)}`;
    })
    .join(', ');
}

function facts(bottom: Bottom, piece: Layer): Picture['facts'] {
  const curve = tightestCurve(bottom.last.profile, 'outside');
  return [
    ...partRows(bottom).map(({ first, last, layer, count, sum }): readonly [string, string] => [
      `${first === last ? first : `${first} to ${last}`} ${PART_WORDS[layer.part]}, ${layer.stock}`,
      `${count} × ${tenth(layer.thickness)} = ${tenth(sum)} mm`,
    ]),
    ['Under the seat', `${tenth(bottom.seatStack)} mm`],
    ['Under the tread', `${tenth(bottom.treadStack)} mm`],
    ...(curve ? [['Tightest curve', `R ${whole(curve.radius)}`] as const] : []),
    [`From above: ${PART_WORDS[piece.part]} ${piece.item}`, `${whole(piece.length)} × ${whole(piece.width)} mm`],
    ...(piece.skive
      ? [
          [
            'Its skive',
            `${tenth(piece.skive.width)} mm wide, ${whole(piece.skive.angle)}°, ${tenth(piece.skive.edge)} mm left`,
          ] as const,
        ]
      : []),
  ];
}
