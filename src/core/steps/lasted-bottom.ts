import type { Assembly } from './assembly';
import { faceOf, operation } from './operation';
import type { Act, Face, Operation } from './step';

/** The lower face of the lasted bottom. */
const LASTED: Face = { side: 'lower', area: 0 };

/** Cutting and skiving, each piece by itself. */
export function piecesReady({ bottom, flapped }: Assembly): readonly Operation[] {
  return [
    ...bottom.layers.map((layer) => operation('prepare', ['cut'], [layer])),
    ...bottom.layers.flatMap((layer): readonly Operation[] => {
      const { skive } = layer;
      return [
        ...(skive
          ? [
              operation('skive', [skive.at === 'front' ? 'skive front' : 'skive edge'], [layer], {
                faces: [faceOf(layer, skive.face)],
              }),
            ]
          : []),
        ...(layer === flapped
          ? [operation('skive', ['skive flap'], [layer], { faces: [faceOf(layer, 'upper', 'flap')] })]
          : []),
      ];
    }),
  ];
}

/** The insole on the last, the upper lasted over it, the welt sewn to it. */
export function lasting({ insole, welt }: Assembly): readonly Operation[] {
  return [
    ...(insole
      ? [
          operation('prepare', insole.material === 'leather' ? ['soak', 'block insole', 'dry'] : ['block insole'], [
            insole,
          ]),
          ...(welt ? [operation('prepare', ['cut holdfast'], [insole])] : []),
          operation('prepare', ['last upper'], [insole]),
        ]
      : []),
    ...(welt
      ? [
          operation('skive', ['skive ends'], [welt]),
          operation('sew', ['sew welt'], [welt]),
          operation('trim', ['trim seam', 'beat welt'], [welt]),
        ]
      : []),
  ];
}

/** What is under the lasted upper made ready: its margin, shank, what an open seat is packed with, filler. */
export function lastedBottom({ style, welt, openSeat }: Assembly): readonly Operation[] {
  // A bare sandal has no margin under its insole, and so no hollow between.
  const cavity = welt !== undefined || style.lastedSubstance > 0;
  // The margin along a welt is trimmed with its seam.
  const margin = cavity && (!welt || openSeat);
  const faces = welt ? [LASTED, { piece: welt, side: 'lower' as const, area: 0 }] : [LASTED];
  const laidIn = [
    ...(style.shank ? [operation('fix', ['fit shank'])] : []),
    ...(openSeat ? [operation('prepare', ['pack seat'])] : []),
    ...(cavity ? [operation('prepare', ['fill cavity'])] : []),
  ];
  const ready: readonly Act[] = [...(margin ? (['trim margin', 'pare pleats'] as const) : []), 'roughen'];
  if (laidIn.length === 0) return [operation('prepare', [...ready, 'dust'], [], { faces })];
  // What is laid in leaves dust and crumbs.
  return [
    operation('prepare', ready, [], { faces }),
    ...laidIn,
    operation('prepare', ['dust'], [], { faces: [LASTED] }),
  ];
}
