import type { Last } from '../../last/last';
import type { MeasuredLast } from '../../last/measured-last';
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

/** What a style's last, its sizes and the leather that lies on it tell. */
export function lastChecks(
  run: StyleRun,
  limits: Limits,
  finder: Finder,
  stocks: ReadonlyMap<string, Stock>,
): readonly Check[] {
  if (!run.sizes[0]) return [];
  return [
    ...modelChecks(run, limits),
    ...unusedParts(run.style).map((part): Check => ({ ...lookAt(run, 'unusedPart'), part })),
    ...farFromBase(run),
    ...widthChecks(run),
    ...measuredChecks(run, limits, finder.measured(run.last)),
    ...leatherPairs(run, limits, stocks),
  ];
}

function lookAt<Kind extends Check['kind']>({ style }: StyleRun, kind: Kind) {
  return { kind, subject: style.code, verdict: 'lookAt' as const };
}

/** Whether the profile may miss the last: the plain model under a high heel, or a model that misses what was measured. */
function modelChecks(run: StyleRun, limits: Limits): readonly Check[] {
  const { sizes, style } = run;
  const list: Check[] = [];
  const highest = worstSize(sizes, ({ bottom }) => bottom.last.heelHeight);
  const height = highest?.sizeRun.bottom.last.heelHeight ?? 0;
  if (height > limits.plainModel && sizes[0]?.bottom.last.profile.source === 'model')
    list.push({ ...lookAt(run, 'plainModel'), found: height, wanted: limits.plainModel, size: highest?.size });
  const off = worstSize(sizes, ({ bottom }) => bottom.last.profile.misfit);
  const misfit = off?.sizeRun.bottom.last.profile.misfit;
  if (misfit !== undefined) {
    const verdict = misfit > limits.misfit ? 'lookAt' : 'holds';
    list.push({ kind: 'misfit', subject: style.code, verdict, found: misfit, wanted: limits.misfit, size: off?.size });
  }
  return list;
}

function farFromBase(run: StyleRun): readonly Check[] {
  const wanted = run.last.length;
  return run.sizes.flatMap(({ size, bottom }): readonly Check[] => {
    const found = bottom.last.length;
    return Math.abs(found / wanted - 1) > FAR_FROM_BASE ? [{ ...lookAt(run, 'farFromBase'), found, wanted, size }] : [];
  });
}

/** The tread is the widest place of a bottom, the waist the narrowest. */
function widthChecks(run: StyleRun): readonly Check[] {
  const { last } = run;
  return (['waist', 'seat'] as const)
    .filter((of) => last[of] > last.tread)
    .map((of): Check => ({ ...lookAt(run, 'widths'), found: last[of], wanted: last.tread, of }));
}

/** Measured gaps and twist, against the heel height, the plain model and the limits. */
function measuredChecks(run: StyleRun, limits: Limits, measured: MeasuredLast | undefined): readonly Check[] {
  const { style, last } = run;
  const { heelHeight } = last;
  const list: Check[] = [];
  const back = measured?.gaps?.[0]?.z;
  if (back !== undefined && Math.abs(back - heelHeight) > limits.heelControl + 1e-9) {
    const verdict = 'putRight';
    list.push({ kind: 'gapsAgainstHeel', subject: style.code, verdict, found: back, wanted: heelHeight });
  }
  const model = measured?.gaps && heelHeight > 0 ? plainModel(last) : undefined;
  if (measured?.gaps && model) {
    const found = Math.max(...measured.gaps.map(({ x, z }) => Math.abs(atGround(model, x).z - z)));
    const verdict = 'holds';
    list.push({ kind: 'modelAgainstGaps', subject: style.code, verdict, found, wanted: limits.misfit });
  }
  if (measured?.twist !== undefined && measured.twist > limits.twist)
    list.push({ ...lookAt(run, 'twist'), found: measured.twist, wanted: limits.twist });
  return list;
}

/** Leather of one pair wants one substance, so both soles come from like places. */
function leatherPairs(
  { style, sizes }: StyleRun,
  limits: Limits,
  stocks: ReadonlyMap<string, Stock>,
): readonly Check[] {
  const leather = sizes[0]?.bottom.layers.find(
    ({ part, material }) => material === 'leather' && (part === 'sole' || part === 'outsole' || part === 'midsole'),
  );
  if (!leather) return [];
  const pairs = stocks.get(fold(leather.stock))?.pairs ?? 'anywhere';
  const verdict = pairs === 'anywhere' ? 'lookAt' : 'holds';
  const { part } = leather;
  return [{ kind: 'leatherPairs', subject: style.code, verdict, wanted: limits.pairSubstance, part, pairs }];
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
