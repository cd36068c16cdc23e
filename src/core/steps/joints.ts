import { itemAt, itemRound } from '../item-at';
import type { Layer } from '../bottom/layer';
import type { Assembly, Wrapped } from './assembly';
import { coverJoint, type Margin, margins, underMargins } from './covering';
import { areaOf, overlap } from './operation';
import type { Face, Joint, Side, Zone } from './step';

const LASTED = 'lasted';
type Body = Layer | typeof LASTED;

function face(of: Body, side: Side, zone: Zone | undefined, size: number): Face {
  return of === LASTED ? { side, zone, area: size } : { piece: of, side, zone, area: size };
}

/** All joints of a bottom but the sewn one of its welt: those off the last first, then those on it from the last downward. */
export function jointsOf(assembly: Assembly): readonly Joint[] {
  const { style, covers } = assembly;
  const bare = onWelt(
    assembly,
    style.raise === 'none'
      ? slabJoints(assembly)
      : style.raise === 'wedge'
        ? wedgeJoints(assembly)
        : heelJoints(assembly),
  );
  return covers.reduce((joints, one) => withCover(assembly, one, joints), bare);
}

/** Joints with that of a cover, whose margins lie in some of them. */
function withCover(assembly: Assembly, wrapped: Wrapped, bare: readonly Joint[]): readonly Joint[] {
  const { style, apart } = assembly;
  const { cover, strip, covered } = wrapped;
  const off = overlap(apart, covered);
  const { over, under } = margins(covered, strip, style);
  const isCovered = ({ piece }: Face) => piece !== undefined && covered.includes(piece);
  const shared = style.raise === 'heel' && covered.some(({ part }) => part === 'platform');
  const lain: Face[] = [];
  /** Faces of which those that are covered bear the cover's margin, whose grain meets what lies on it. */
  const margined = (faces: readonly Face[], zone: Margin, size: number): readonly Face[] => {
    const own = faces.filter(isCovered);
    const { lain: here, left } = underMargins(own, zone, size);
    const beneath = shared ? own[0]?.zone : undefined;
    lain.push(...here);
    return [
      ...faces.filter((one) => !isCovered(one)),
      ...left,
      { piece: cover, side: 'grain', zone, beneath, area: size },
    ];
  };
  const metBy = (joint: Joint) =>
    joint.apart || joint.below.some(isCovered)
      ? 0
      : areaOfFaces(joint.above.filter((one) => one.side === 'lower' && isCovered(one)));
  const met = bare.reduce((sum, joint) => sum + metBy(joint), 0);
  const low = itemRound(covered, -1);
  // Heel and outsole share the margin under a platform, and where there is no outsole the rest is walked on.
  const whole = shared ? Math.max(met, areaOf(low)) : met;
  const joints = bare.map((joint): Joint => {
    if (joint.apart) return joint;
    const onTop = off && joint.brings.some((piece) => covered.includes(piece));
    const size = metBy(joint);
    const inside = joint.above.some((one) => one.side === 'breast' && isCovered(one));
    return {
      ...joint,
      brings: onTop ? [...joint.brings, cover] : joint.brings,
      below: onTop ? margined(joint.below, 'over', over) : joint.below,
      above:
        size > 0
          ? margined(joint.above, 'under', (under * size) / whole)
          : inside
            ? margined(joint.above, 'in', turnedIn(assembly, joint))
            : joint.above,
    };
  });
  const rest = whole > 0 ? (under * (whole - met)) / whole : under;
  if (rest > 1e-6) lain.push({ piece: low, side: 'lower', zone: 'under', area: rest });
  return [...joints, coverJoint(covered, cover, strip, lain, off)];
}

function areaOfFaces(faces: readonly Face[]): number {
  return faces.reduce((sum, { area }) => sum + area, 0);
}

/** What of the ends of a heel's cover lies on its breast: each as wide as it is turned under, not more than nine tenths, mm². */
function turnedIn({ style, flapped }: Assembly, { above }: Joint): number {
  const breast = areaOfFaces(above.filter(({ side }) => side === 'breast'));
  const height = (flapped?.flap?.length ?? 0) - style.breastAllowance;
  return Math.min(0.9 * breast, 2 * style.turnUnder * Math.max(0, height));
}

/**
 * What lies on the lasted bottom of a welted shoe lies on the welt's flesh too: what goes beyond the last's edge, as far as
 * the welt reaches; of a welt that ends at the seat none of the seat (derived).
 */
function onWelt({ welt, openSeat, bottom }: Assembly, joints: readonly Joint[]): readonly Joint[] {
  if (!welt) return joints;
  const isLasted = ({ piece }: Face) => !piece;
  const lasted = joints.flatMap(({ above }) => above.filter(isLasted));
  const along = ({ zone }: Face) => !(openSeat && zone === 'seat');
  const beyond = Math.max(0, areaOfFaces(lasted) - areaOf({ ring: bottom.last.outline }));
  const whole = areaOfFaces(lasted.filter(along));
  const share = whole > 0 ? Math.min(0.9, Math.min(areaOf(welt), beyond) / whole) : 0;
  if (share === 0) return joints;
  return joints.map((joint): Joint => ({
    ...joint,
    above: joint.above.flatMap((one): readonly Face[] => {
      if (!isLasted(one) || !along(one)) return [one];
      return [
        { ...one, area: one.area * (1 - share) },
        { piece: welt, side: 'lower', zone: one.zone, area: one.area * share },
      ];
    }),
  }));
}

/** Area of the tops of a stack of lifts together, which is what its longest lift covers, mm². */
function topOf(lifts: readonly Layer[]): number {
  return Math.max(0, ...lifts.map(areaOf));
}

/**
 * What of each lift's upper face meets what lies over the stack: the rest is under the next lift. Of lifts that are bent on
 * it is the lower face.
 */
function tops(lifts: readonly Layer[]): readonly Face[] {
  return lifts.map((lift, i) => {
    const over = lifts[i - 1];
    return face(lift, 'upper', 'top', Math.max(0, areaOf(lift) - (over ? areaOf(over) : 0)));
  });
}

/** The joints between neighbours of a pile. */
function between(pile: readonly Layer[], zone: Zone | undefined, apart: boolean): Joint | undefined {
  if (pile.length < 2) return undefined;
  const common = (i: number) => Math.min(areaOf(itemAt(pile, i)), areaOf(itemAt(pile, i + 1)));
  return {
    above: pile.slice(0, -1).map((layer, i) => face(layer, 'lower', zone, common(i))),
    below: pile.slice(1).map((layer, i) => face(layer, 'upper', zone, common(i))),
    adds: pile.slice(1),
    brings: apart ? [] : pile.slice(1),
    apart,
  };
}

/** One piece after the other against what is on the last. */
function onLast(first: Body, pile: readonly Layer[], zone?: Zone): readonly Joint[] {
  return pile.map((layer, i): Joint => {
    const size = areaOf(layer);
    return {
      above: [face(pile[i - 1] ?? first, 'lower', zone, size)],
      below: [face(layer, 'upper', zone, size)],
      adds: [layer],
      brings: [layer],
      apart: false,
    };
  });
}

function some<T>(...list: readonly (T | undefined)[]): readonly T[] {
  return list.filter((one) => one !== undefined);
}

function slabJoints({ following, apart }: Assembly): readonly Joint[] {
  const first = following.findIndex((layer) => layer === apart[0]);
  const over = first < 0 ? following : following.slice(0, first);
  const [top] = apart;
  const lowest = over.at(-1) ?? LASTED;
  if (!top) return onLast(LASTED, over);
  const outsole = apart.length > 1 && apart.at(-1)?.part === 'outsole' ? apart.at(-1) : undefined;
  const slab = outsole ? apart.slice(0, -1) : apart;
  const under = following.slice(first + apart.length);
  return [
    ...some(between(slab, undefined, true)),
    ...(outsole ? some(between([itemRound(slab, -1), outsole], undefined, true)) : []),
    ...onLast(LASTED, over),
    {
      above: [face(lowest, 'lower', undefined, areaOf(top))],
      below: [face(top, 'upper', undefined, areaOf(top))],
      adds: [top],
      brings: apart,
      apart: false,
    },
    ...onLast(itemRound(apart, -1), under),
  ];
}

function wedgeJoints(assembly: Assembly): readonly Joint[] {
  return assembly.apart.length === 0 ? bentWedgeJoints(assembly) : flatWedgeJoints(assembly);
}

/** Layers bent on one by one, then what lies flat under all of them. */
function bentWedgeJoints({ following, lifts, flat }: Assembly): readonly Joint[] {
  const lowest = following.at(-1) ?? LASTED;
  const wedge = topOf(lifts);
  const [upper, ...others] = lifts;
  const [first, ...rest] = flat;
  return [
    ...onLast(LASTED, following),
    ...(upper
      ? [
          {
            above: [face(lowest, 'lower', 'seat', areaOf(upper))],
            below: [face(upper, 'upper', undefined, areaOf(upper))],
            adds: [upper],
            brings: [upper],
            apart: false,
          },
          ...onLast(upper, others, 'stack'),
        ]
      : []),
    // Levelled, all the bent layers show in the ground face.
    ...(first
      ? [
          underBoth(
            first,
            lowest,
            wedge,
            lifts.map((lift) => face(lift, 'lower', 'top', wedge / lifts.length)),
          ),
          ...onLast(first, rest),
        ]
      : []),
  ];
}

/** Lifts and platform joined off the last, put on it as one, and the outsole under them. */
function flatWedgeJoints({ following, lifts, flat, apart }: Assembly): readonly Joint[] {
  const lowest = following.at(-1) ?? LASTED;
  const wedge = topOf(lifts);
  const platforms = flat.filter(({ part }) => part === 'platform');
  const [platform] = platforms;
  const outsole = flat.find(({ part }) => part === 'outsole');
  const ground = itemRound(lifts, -1);
  // A block that goes on under the tread lies under the whole of what is over it.
  const whole = ground.underTread;
  const up: Joint = {
    above: [
      face(lowest, 'lower', whole ? undefined : 'seat', wedge),
      ...(platform ? [face(lowest, 'lower', 'forepart', beforeWedge(platform, wedge))] : []),
    ],
    below: [...tops(lifts), ...(platform ? [face(platform, 'upper', 'forepart', beforeWedge(platform, wedge))] : [])],
    adds: [itemAt(lifts, 0)],
    brings: apart,
    apart: false,
  };
  const low = platforms.at(-1);
  return [
    ...some(between(lifts, 'stack', true), platformJoint(ground, platforms, wedge)),
    ...onLast(LASTED, following),
    up,
    ...(outsole
      ? low || whole
        ? onLast(low ?? ground, [outsole])
        : [underBoth(outsole, lowest, wedge, [face(ground, 'lower', undefined, wedge)])]
      : []),
  ];
}

/** The platforms joined to one another and to the lifts above them. */
function platformJoint(ground: Layer, platforms: readonly Layer[], wedge: number): Joint | undefined {
  const [platform] = platforms;
  if (!platform) return undefined;
  const pile = between(platforms, undefined, true);
  return {
    above: [face(ground, 'lower', undefined, wedge), ...(pile?.above ?? [])],
    below: [face(platform, 'upper', 'seat', wedge), ...(pile?.below ?? [])],
    adds: platforms,
    brings: [],
    apart: true,
  };
}

/** What of a layer lies before a wedge, mm². */
function beforeWedge(layer: Layer, wedge: number): number {
  return Math.max(0, areaOf(layer) - wedge);
}

/** A piece under wedge and forepart at once. @param seats ground faces of the wedge */
function underBoth(layer: Layer, lowest: Body, wedge: number, seats: readonly Face[]): Joint {
  const forepart = beforeWedge(layer, wedge);
  return {
    above: [...seats, face(lowest, 'lower', 'forepart', forepart)],
    below: [face(layer, 'upper', 'seat', wedge), face(layer, 'upper', 'forepart', forepart)],
    adds: [layer],
    brings: [layer],
    apart: false,
  };
}

function heelJoints({ following, lifts, topPiece, apart, flapped, stitched }: Assembly): readonly Joint[] {
  const full = following.filter(({ underSeat }) => underSeat);
  const seat = full.at(-1) ?? LASTED;
  const joints: Joint[] = [];
  let lowest: Body = LASTED;
  let breast: Joint | undefined;
  let afterHeel: Joint[] = [];
  for (const layer of following) {
    const flap = layer === flapped ? flapOf(layer, lifts) : undefined;
    const size = areaOf(layer) - (flap ? flapArea(layer) : 0);
    const zone = layer.underSeat ? undefined : ('forepart' as const);
    const joint: Joint = {
      above: [face(lowest, 'lower', zone, size)],
      below: [face(layer, 'upper', zone, size)],
      adds: [layer],
      brings: [layer],
      apart: false,
    };
    lowest = layer;
    if (!flap) {
      // What lies on a sole down the breast waits for it.
      if (afterHeel.length > 0) afterHeel.push(joint);
      else joints.push(joint);
      continue;
    }
    if (stitched.includes(layer)) {
      // Its forepart is stitched before the heel is built; the flap hangs loose until then.
      joints.push(joint);
      breast = { ...flap, adds: [], brings: [], apart: false };
    } else {
      afterHeel = [{ ...joint, above: [...joint.above, ...flap.above], below: [...joint.below, ...flap.below] }];
    }
  }
  const heel = heelOn(seat, lifts, apart);
  const ground = lifts.at(-1);
  return [
    ...heel.filter(({ apart: off }) => off),
    ...joints,
    ...heel.filter(({ apart: off }) => !off),
    ...some(breast),
    ...afterHeel,
    ...(topPiece && ground ? onLast(ground, [topPiece]) : []),
  ];
}

/** The lifts of a heel: one by one against the seat, or joined to one another and then to it. */
function heelOn(seat: Body, lifts: readonly Layer[], apart: readonly Layer[]): readonly Joint[] {
  const [top] = lifts;
  if (!top) return [];
  if (apart.length === 0) {
    return lifts.map((lift, i): Joint => {
      const size = Math.min(areaOf(lift), areaOf(lifts[i - 1] ?? lift));
      // What a lift reaches further than the one above it meets the seat.
      const rest = areaOf(lift) - (lifts[i - 1] ? size : 0);
      return {
        above: [
          ...(lifts[i - 1] ? [face(itemAt(lifts, i - 1), 'lower', undefined, size)] : []),
          ...(rest > 1e-6 ? [face(seat, 'lower', 'seat', rest)] : []),
        ],
        below: [face(lift, 'upper', undefined, areaOf(lift))],
        adds: [lift],
        brings: [lift],
        apart: false,
      };
    });
  }
  return [
    ...some(between(lifts, 'stack', true)),
    {
      above: [face(seat, 'lower', 'seat', topOf(lifts))],
      below: tops(lifts),
      adds: [top],
      brings: apart,
      apart: false,
    },
  ];
}

/** Where the flap of a sole lies on the heel's breast. */
function flapOf(sole: Layer, lifts: readonly Layer[]): Pick<Joint, 'above' | 'below'> {
  const size = flapArea(sole);
  return {
    above: lifts.map((lift) => face(lift, 'breast', undefined, size / lifts.length)),
    below: [face(sole, 'upper', 'flap', size)],
  };
}

/** What of a sole down the breast lies on the breast, and with its tab on the heel's ground face, mm². */
function flapArea({ flap }: Layer): number {
  return flap ? flap.width * flap.length + flap.tabWidth * flap.tabLength : 0;
}
