import { holdsNails } from '../../steps/fixing';
import type { Limits } from '../limits';
import type { StyleRun } from '../runs';
import type { Check } from './check';
import { heelControl } from './heel-control';
import { layersOf, worst } from './worst';

export function heightChecks({ style, sizes }: StyleRun, limits: Limits): readonly Check[] {
  const subject = style.code;
  const [first] = sizes;
  if (!first) return [];
  const { seatStack: seat, treadStack: tread, last, lifts, platform } = first.bottom;
  const { found, wanted, holds } = heelControl(first.bottom, limits);
  const list: Check[] = [
    { kind: 'heelControl', subject, verdict: holds ? 'holds' : 'putRight', found, wanted, seat, tread },
  ];
  for (const [part, mix] of [
    ['lift', lifts],
    ['platform', platform],
  ] as const) {
    if (!mix || mix.rasped <= 0) continue;
    const { rasped, built } = mix;
    list.push({ kind: 'rasping', subject, verdict: 'holds', found: rasped, wanted: style.rasping, part, built });
  }
  if (seat > limits.highBuild) {
    list.push({ kind: 'highBuild', subject, verdict: 'lookAt', found: seat, wanted: limits.highBuild });
  }
  const proudest = worst(layersOf(sizes), ({ lift }) => lift?.proud ?? 0);
  if (proudest?.lift && proudest.lift.proud > 0.05) {
    const { proud } = proudest.lift;
    const verdict = proud > limits.proud ? 'lookAt' : 'holds';
    list.push({ kind: 'proud', subject, verdict, found: proud, wanted: limits.proud, item: proudest.item });
  }
  if (last.heelHeight >= limits.shank && !style.shank && style.raise !== 'wedge') {
    list.push({ kind: 'shank', subject, verdict: 'lookAt', found: last.heelHeight, wanted: limits.shank });
  }
  // The highest size decides; what holds a nail in one holds it in all.
  const highest = Math.max(...sizes.map(({ bottom }) => bottom.last.heelHeight));
  const soft = first.bottom.layers.find((layer) => layer.part === 'lift' && !holdsNails(layer));
  if (style.raise === 'heel' && soft && style.heelCore === 'none' && highest >= limits.heelFixing) {
    const { material } = soft;
    list.push({ kind: 'heelHold', subject, verdict: 'putRight', found: highest, wanted: limits.heelFixing, material });
  }
  return list;
}
