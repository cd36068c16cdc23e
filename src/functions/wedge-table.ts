import type { BentLayer } from '../core/bottom/bent-layers';
import type { WedgeLift } from '../core/bottom/wedge';

/** Bent layers of a wedge, from the last downward. */
export function bentTable(layers: readonly BentLayer[]): (string | number)[][] {
  return [
    ['No.', 'Thick\nmm', 'Length along\nmm', 'Length flat\nmm', 'Skive\nmm', 'Angle\n°', 'Upright\nmm'],
    ...layers.map((layer) => [
      layer.number,
      layer.thickness,
      layer.front,
      layer.groundFront,
      layer.skiveWidth,
      layer.skiveAngle,
      layer.upright,
    ]),
  ];
}

/** Flat lifts of a wedge, from the ground up. */
export function liftTable(lifts: readonly WedgeLift[]): (string | number)[][] {
  return [
    ['No.', 'Thick\nmm', 'From\nmm', 'To\nmm', 'Length\nmm', 'Skive\nmm', 'Angle\n°', 'Skive to\nmm', 'Proud\nmm'],
    ...lifts.map((lift) => [
      lift.number,
      lift.thickness,
      lift.from,
      lift.to,
      lift.front,
      lift.skiveWidth,
      lift.skiveAngle,
      lift.edge,
      lift.proud,
    ]),
  ];
}
