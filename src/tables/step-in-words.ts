import { itemAt, itemRound } from '../core/item-at';
import { isForepartGround } from '../core/bottom/flat-forepart';
import { builtThickness, type Layer } from '../core/bottom/layer';
import type { TicketStep } from '../core/plan/ticket';
import { isOfHeel } from '../core/steps/covering';
import { nailsOfRow } from '../core/steps/fixing';
import type { Act, Face, Step } from '../core/steps/step';
import { PART_WORDS } from './words';

/** Pieces by their names and numbers, neighbours of one part together: "Lifts 7 to 1, Platform 8". */
export function piecesInWords(pieces: readonly Layer[]): string {
  const groups: Layer[][] = [];
  for (const piece of pieces) {
    const before = groups.at(-1);
    const last = before?.at(-1);
    if (before && last?.part === piece.part && Math.abs(last.item - piece.item) === 1) before.push(piece);
    else groups.push([piece]);
  }
  return groups
    .map((group) => {
      const [first, last] = [itemAt(group, 0), itemRound(group, -1)];
      const name = PART_WORDS[first.part];
      return group.length === 1 ? `${name} ${first.item}` : `${name}s ${first.item} to ${last.item}`;
    })
    .join(', ');
}

const mm = (value: number) => value.toFixed(1);

/** What brings a piece to its height: the saw a block, the rasp all else. */
export function takenDown({ sawn }: Pick<Layer, 'sawn'>): 'sawn' | 'rasped' {
  return sawn ? 'sawn' : 'rasped';
}

/** Leather lies grain up in insole, midsole, lifts and platform, grain to the ground in all that is walked on. */
const GRAIN_DOWN: ReadonlySet<Layer['part']> = new Set(['sole', 'outsole', 'topPiece'] as const);

/** The name of a side: of leather its grain or flesh. */
function sideInWords({ piece, side, zone, beneath, within }: Face): string {
  if (side === 'grain')
    return zone === 'in'
      ? 'grain of the turned-in ends'
      : `grain of the turned-${zone} margin alone${beneath === 'seat' ? ' under the heel' : ''}`;
  if (side === 'flesh') return 'flesh side all over';
  if (side === 'edge') return 'edge';
  if (side === 'breast')
    return `breast${zone === 'in' ? ' where the ends are turned in' : within ? ' between the turned-in ends' : ''}`;
  if (zone === 'flap') return 'flap';
  const where =
    zone === 'over' || zone === 'under'
      ? ` where the margin is turned ${zone}`
      : within
        ? ' between the turned margins'
        : zone === 'seat' && side === 'lower'
          ? ' under the heel'
          : zone === 'top'
            ? ' that is left bare'
            : '';
  if (piece?.material !== 'leather') return `${side} face${where}`;
  const grain = GRAIN_DOWN.has(piece.part) ? side === 'lower' : side === 'upper';
  return `${grain ? 'grain' : 'flesh'}${where}`;
}

/** Faces by their sides, each with its pieces. */
function facesInWords(faces: readonly Face[]): string {
  const bySide = new Map<string, Layer[]>();
  let lasted = false;
  for (const face of faces) {
    if (!face.piece) {
      lasted = true;
      continue;
    }
    const side = sideInWords(face);
    const pieces = bySide.get(side) ?? [];
    bySide.set(side, pieces);
    if (!pieces.includes(face.piece)) pieces.push(face.piece);
  }
  const said = [...bySide].map(([side, pieces]) => `${side} of ${piecesInWords(pieces).toLowerCase()}`);
  return (lasted ? ['lasted bottom', ...said] : said).join(', ');
}

function coatsInWords({ coated = [], coats, usualCoats }: Step): string {
  const usual = usualCoats ? ' (usual coats)' : '';
  const times = (n: number) => (n === 1 ? 'once' : n === 2 ? 'twice, the first thin' : `${n} times`);
  const counts = [...new Set(coats)];
  if (counts.length === 1) return `coat ${facesInWords(coated)} ${times(itemAt(counts, 0))}${usual}`;
  return (
    counts.map((n) => `coat ${facesInWords(coated.filter((_, i) => coats[i] === n))} ${times(n)}`).join('; ') + usual
  );
}

function fixingInWords({ fixing }: Step): string {
  if (!fixing) return '';
  const row = nailsOfRow(fixing);
  return `nail with ${fixing.nails} in a triangle${row ? `, through both a row of ${row}, 6 mm inside the edge` : ''}`;
}

/** What is taken off the edge of pieces, a side: "2.0 mm a side", or by pieces where they differ. */
function roundingInWords(pieces: readonly Layer[]): string {
  const amounts = [...new Set(pieces.map(({ rounding }) => rounding))];
  if (amounts.length === 1) return `${mm(itemAt(amounts, 0))} mm a side`;
  return amounts
    .map(
      (amount) =>
        `${mm(amount)} mm a side of ${piecesInWords(pieces.filter(({ rounding }) => rounding === amount)).toLowerCase()}`,
    )
    .join(', ');
}

/** How far each end of the cover among some pieces goes past its seam, mm. */
function lapOf(pieces: readonly Layer[]): number {
  return pieces.find(({ cover }) => cover)?.cover?.lap ?? 0;
}

/** A cover whose seam stands at the back starts there with one end; one of a heel, or of a wall open in front, with its middle. */
function coverLaid({ acts, pieces }: Step, heel: boolean): string {
  return acts.includes('close seam') && !heel
    ? `lay the cover with ${lapOf(pieces) > 0 ? 'the seam line of ' : ''}one end on the middle of the back, forward along the outer side and round to where it began, slightly stretched`
    : 'lay the middle of the cover on the middle of the back, then both sides forward, slightly stretched';
}

type Phrase = (step: Step, line: TicketStep) => string;

const PHRASES: Readonly<Record<Act, string | Phrase>> = {
  cut: ({ pieces: [piece] }) =>
    piece?.rasped
      ? `cut left and right; ${mm(builtThickness(piece))} mm of it are left in the end`
      : 'cut left and right',
  'skive front': ({ skive, faces: [face] }) =>
    `skive the front of the ${face?.side ?? 'upper'} face from ${mm(skive?.thickness ?? 0)} to ${mm(skive?.edge ?? 0)} mm over ${mm(skive?.width ?? 0)} mm`,
  'skive edge': ({ skive, faces: [face], pieces: [piece] }) =>
    `skive the edge from the ${face ? sideInWords(face) : 'flesh'} side to ${mm(skive?.edge ?? 0)} mm over ${mm(skive?.width ?? 0)} mm${piece?.skive?.from === undefined ? '' : ', before the heel alone'}`,
  'skive flap': 'skive the flap where it bends at the breast',
  // Ends that are cut through together meet as thick as they are.
  'skive margins': ({ pieces }) => `skive the margins that are turned${lapOf(pieces) > 0 ? '' : ', and the ends'}`,
  'skive ends': (_, { run }) =>
    run.style.weltEnds === 'at the seat' ? 'skive the ends to run out at the seat' : 'skive the ends to lap',
  'block insole': 'block to the last, tack, trim to its edge',
  'cut holdfast': 'cut the holdfast and bore its holes',
  'last upper': 'last the upper over it',
  'sew welt': (_, { run }) =>
    `sew the welt on round the lasted edge${run.style.weltEnds === 'at the seat' ? ', from one side of the seat to the other' : ''}`,
  'trim seam': 'trim the seam',
  'beat welt': 'beat the welt flat',
  'trim margin': (_, { run }) => `trim the lasted margin level${run.style.welt === undefined ? '' : ' at the seat'}`,
  'fit shank': 'fit the shank from mid heel to behind the tread, fasten both ends',
  'pack seat': (_, { sizeRun }) =>
    `pack the seat ${mm(sizeRun.bottom.layers.find(({ part }) => part === 'welt')?.thickness ?? 0)} mm high, level with the welt`,
  'fill cavity': (_, { run }) =>
    `fill the hollow under the forepart ${run.style.welt === undefined ? 'flush' : 'level with the welt, its middle slightly domed'}`,
  roughen: ({ faces }) =>
    `roughen the ${facesInWords(faces)}${faces.every(({ piece }) => !piece) ? ' to 1 mm inside its edge' : ''}`,
  degrease: 'wash or degrease',
  prime: 'prime',
  dust: ({ acts, faces }) => (acts[0] === 'dust' ? `dust off the ${facesInWords(faces)}` : 'dust off'),
  'fill margins': ({ faces }) =>
    `fill between the turned${faces.every(({ side }) => side === 'breast') ? '-in ends' : ' margins'} flush`,
  soak: 'soak',
  mellow: 'wrap, let mellow',
  beat: 'beat it firm',
  warm: 'warm',
  damp: 'damp',
  bend: 'bend to the last',
  coat: coatsInWords,
  paste: 'paste both faces, none at the very edge',
  join: (step, { run, sizeRun }) => {
    const warm = step.warm
      ? `warm both films to ${step.warm.least === step.warm.most ? step.warm.least : `${step.warm.least} to ${step.warm.most}`} °C; `
      : '';
    if (step.kind === 'cover') return warm + coverLaid(step, isOfHeel(step.pieces, run.style));
    if (step.kind === 'fix') return 'set it on';
    // What was built apart is joined as one; a slab from the toe, for its forepart is bent.
    const { adds = [], brings = [] } = step.joint ?? {};
    const whole = brings.length > adds.length;
    const added = piecesInWords(whole ? brings : adds).toLowerCase() + (whole ? ' as one' : '');
    const ground = isForepartGround(sizeRun.bottom);
    const way = run.style.raise === 'none' && !ground ? 'from the toe back' : 'from the back forward';
    if (step.apart)
      return `${warm}lay ${ground && adds.some(({ part }) => part === 'outsole') ? 'them' : 'flat'} on one another, backs flush`;
    return `${warm}join ${added || 'the flap'} ${way}, no air between`;
  },
  pad: 'lay the moulded face on a soft pad',
  press: ({ pressed, acts }) => (pressed?.usual && !acts.includes('pad') ? 'press, or hammer all over' : 'press'),
  cool: 'let cool on the last',
  dry: 'let dry',
  cure: ({ whole }) => (whole ? 'let cure before edges are trimmed' : 'let cure before edges are rasped'),
  'cure core': 'let the core’s joint cure before it is sawn',
  level: ({ left, pieces, apart }, { sizeRun: { bottom } }) => {
    const low = pieces.at(-1);
    // What is round at the toe by then stays so.
    const round = bottom.through > 0 ? bottom.last.toeSpring > 0 : !apart && isForepartGround(bottom);
    return low && left !== undefined
      ? `rasp ${piecesInWords([low]).toLowerCase()} to ${mm(left)} mm, the ground face flat`
      : `level the ground face${round ? ' up to the tread' : ''}`;
  },
  thin: ({ left, pieces }) => `rasp the upper face of ${piecesInWords(pieces).toLowerCase()} to ${mm(left ?? 0)} mm`,
  saw: ({ height }) => {
    const at = [
      `${mm(height?.back ?? 0)} mm at the back`,
      ...(height?.breast === undefined ? [] : [`${mm(height.breast)} mm at the breast`]),
      ...(height?.tread === undefined ? [] : [`${mm(height.tread)} mm under the tread`]),
    ];
    const flat = height?.tread === undefined ? 'flat' : 'flat up to the tread';
    return `saw the profile by its template, ${at.join(', ')}, the ground face ${flat}`;
  },
  'rasp to last': ({ pieces }) => {
    const proud = Math.max(...pieces.map(({ lift }) => lift?.proud ?? 0));
    return proud > 0.05 ? `rasp the top hollow to the last, up to ${mm(proud)} mm` : 'rasp the top to the last';
  },
  'grind toe': (_, { sizeRun }) =>
    `too stout to bend: from the tread on rasp the top hollow to the last and the ground face round, ${mm(sizeRun.bottom.last.toeSpring)} mm up at the toe`,
  'try on last': 'try it dry on the last',
  'rasp edge': ({ pieces, width }) =>
    `rasp the edge of all as one: ${roundingInWords(pieces)}${width === undefined ? '' : `, to ${mm(width)} mm at the widest`}`,
  'bore core': 'bore the block from seat to ground',
  'glue core': (_, { run }) => `glue in the core of ${run.style.heelCore}`,
  'fold edge': 'fold the top edge on itself',
  'close seam': ({ pieces }, { run }) => {
    if (isOfHeel(pieces, run.style)) return 'cut once through both overlapping ends at the breast';
    const lap = lapOf(pieces);
    const through = `cut once through both ends, which go ${mm(lap)} mm past it, and `;
    return `${lap > 0 ? through : ''}close the seam at the back`;
  },
  'pare pleats': 'pare the pleats',
  'turn over': 'turn the margin over on top',
  'turn under': 'turn the margin under',
  'turn in': 'turn the ends in on to the breast',
  'trim round': 'trim the sole round to its outline',
  'open channel': 'open the channel in the grain',
  stitch: 'stitch through to the welt',
  'hammer seam': 'hammer the seam',
  'close channel': 'close the channel',
  'nail seat': 'nail the seat',
  'lay rand': 'level the seat with a rand',
  nail: fixingInWords,
  'punch under': 'punch the heads under',
  'trim lift': 'trim',
  peen: 'peen',
  'skive level': 'skive level',
  'nail from inside': ({ fixing }) => `${fixing?.nails ?? 0} nails from inside through the insole`,
  'screw from inside': 'one screw of 4 mm, at least 15 mm into what holds it',
  'cut breast': 'cut the breast clean',
  'turn tab': 'turn the tab on to the heel’s ground face',
  'try on ground': 'stand it on a flat board, the top piece loose',
  'trim edge': 'trim the edges flush',
  'check height': ({ height }) =>
    `check ${mm(height?.back ?? 0)} mm at the back and ${mm(height?.tread ?? 0)} mm under the tread`,
  'check stand': 'stand it on a flat board',
  'check pair': 'hold left against right',
  'sand edge': 'sand the edges fine',
  ink: 'ink',
  'iron and wax': 'iron and wax',
  seal: 'seal',
  'last out': 'pull the last',
  'filler last in': 'put a filler last in',
  'filler last out': 'pull the filler last',
  sock: 'put the sock in',
};

/** What to do in a step, in the words of the bench. */
export function stepInWords(line: TicketStep): string {
  const { step } = line;
  return step.acts
    .map((act) => {
      const phrase = PHRASES[act];
      return typeof phrase === 'string' ? phrase : phrase(step, line);
    })
    .filter(Boolean)
    .join('; ');
}
