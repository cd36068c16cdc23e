import type { Part } from '../../bottom/layer';
import type { Pairs } from '../../cutting/sheet/matching-pairs';
import type { BendSide } from '../../last/tightest-curve';
import type { Problem } from '../../problem';
import type { StepKind } from '../../steps/step';
import type { Material } from '../../stock/stock';
import type { Help } from '../bench-days/late-orders';
import type { Rate } from '../inputs';
import type { WhyUnread } from '../unused';

/** holds: as it should be. lookAt: the maker decides. putRight: the plan does not work as it stands. */
export type Verdict = 'holds' | 'lookAt' | 'putRight';

/** A finding with what was found and what is wanted. */
interface Measured {
  readonly found: number;
  readonly wanted: number;
}

/** What is planned although the sums that stand in its table go without it. */
export interface NotSummed {
  /** The row, or the heading, that stands outside; both where a sum differs. */
  readonly row?: number | undefined;
  readonly heading?: string | undefined;
  /** Where a sum comes to something else than what was read: the two. */
  readonly found?: number | undefined;
  readonly wanted?: number | undefined;
  /** Where sums are blank beside others: their cells, of which row and heading mean the first. */
  readonly missing?: readonly { readonly row: number; readonly column: number }[] | undefined;
}

/** The size in which it is worst; undefined where all sizes are alike. */
interface InSize {
  readonly size: number | undefined;
}

/** So many layers of one thickness, mm. */
export interface MixLayers {
  readonly count: number;
  readonly thickness: number;
}

/** One finding. `subject` is the style, last, stock or table that it is about; lengths in mm, shares 0…1. */
export type Check = { readonly subject: string; readonly verdict: Verdict } & (
  | { readonly kind: 'problem'; readonly problem: Problem }
  | ({ readonly kind: 'heelControl'; readonly seat: number; readonly tread: number } & Measured & InSize)
  | ({
      readonly kind: 'rasping';
      readonly part: Part;
      readonly built: number;
      /** The piece that it comes off, and what is left of that. */
      readonly item: number;
      readonly left: number;
      /** Whether the saw takes it off, as of a block. */
      readonly sawn: boolean;
      /** Where much of that piece goes: its stock, and what share of it. */
      readonly much?: { readonly stock: string; readonly share: number } | undefined;
    } & Measured &
      InSize)
  | ({
      /**
       * A mix that has far more layers than it would have of the sheets as sold, or more than with a little more rasping: the
       * rasping allowed, and what would do.
       */
      readonly kind: 'mixLeap';
      readonly part: 'lift' | 'platform';
      readonly layers: readonly MixLayers[];
      readonly asSold: readonly MixLayers[] | undefined;
      /** With the rasping that would do. */
      readonly kept: readonly MixLayers[];
      /** The stock that allows no more; undefined where the style does not. */
      readonly stock: string | undefined;
    } & Measured &
      InSize)
  /** A sheet that is named for a part and that no size is built from; `highest` is what the others build at most, mm. */
  | {
      readonly kind: 'leftLying';
      readonly stock: string;
      readonly part: 'lift' | 'platform';
      readonly thickness: number;
      readonly highest: number;
    }
  | ({ readonly kind: 'proud'; readonly item: number } & Measured & InSize)
  | ({
      readonly kind: 'heelBase';
      readonly width: number;
      /** mm² */
      readonly area: number;
      /** Of its middle before the seat line. */
      readonly ahead: number;
      readonly height: number;
      readonly narrow: boolean;
      readonly apart: boolean;
    } & Measured &
      InSize)
  | ({ readonly kind: 'rocker'; readonly tread: number } & Measured & InSize)
  | ({
      readonly kind: 'bend';
      readonly part: Part;
      readonly side: BendSide | 'toe';
      readonly strain: number;
    } & Measured)
  /** A forepart that is ground to the toe: what is glued up flat, and what a block of it would want, mm. */
  | ({ readonly kind: 'toeGround'; readonly part: Part; readonly toeSpring: number } & Measured & InSize)
  | { readonly kind: 'tubeUnknown'; readonly part: Part; readonly strain: number; readonly found: number }
  | ({ readonly kind: 'skiveWide'; readonly item: number; readonly part: Part } & Measured)
  | { readonly kind: 'bareGround'; readonly part: Part; readonly material: Material }
  /** A platform that no cover goes round, over a covered heel. */
  | { readonly kind: 'bareEdge' }
  | ({ readonly kind: 'weltHidden' } & Measured)
  | ({ readonly kind: 'shank' } & Measured & InSize)
  | ({ readonly kind: 'heelHold'; readonly material: Material } & Measured & InSize)
  | ({ readonly kind: 'plainModel' } & Measured & InSize)
  | ({ readonly kind: 'misfit' } & Measured & InSize)
  | ({ readonly kind: 'modelAgainstGaps' } & Measured)
  | ({ readonly kind: 'twist' } & Measured)
  | ({ readonly kind: 'gapsAgainstHeel' } & Measured)
  | ({ readonly kind: 'widths'; readonly of: 'waist' | 'seat' } & Measured)
  | ({ readonly kind: 'farFromBase'; readonly size: number } & Measured)
  | { readonly kind: 'unusedPart'; readonly part: Part }
  | { readonly kind: 'unreadRate'; readonly rate: Rate; readonly why: WhyUnread }
  | ({ readonly kind: 'highBuild' } & Measured & InSize)
  /** Leather that may lie any way although soles, insoles or welts are cut from it. */
  | { readonly kind: 'leatherAnyWay'; readonly part: Part }
  | { readonly kind: 'leatherPairs'; readonly wanted: number; readonly part: Part; readonly pairs: Pairs }
  | ({ readonly kind: 'lasts'; readonly size: number } & Measured)
  | { readonly kind: 'lastsUnknown' }
  /** Working days that a pair stays on its last, as given and as the steps of a style need, with nights in between. */
  | ({ readonly kind: 'daysOnLast'; readonly style: string; readonly nights: number } & Measured & InSize)
  /** Why nobody can tell on which days orders are made. */
  | { readonly kind: 'daysUntold'; readonly problem: Problem }
  /** An order that is made after the day due, both the spreadsheet's numbers, in these sizes. */
  | ({
      readonly kind: 'late';
      readonly row: number;
      readonly customer: string | undefined;
      readonly sizes: readonly number[];
      /** What would help; undefined where that was not tried, as without hours of a day. */
      readonly helps: readonly Help[] | undefined;
      /** That the bench works in a day, as given. */
      readonly hours: number | undefined;
      /** Whether its lasts are used more than once. */
      readonly again: boolean;
    } & Measured)
  /** A day due far from the run's others, and the day that was probably meant; both the spreadsheet's numbers. */
  | {
      readonly kind: 'dueFar';
      readonly row: number;
      readonly customer: string | undefined;
      readonly day: number;
      readonly meant: number;
    }
  /** A row of Pairage that says the same as one above. */
  | { readonly kind: 'doubledRow'; readonly row: number; readonly above: number }
  /** Pairs of a style that are cut already, and all of its pairs. */
  | ({ readonly kind: 'pairsCut' } & Measured)
  /** Pairs that are cut and whose stock is in no cost, since nothing says what it cost. */
  | { readonly kind: 'stockCut'; readonly pairs: number }
  | { readonly kind: 'price' }
  /** Sheets on hand that stay whole while others of their stock are bought; the row in Offers where they are one's. */
  | {
      readonly kind: 'leftOnHand';
      readonly sheets: number;
      readonly width: number;
      readonly length: number;
      readonly bought: number;
      readonly offer: number | undefined;
    }
  | ({ readonly kind: 'measuredApart' } & Measured)
  /** A thickness in which its material is not sold, or stouter than a part is made; wanted is the nearest in which it is. */
  | ({
      readonly kind: 'thicknessFar';
      readonly material: Material;
      /** That is cut from it, where its material is sold so. */
      readonly part?: Part | undefined;
    } & Measured)
  | { readonly kind: 'coverage' }
  /** Styles whose nailed lifts are pasted, where nothing says how far paste goes. */
  | { readonly kind: 'paste'; readonly styles: readonly string[] }
  /** Pieces that the shares spoiled stand for, of all that are cut. */
  | { readonly kind: 'spoiled'; readonly pieces: number; readonly of: number }
  /** Rows of minutes a pair that count on every style. */
  | { readonly kind: 'minutesOnAll'; readonly rates: readonly Rate[]; readonly minutes: number }
  | { readonly kind: 'workRate' }
  /** Kinds of steps that take minutes and have none, each with the styles that have such a step. */
  | {
      readonly kind: 'untimedWork';
      readonly kinds: readonly { readonly kind: StepKind; readonly styles: readonly string[] }[];
    }
  | ({ readonly kind: 'makeOrBuy'; readonly breakEven: number | undefined } & Measured)
  | { readonly kind: 'layoutIgnored'; readonly reason: string }
  /** A layout in Layouts of a stock from which nothing is cut; known where it stands in Bottom stock. */
  | { readonly kind: 'strayLayout'; readonly row: number; readonly known: boolean }
  | ({ readonly kind: 'layoutUsed' } & Measured)
  | { readonly kind: 'strayOffcut'; readonly row: number; readonly stock: string }
  | { readonly kind: 'strayOffer'; readonly row: number; readonly stock: string }
  | { readonly kind: 'offcutsUsed'; readonly codes: readonly string[] }
  | { readonly kind: 'unreadHeading'; readonly heading: string }
  | ({ readonly kind: 'notSummed' } & NotSummed)
  /** What stands below a table from a row on, counted as the table's rows are: nothing reads it. */
  | { readonly kind: 'notRead'; readonly row: number }
  /** Headings under which 0 was taken for a blank cell although it may have been entered. */
  | { readonly kind: 'doubtfulNoughts'; readonly headings: readonly string[] }
);

export type CheckKind = Check['kind'];

/** The checks of a kind, or of several. */
export type CheckOf<Kind extends CheckKind> = Extract<Check, { readonly kind: Kind }>;

/** A problem as a check: it is always to be put right. */
export function problemCheck(problem: Problem): Check {
  return { kind: 'problem', subject: problem.place.table ?? problem.place.argument, verdict: 'putRight', problem };
}
