import type { TicketStep } from '../core/plan/ticket';
import { PREPARE_WORDS } from './words';

/** What to do with a piece at the bench: skive, make its faces ready, glue or sew, and what to check. */
export function stepInWords({ run: { style }, layer, pressed }: TicketStep): string {
  const { part, material, skive, lift, follows } = layer;
  const prepare = PREPARE_WORDS[material];
  const steps: string[] = [];
  if (part === 'welt') return 'skive the ends to lap; sew round the lasted edge';
  if (skive?.at === 'front') {
    steps.push(lift ? 'skive the front of the upper face' : 'taper the front of the lower face');
  }
  if (skive?.at === 'edge') steps.push('skive all round from the flesh side');
  if (lift && style.laying === 'block' && layer.item === 1) steps.push('press the block, saw and rasp it to the last');
  if (lift && lift.proud > 0.5) steps.push('rasp the skive hollow to the ball');
  if (follows && part !== 'insole') steps.push('bend it to the last before coating');
  if (part === 'insole') steps.push('tack to the last, trim to its edge');
  else if (part === 'cover') steps.push(`${prepare}; seam at the back, turn over and under`);
  else steps.push(`both faces: ${prepare}`);
  if (part === 'outsole' || part === 'topPiece') steps.push('rasp flush; check heel height, wobble and pair');
  else if (pressed !== undefined && part !== 'insole' && part !== 'cover') steps.push('press');
  return steps.join('; ');
}
