import { mostRasping } from '../../bottom/allowances';
import { RASPED } from '../../bottom/layer-mix';
import { builtThickness, type Layer } from '../../bottom/layer';
import { holdsNails } from '../../steps/fixing';
import type { Stock } from '../../stock/stock';
import { fold } from '../codes';
import type { Limits } from '../limits';
import type { StyleRun } from '../runs';
import type { Check } from './check';
import { heelControl } from './heel-control';
import { leftLying } from './left-lying';
import { mixLeaps } from './mix-leaps';
import { standingChecks } from './standing';
import { worstSize } from './worst';

type Stocks = ReadonlyMap<string, Stock>;

/** Heights in all sizes of a style, the worst told with its size where the sizes differ. */
export function heightChecks(run: StyleRun, limits: Limits, stocks: Stocks): readonly Check[] {
  return [
    ...controlled(run, limits),
    ...rasped(run, stocks),
    ...mixLeaps(run, stocks),
    ...leftLying(run, stocks),
    ...high(run, limits),
    ...proud(run, limits),
    ...standingChecks(run, limits),
    ...waist(run, limits),
    ...fixed(run, limits),
  ];
}

function controlled({ style, sizes }: StyleRun, limits: Limits): readonly Check[] {
  const off = worstSize(sizes, ({ bottom }) => {
    const { found, wanted } = heelControl(bottom, limits);
    return Math.abs(found - wanted);
  });
  if (!off) return [];
  const { bottom } = off.sizeRun;
  const { found, wanted, holds } = heelControl(bottom, limits);
  const { seatStack: seat, treadStack: tread } = bottom;
  const verdict = holds ? 'holds' : 'putRight';
  return [{ kind: 'heelControl', subject: style.code, verdict, found, wanted, seat, tread, size: off.size }];
}

/** Where more goes than is rasped, a larger share of a piece than this is worth a look (planning aid). */
const MUCH_OF_A_PIECE = 1 / 3;

function rasped({ style, sizes }: StyleRun, stocks: Stocks): readonly Check[] {
  return (['lift', 'platform'] as const).flatMap((part): readonly Check[] => {
    const codes = part === 'lift' ? style.lifts : style.platform;
    const mixOf = ({ bottom }: StyleRun['sizes'][number]) => (part === 'lift' ? bottom.lifts : bottom.platform);
    const most = worstSize(sizes, (size) => mixOf(size)?.rasped);
    const mix = most && mixOf(most.sizeRun);
    const piece = most?.sizeRun.bottom.layers.find((layer) => layer.part === part && layer.rasped);
    if (!mix || mix.rasped <= 0 || !piece) return [];
    const share = (piece.rasped ?? 0) / piece.thickness;
    const much = mix.rasped > RASPED && share > MUCH_OF_A_PIECE ? { stock: piece.stock, share } : undefined;
    const offered = codes.flatMap((code) => stocks.get(fold(code)) ?? []);
    return [
      {
        kind: 'rasping',
        subject: style.code,
        verdict: much ? 'lookAt' : 'holds',
        found: mix.rasped,
        wanted: mostRasping(style, offered),
        part,
        built: mix.built,
        item: piece.item,
        left: builtThickness(piece),
        sawn: piece.sawn === true,
        much,
        size: most.size,
      },
    ];
  });
}

function high({ style, sizes }: StyleRun, limits: Limits): readonly Check[] {
  const highest = worstSize(sizes, ({ bottom }) => bottom.seatStack);
  const found = highest?.sizeRun.bottom.seatStack ?? 0;
  if (found <= limits.highBuild) return [];
  const wanted = limits.highBuild;
  return [{ kind: 'highBuild', subject: style.code, verdict: 'lookAt', found, wanted, size: highest?.size }];
}

function proud({ style, sizes }: StyleRun, limits: Limits): readonly Check[] {
  const proudOf = (layers: readonly Layer[]) => Math.max(0, ...layers.map(({ lift }) => lift?.proud ?? 0));
  const proudest = worstSize(sizes, ({ bottom }) => proudOf(bottom.layers));
  const layers = proudest?.sizeRun.bottom.layers ?? [];
  const found = proudOf(layers);
  const item = layers.find(({ lift }) => lift?.proud === found)?.item;
  if (found <= 0.05 || item === undefined) return [];
  const verdict = found > limits.proud ? 'lookAt' : 'holds';
  return [{ kind: 'proud', subject: style.code, verdict, found, wanted: limits.proud, item, size: proudest?.size }];
}

function waist({ style, sizes }: StyleRun, limits: Limits): readonly Check[] {
  const highest = worstSize(sizes, ({ bottom }) => bottom.last.heelHeight);
  const found = highest?.sizeRun.bottom.last.heelHeight ?? 0;
  if (found < limits.shank || style.shank || style.raise === 'wedge') return [];
  return [{ kind: 'shank', subject: style.code, verdict: 'lookAt', found, wanted: limits.shank, size: highest?.size }];
}

/** The highest size decides; what holds a nail in one holds it in all. */
function fixed({ style, sizes }: StyleRun, limits: Limits): readonly Check[] {
  const highest = worstSize(sizes, ({ bottom }) => bottom.last.heelHeight);
  const found = highest?.sizeRun.bottom.last.heelHeight ?? 0;
  const soft = sizes[0]?.bottom.layers.find((layer) => layer.part === 'lift' && !holdsNails(layer));
  if (style.raise !== 'heel' || !soft || style.heelCore !== 'none' || found < limits.heelFixing) return [];
  const { material } = soft;
  const wanted = limits.heelFixing;
  return [{ kind: 'heelHold', subject: style.code, verdict: 'putRight', found, wanted, material, size: highest?.size }];
}
