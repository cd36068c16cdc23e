import type { Last } from '../../last/last';
import { modelProfile } from '../../last/model-profile';
import { type Profile, atGround } from '../../last/profile';
import { Problem } from '../../problem';
import type { Stock } from '../../stock/stock';
import { fold } from '../codes';
import type { Finder } from '../finder';
import type { Limits } from '../limits';
import type { StyleRun } from '../runs';
import { unusedParts } from '../unused';
import type { Check } from './check';
import { worstSize } from './worst';

/** A size whose last is so much longer or shorter than the base size's is most likely a slip: eight or nine sizes. */
const FAR_FROM_BASE = 0.22;

export function lastChecks(
  { style, last, sizes }: StyleRun,
  limits: Limits,
  finder: Finder,
  stocks: ReadonlyMap<string, Stock>,
): readonly Check[] {
  const subject = style.code;
  const profile = sizes[0]?.bottom.last.profile;
  if (!profile) return [];
  const list: Check[] = [];
  const { heelHeight } = last;
  const highest = worstSize(sizes, ({ bottom }) => bottom.last.heelHeight);
  const height = highest?.sizeRun.bottom.last.heelHeight ?? 0;
  if (height > limits.plainModel && profile.source === 'model') {
    const wanted = limits.plainModel;
    list.push({ kind: 'plainModel', subject, verdict: 'lookAt', found: height, wanted, size: highest?.size });
  }
  const off = worstSize(sizes, ({ bottom }) => bottom.last.profile.misfit);
  const misfit = off?.sizeRun.bottom.last.profile.misfit;
  if (misfit !== undefined) {
    const verdict = misfit > limits.misfit ? 'lookAt' : 'holds';
    list.push({ kind: 'misfit', subject, verdict, found: misfit, wanted: limits.misfit, size: off?.size });
  }
  for (const part of unusedParts(style)) list.push({ kind: 'unusedPart', subject, verdict: 'lookAt', part });
  for (const { size, bottom } of sizes) {
    const { length } = bottom.last;
    if (Math.abs(length / last.length - 1) <= FAR_FROM_BASE) continue;
    list.push({ kind: 'farFromBase', subject, verdict: 'lookAt', found: length, wanted: last.length, size });
  }
  // The tread is the widest place of a bottom, the waist the narrowest.
  if (last.waist > last.tread) {
    list.push({ kind: 'widths', subject, verdict: 'lookAt', found: last.waist, wanted: last.tread, of: 'waist' });
  }
  if (last.seat > last.tread) {
    list.push({ kind: 'widths', subject, verdict: 'lookAt', found: last.seat, wanted: last.tread, of: 'seat' });
  }
  const measured = finder.measured(last);
  const back = measured?.gaps?.[0]?.z;
  if (back !== undefined && Math.abs(back - heelHeight) > limits.heelControl + 1e-9) {
    list.push({ kind: 'gapsAgainstHeel', subject, verdict: 'putRight', found: back, wanted: heelHeight });
  }
  if (measured?.gaps && heelHeight > 0) {
    const model = plainModel(last);
    if (model) {
      const found = Math.max(...measured.gaps.map(({ x, z }) => Math.abs(atGround(model, x).z - z)));
      list.push({ kind: 'modelAgainstGaps', subject, verdict: 'holds', found, wanted: limits.misfit });
    }
  }
  if (measured?.twist !== undefined && measured.twist > limits.twist) {
    list.push({ kind: 'twist', subject, verdict: 'lookAt', found: measured.twist, wanted: limits.twist });
  }
  const leather = sizes[0]?.bottom.layers.find(
    ({ part, material }) => material === 'leather' && (part === 'sole' || part === 'outsole' || part === 'midsole'),
  );
  if (leather) {
    const pairs = stocks.get(fold(leather.stock))?.pairs ?? 'anywhere';
    const verdict = pairs === 'anywhere' ? 'lookAt' : 'holds';
    list.push({ kind: 'leatherPairs', subject, verdict, wanted: limits.pairSubstance, part: leather.part, pairs });
  }
  return list;
}

/** The plain model of a last, or undefined where there is none for its heel. */
function plainModel({ length, heelHeight, toeSpring, seatPitch }: Last): Profile | undefined {
  try {
    return modelProfile({ length, heelHeight, toeSpring, seatPitch });
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}
