import { offsetCurve } from '../../geometry/offset-curve';
import { simplifyOutward } from '../../geometry/simplify-outward';
import { crossesItself } from '../../geometry/crosses-itself';
import { letOut } from '../../geometry/let-out';
import type { Ring } from '../../geometry/ring';
import type { Layout, Placement } from '../layout';
import type { Piece } from '../piece';
import { roomOn, type SheetFormat, TOLERANCE } from '../sheet';
import { endsMaySwap, type Way, wholeTurn } from '../way';
import { Arrangement, type Snapshot } from './arrangement';
import { Effort, type Token } from './effort';
import { Pairs } from './pairs';
import { Random } from './random';
import { separate } from './separate';
import { Memo } from '../../memo';
import { type Shape, shapesOf } from './shape';
import { Space } from './space';
import { shorten } from './strip';

/** Some sheets of a layout, of which the last is to be emptied into the others, or as far as that goes. */
export interface SheetsTask {
  readonly kind: 'sheets';
  readonly pieces: readonly Piece[];
  readonly format: SheetFormat;
  readonly layout: Layout;
  readonly evaluations: number;
  readonly seed: number;
}

/** What became of the sheets: as many as before, or one less. */
export interface Emptied {
  readonly layout: Layout;
  /** How much of the last sheet's length pieces take up, mm; 0 once it is empty. */
  readonly length: number;
  readonly spent: number;
}

/** So many shapes, kinds times turns, are prepared at most where pieces may lie any way: each two of them cost. */
const MOST_SHAPES = 240;
const TURNS = [12, 8, 4];

/** How far the outline that the search lays may reach beyond the piece, mm: fewer corners, faster tests. */
const COARSENESS = 0.3;

/**
 * Shortens the last of some sheets: pieces that no longer find room on it move to the others. Starts from a layout that
 * is sound; what it finds is for the caller to verify.
 * @param found told of every better layout on the way
 */
export function emptySheet(task: SheetsTask, token: Token, found: (better: Emptied) => void = () => {}): Emptied {
  const { pieces, format, layout, evaluations, seed } = task;
  const room = roomOn(format);
  const laid = layout.flatMap((placements, sheet) => placements.map((placement) => ({ ...placement, sheet })));
  const kinds = [...new Set(laid.map(({ piece }) => piece))].sort((a, b) => a - b);
  const turns = kinds.map((kind) => {
    const lies = laid.filter(({ piece }) => piece === kind).map(({ turn }) => wholeTurn(turn));
    return turnsOf(pieces[kind].way, lies, kinds.length);
  });
  const { shapes, pairs } = prepare(pieces, kinds, turns, format.knifeRoom / 2);
  const choices = new Map(kinds.map((kind, i) => [kind, shapesOfKind(shapes, i)]));
  // The layout's own sheets may use up the tolerance of the check; so may these.
  const slack = TOLERANCE / 4;
  const lengths = layout.map(() => room.length + 2 * slack);
  const space = new Space(
    lengths,
    layout.map(() => room.width + 2 * slack),
  );
  const effort = new Effort(evaluations, token);
  const arrangement = new Arrangement(
    pairs,
    space,
    laid.map(({ piece }) => choices.get(piece) as readonly number[]),
    effort,
  );
  const offset = room.offset - slack;
  laid.forEach(({ piece, turn, x, y, sheet }, i) => {
    const shape = (choices.get(piece) as readonly number[]).find(
      (one) => shapes[one].turn === wholeTurn(turn),
    ) as number;
    const { middleX, middleY } = shapes[shape];
    arrangement.put(i, { shape, x: x - offset + middleX + space.start(sheet), y: y - offset + middleY });
  });
  arrangement.reweighAll();
  const random = new Random(seed);
  const emptied = ({ shapes: turned, xs, ys, lengths: reached }: Snapshot): Emptied => {
    const sheets: Placement[][] = layout.map(() => []);
    laid.forEach(({ piece }, i) => {
      const { turn, middleX, middleY } = shapes[turned[i]];
      const sheet = space.at(xs[i]);
      const x = xs[i] - middleX - space.start(sheet) + offset;
      sheets[sheet].push({ piece, turn, x, y: ys[i] - middleY + offset });
    });
    return {
      layout: sheets.filter((sheet) => sheet.length > 0),
      length: reached[reached.length - 1],
      spent: effort.spent,
    };
  };
  const { reached: start } = separate(arrangement, random, effort, { idle: 100, strikes: 2 });
  const whole = { layout, length: room.length, spent: effort.spent };
  if (start.loss > 0) return whole;
  return emptied(shorten(arrangement, start, random, effort, (better) => found(emptied(better))));
}

/** What is known of some kinds of pieces in some turns, whichever search asks. */
interface Prepared {
  readonly shapes: readonly Shape[];
  readonly pairs: Pairs;
}

const prepared = new Memo<Prepared>(2);

/** Prepares the shapes and pairs of some kinds of pieces; kept, because round after round asks for the same. */
function prepare(
  pieces: readonly Piece[],
  kinds: readonly number[],
  turns: readonly (readonly number[])[],
  distance: number,
): Prepared {
  const content = JSON.stringify([distance, kinds.map((kind, i) => [pieces[kind].ring, turns[i]])]);
  return prepared.get(content, () => {
    const shapes = kinds.flatMap((kind, i) => shapesOf(reachOf(pieces[kind].ring, distance), i, turns[i]));
    return { shapes, pairs: new Pairs(shapes) };
  });
}

function shapesOfKind(shapes: readonly Shape[], kind: number): readonly number[] {
  return shapes.flatMap((shape, i) => (shape.kind === kind ? [i] : []));
}

/** A piece let out by half the knife room, with few corners; never less than that. */
function reachOf(ring: Ring, distance: number): Ring {
  const curve = offsetCurve(ring, distance);
  const simple = simplifyOutward(crossesItself(curve) ? letOut(ring, distance) : curve, COARSENESS);
  return crossesItself(simple) ? letOut(ring, distance) : simple;
}

/** Turns in which a piece may lie: those in which it lies, and others that its way allows. */
function turnsOf(way: Way, lies: readonly number[], kinds: number): readonly number[] {
  const others = (): readonly number[] => {
    switch (way.kind) {
      case 'any': {
        const count = TURNS.find((turns) => turns * kinds <= MOST_SHAPES);
        if (count) return Array.from({ length: count }, (_, i) => (i * 360) / count);
        return lies;
      }
      case 'within':
        return [0, way.degrees, -way.degrees, way.degrees / 2, -way.degrees / 2];
      default:
        return [0];
    }
  };
  const turns = [...lies, ...others()].flatMap((turn) => (endsMaySwap(way) ? [turn, turn + 180] : [turn]));
  return [...new Set(turns.map(wholeTurn))].sort((a, b) => a - b);
}
