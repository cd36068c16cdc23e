import type { Layer } from '../bottom/layer';
import type { SkiveThen } from '../bottom/skive-then';
import type { Fixing } from './fixing';

/** What a step is, as the bench calls it. */
export const STEP_KINDS = [
  'prepare',
  'skive',
  'bend',
  'cement',
  'wait',
  'join',
  'press',
  'saw',
  'rasp',
  'cover',
  'sew',
  'fix',
  'trim',
  'finish',
  'check',
] as const;
export type StepKind = (typeof STEP_KINDS)[number];

/** What is done in a step, one movement of the hand after the other. */
export type Act =
  // Pieces
  | 'cut'
  | 'skive front'
  | 'skive edge'
  | 'skive flap'
  | 'skive margins'
  | 'skive ends'
  // The lasted bottom
  | 'block insole'
  | 'cut holdfast'
  | 'last upper'
  | 'sew welt'
  | 'trim seam'
  | 'beat welt'
  | 'pack seat'
  | 'trim margin'
  | 'fit shank'
  | 'fill cavity'
  // Faces
  | 'roughen'
  | 'degrease'
  | 'prime'
  | 'dust'
  | 'fill margins'
  // Bending
  | 'soak'
  | 'mellow'
  | 'beat'
  | 'warm'
  | 'damp'
  | 'bend'
  // Joining
  | 'coat'
  | 'paste'
  | 'join'
  | 'pad'
  | 'press'
  // Waiting
  | 'cool'
  | 'dry'
  | 'cure'
  | 'cure core'
  // Shaping what is joined
  | 'level'
  | 'thin'
  | 'saw'
  | 'rasp to last'
  | 'grind toe'
  | 'rasp edge'
  | 'bore core'
  | 'glue core'
  // Covering
  | 'fold edge'
  | 'close seam'
  | 'pare pleats'
  | 'turn over'
  | 'turn under'
  | 'turn in'
  // Sewing a sole on
  | 'trim round'
  | 'open channel'
  | 'stitch'
  | 'hammer seam'
  | 'close channel'
  // Heels
  | 'nail seat'
  | 'lay rand'
  | 'nail'
  | 'punch under'
  | 'trim lift'
  | 'peen'
  | 'skive level'
  | 'nail from inside'
  | 'screw from inside'
  | 'cut breast'
  | 'turn tab'
  // Checks and the end
  | 'try on last'
  | 'try on ground'
  | 'trim edge'
  | 'check height'
  | 'check stand'
  | 'check pair'
  | 'sand edge'
  | 'ink'
  | 'iron and wax'
  | 'seal'
  | 'last out'
  | 'filler last in'
  | 'filler last out'
  | 'sock';

/** A side of a piece as it lies in the shoe; of a cover, a side of its strip. */
export type Side = 'upper' | 'lower' | 'edge' | 'breast' | 'flesh' | 'grain';

/**
 * A part of a side: under the lifts or before them; between lifts, or their tops that meet what lies over the wedge; of a
 * cover what is turned over, under and in on to the breast, and of what it covers where that lies; of a sole down the breast the flap on the breast and the tab on the heel's ground.
 */
export type Zone = 'seat' | 'forepart' | 'stack' | 'top' | 'over' | 'under' | 'in' | 'flap' | 'tab';

/** A face that is worked on. */
export interface Face {
  /** Whose it is; without it, the lasted bottom's. */
  readonly piece?: Layer | undefined;
  readonly side: Side;
  /** Without it, the whole side. */
  readonly zone?: Zone | undefined;
  /** Of a margin that heel and forepart lie on: what of it is under which. */
  readonly beneath?: Zone | undefined;
  /** Whether it is what turned margins leave free. */
  readonly within?: boolean | undefined;
  /** mm² of one foot */
  readonly area: number;
}

/** Faces that are brought together in one go. */
export interface Joint {
  readonly above: readonly Face[];
  readonly below: readonly Face[];
  /** Pieces that this joint adds to what lies above. */
  readonly adds: readonly Layer[];
  /** Pieces that are on the last with it: what it adds, and all that was joined to that before. */
  readonly brings: readonly Layer[];
  /** Whether it is made off the last. */
  readonly apart: boolean;
}

/** One operation of the bench, as the construction asks for it: what is done, to what. */
export interface Operation {
  readonly kind: StepKind;
  readonly acts: readonly Act[];
  /** Pieces that it is done to, from the last downward; a step without any is done to the lasted bottom or the whole shoe. */
  readonly pieces: readonly Layer[];
  readonly faces: readonly Face[];
  /** The joint that it is part of. */
  readonly joint?: Joint | undefined;
  /** Faces that adhesive is brushed on. */
  readonly coated?: readonly Face[] | undefined;
  /** Whether it is done to all that is joined. */
  readonly whole?: boolean | undefined;
  /** The lifts of the heel that it waits for or prepares, where it is not done to them. */
  readonly onHeel?: readonly Layer[] | undefined;
  /** Whether it is done off the last; else on it, or to single pieces. */
  readonly apart?: boolean | undefined;
  readonly fixing?: Fixing | undefined;
}

/** What can hurt somebody in a step. */
export type Care = 'vapour' | 'dust' | 'blade' | 'heat' | 'machine' | 'high build';

/** What to look for when a step is done. */
export type Look =
  | 'no gap'
  | 'tacky'
  | 'level'
  | 'to the last'
  | 'flush'
  | 'square'
  | 'firm'
  | 'nail tips'
  | 'height'
  | 'stand'
  | 'pair'
  | 'even width'
  | 'no spring'
  | 'margins flat';

/** A piece in a stack, with what it adds to the height there, mm. */
export interface HeightPart {
  readonly piece: Layer;
  readonly adds: number;
}

/**
 * Heights after a step of what is joined: off the last from its ground face up, on it from the feather edge down, mm; with
 * the pieces that make them up, from the ground up, and what the welt adds, under the seat also where it ends there and the seat is packed level with it.
 */
export interface HeightAfter {
  readonly back?: number | undefined;
  /** Of a heel: a wedge has no breast. */
  readonly breast?: number | undefined;
  readonly tread?: number | undefined;
  readonly welt?: Readonly<Partial<Record<'back' | 'tread', number>>> | undefined;
  readonly parts: Readonly<Record<'back' | 'breast' | 'tread', readonly HeightPart[]>>;
}

/** A value with whether it is the maker's own or what is usual (common practice). */
export interface Told {
  readonly value: number;
  readonly usual: boolean;
}

/** One step at the bench. */
export interface Step extends Operation {
  /** From 1. */
  readonly number: number;
  /** Coats of each coated face, in their order. */
  readonly coats: readonly number[];
  /** Whether some of them are usual ones (common practice), not the maker's own. */
  readonly usualCoats: boolean;
  /** Minutes from coating to joining, in the press, and until the next step. */
  readonly open?: Told | undefined;
  readonly pressed?: Told | undefined;
  readonly wait?: Told | undefined;
  /** °C to which dried films are warmed, where they are joined later or by heat. */
  readonly warm?: { readonly least: number; readonly most: number; readonly usual: boolean } | undefined;
  /** Of one pair. */
  readonly minutes: number;
  /** Of one pair, ml; undefined where no coverage is given. */
  readonly adhesive: number | undefined;
  readonly height?: HeightAfter | undefined;
  /** Thickness that is left of the lowest piece, mm, where it is rasped or sawn. */
  readonly left?: number | undefined;
  readonly skive?: SkiveThen | undefined;
  /** Width over all once an edge is rasped as one, mm. */
  readonly width?: number | undefined;
  readonly looks: readonly Look[];
  readonly cares: readonly Care[];
}
