import type { Adhesive } from '../bottom/style';
import type { Material } from '../stock/stock';

/** How an adhesive is usually used; makers' sheets go before all of it. Minutes, °C. */
export interface UsualTimes {
  /** Coats of a face: of absorbent ones, of which the first is thin, and of others. */
  readonly absorbent: number;
  readonly coats: number;
  /** A coat to its being just tacky. */
  readonly flashOff: number;
  /** From there to where its film no longer takes. */
  readonly open: number;
  readonly pressed: number;
  /** From pressing to rasping and sanding. */
  readonly cure: number;
  readonly warm: { readonly least: number; readonly most: number };
  /** Whether it is joined by heat always, or only past its open time. */
  readonly byHeat: boolean;
}

/** Through the night. */
const OVERNIGHT = 12 * 60;

/**
 * Usual times (common practice, where nothing else stands beside them): makers' sheets for shoe adhesives, notes of a
 * repair trade's bonding class, bespoke makers' own pages.
 */
export const USUAL_TIMES: Readonly<Record<Adhesive, UsualTimes>> = {
  polychloroprene: {
    // A maker's sheet for shoes: two coats on absorbent faces, the first as a primer; 10 minutes; open for 20.
    absorbent: 2,
    coats: 1,
    flashOff: 10,
    open: 20,
    // from memory: 10 to 15 seconds at 0.3 to 0.4 MPa, or hammered all over
    pressed: 0.25,
    // A repair trade's bonding class: 45 minutes to sanding, better overnight.
    cure: 45,
    // from memory
    warm: { least: 70, most: 90 },
    byHeat: false,
  },
  polyurethane: {
    // from memory: one to two coats, 15 to 30 minutes
    absorbent: 2,
    coats: 1,
    flashOff: 20,
    // A maker's sheet: 3 to 7 minutes; 30 to 90 seconds at 0.3 to 0.5 MPa.
    open: 5,
    pressed: 1,
    cure: OVERNIGHT,
    // from memory
    warm: { least: 60, most: 80 },
    byHeat: true,
  },
  'water-based': {
    absorbent: 2,
    coats: 1,
    // A maker's sheet: 45 to 60 minutes; with its hardener it lives for two hours.
    flashOff: 50,
    open: 120,
    pressed: 1,
    cure: OVERNIGHT,
    // from memory
    warm: { least: 55, most: 65 },
    byHeat: true,
  },
  'hot melt': {
    absorbent: 1,
    coats: 1,
    flashOff: 0,
    // A maker's page: about 15 seconds; held until it is cold, from memory.
    open: 0.25,
    pressed: 1,
    cure: 10,
    // A maker's sheet: it melts at 110 to 140 °C.
    warm: { least: 110, most: 140 },
    byHeat: true,
  },
};

/** Faces that drink a first coat up. */
export const ABSORBENT: ReadonlySet<Material> = new Set<Material>(['leather', 'cork', 'board', 'fabric']);

/** Waits that are the bench's own, minutes: a steel shank sets (Bespoke Shoes Unlaced, 2010), others common practice. */
export const USUAL_WAITS = { Shank: 10, Mellowing: OVERNIGHT, Drying: OVERNIGHT, Cooling: 10 } as const;

/** Waits that the maker may time, as they stand in the column Item. */
export const WAIT_ITEMS = ['Flash-off', 'Cure', 'Mellowing', 'Drying', 'Cooling', 'Shank'] as const;
export type WaitItem = (typeof WAIT_ITEMS)[number];
