import { box } from '../geometry/box';
import type { Ring } from '../geometry/ring';
import { roundedRing } from '../geometry/rounded-ring';
import type { Material, Stock } from '../stock/stock';
import type { CoverPiece } from './cover-piece';

/** Kinds of pieces, from the last downward, then what goes round the edge. */
export const PARTS = ['insole', 'midsole', 'sole', 'lift', 'platform', 'outsole', 'topPiece', 'welt', 'cover'] as const;
export type Part = (typeof PARTS)[number];

/** Headings of the columns of Styles that name stock for a part. */
export const HEADINGS = {
  insole: 'Insole',
  welt: 'Welt',
  midsole: 'Midsole',
  sole: 'Sole',
  lift: 'Lifts',
  platform: 'Platform',
  outsole: 'Outsole',
  topPiece: 'Top piece',
  cover: 'Cover',
} as const satisfies Record<Part, string>;

/** What a piece is skived for, and how. */
export interface Skive {
  /** At its front, or round its edge. */
  readonly at: 'front' | 'edge';
  /** The face that it is taken off, as the piece lies in the shoe. */
  readonly face: 'upper' | 'lower';
  readonly width: number;
  /** degrees */
  readonly angle: number;
  readonly edge: number;
  /** Of an edge: how far from the back, along the outline, it begins; without it, it runs all round. */
  readonly from?: number | undefined;
}

/** The end of a sole that goes down a heel's breast, mm: the flap, and the tab at its end that the top piece holds. */
export interface Flap {
  readonly width: number;
  readonly length: number;
  readonly tabWidth: number;
  readonly tabLength: number;
}

/** One piece of a bottom, of the left foot. */
export interface Layer {
  /** Its number on ticket and pictures, from 1. */
  readonly item: number;
  readonly part: Part;
  /** Code of the sheet that it is cut from, with what of that sheet shapes the build. */
  readonly stock: string;
  readonly material: Material;
  readonly thickness: number;
  /** The outline to cut, mm; along the last for what follows the last, along the ground for what lies flat. */
  readonly ring: Ring;
  readonly length: number;
  readonly width: number;
  /** Left a side along its curved edge for rasping or rounding, mm; 0 where it is cut to its finished edge. */
  readonly rounding: number;
  readonly skive?: Skive | undefined;
  /** Seen from the side, what is taken off its front once it follows the bottom's curve, mm². */
  readonly removed?: number | undefined;
  /** Slant of its front, inside forward, degrees; without it, square to the length. */
  readonly frontSlant?: number | undefined;
  /** What is rasped off its ground face once it is built in, mm; of a block it comes off with the saw. */
  readonly rasped?: number | undefined;
  /** Whether it is of a block, which is sawn to the last as a whole. */
  readonly sawn?: boolean | undefined;
  /** What the saw takes off it, of a block that goes on under the tread, mm³. */
  readonly sawnOff?: number | undefined;
  readonly flap?: Flap | undefined;
  /** Of a cover: how it is turned. */
  readonly cover?: CoverPiece | undefined;
  /** Whether it is bent to the last's curves. */
  readonly follows: boolean;
  /** Whether it adds its thickness under the seat, and under the tread. */
  readonly underSeat: boolean;
  readonly underTread: boolean;
  /** For a flat lift: heights of its faces over the ground face of the stack and its ends along the ground, mm. */
  readonly lift?: LiftPlace | undefined;
}

/** Where a flat lift lies in its stack. */
export interface LiftPlace {
  readonly lower: number;
  readonly upper: number;
  readonly front: number;
  readonly skiveFrom: number;
  readonly proud: number;
}

/** The outline of a piece, rounded, with its length and width: those of the box about it, mm. */
export function pieceOutline(outline: Ring): Pick<Layer, 'ring' | 'length' | 'width'> {
  const ring = roundedRing(outline);
  const { left, right, bottom, top } = box(ring);
  // Later stages would search for ever on an outline that is none.
  if (!Number.isFinite(right - left + top - bottom)) throw new Error('A piece came out without an outline.');
  return { ring, length: right - left, width: top - bottom };
}

/** What is left of a piece's thickness once it is built in, mm: all that stands over the ground adds up from it. */
export function builtThickness({ thickness, rasped = 0 }: Pick<Layer, 'thickness' | 'rasped'>): number {
  return thickness - rasped;
}

/** What a layer keeps of its sheet. */
export function sheet({ code, material, thickness }: Stock): Pick<Layer, 'stock' | 'material' | 'thickness'> {
  return { stock: code, material, thickness };
}
