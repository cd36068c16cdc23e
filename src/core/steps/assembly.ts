import type { Bottom } from '../bottom/bottom';
import type { CoverPiece } from '../bottom/cover-piece';
import { coveredParts } from '../bottom/covered-parts';
import type { Layer } from '../bottom/layer';
import type { Style } from '../bottom/style';
import { itemAt } from '../item-at';
import { holdsNails } from './fixing';

/** A cover and what it goes round. */
export interface Wrapped {
  readonly cover: Layer;
  readonly strip: CoverPiece;
  readonly covered: readonly Layer[];
}

/** How a bottom is put together: which pieces are joined off the last, which on it, what is covered, nailed, stitched. */
export interface Assembly {
  readonly bottom: Bottom;
  readonly style: Style;
  readonly insole?: Layer | undefined;
  readonly welt?: Layer | undefined;
  /** Whether the welt ends at the seat, which is packed level with it and nailed. */
  readonly openSeat: boolean;
  /** In the order in which they go on. */
  readonly covers: readonly Wrapped[];
  readonly topPiece?: Layer | undefined;
  /** Pieces that follow the last below the insole, without lifts, from the last downward. */
  readonly following: readonly Layer[];
  /** From the last downward. */
  readonly lifts: readonly Layer[];
  /** What lies flat under a wedge, downward. */
  readonly flat: readonly Layer[];
  /** Pieces that are joined to one another off the last, from the last downward: a wedge, a block, a slab. */
  readonly apart: readonly Layer[];
  /** All pieces whose edge is covered. */
  readonly covered: readonly Layer[];
  /** Whether the heel is built on the shoe, lift by lift with nails. */
  readonly nailed: boolean;
  /** Pieces that are stitched through to the welt. */
  readonly stitched: readonly Layer[];
  /** A sole that ends on the heel's breast. */
  readonly flapped?: Layer | undefined;
  /** What is walked on, under the seat and under the tread. */
  readonly walked: readonly Layer[];
  /** Whether a piece is walked on with a face that was moulded for it. */
  readonly moulded: (layer: Layer) => boolean;
}

/** @param mouldedFace whether a stock, by its code, has a moulded face */
export function assemblyOf(bottom: Bottom, style: Style, mouldedFace: (code: string) => boolean): Assembly {
  const { layers } = bottom;
  const one = (part: Layer['part']) => layers.find((layer) => layer.part === part);
  const lifts = layers.filter(({ part }) => part === 'lift');
  const edge = (layer: Layer) => layer.part === 'welt' || layer.part === 'cover';
  const stack = layers.filter((layer) => !edge(layer) && layer.part !== 'lift' && layer.part !== 'topPiece');
  const following = stack.filter(({ follows, part }) => follows && part !== 'insole');
  const flat = stack.filter(({ follows }) => !follows);
  const [insole, welt, topPiece] = [one('insole'), one('welt'), one('topPiece')];
  const heel = style.raise === 'heel';
  const covers = wrapped(layers, style);
  const covered = covers.flatMap((one) => one.covered);
  const heelCovered = covered.some(({ part }) => part === 'lift');
  const nailed = heel && style.laying === 'flat' && !heelCovered && lifts.every(holdsNails);
  const apart = builtApart(style, { lifts, following, flat, covered: covers.length > 0, nailed });
  const flapped = heel && style.soleEnds === 'down the breast' ? one('sole') : undefined;
  const pile = layers.filter((layer) => !edge(layer));
  const walked = [pile.findLast(({ underSeat }) => underSeat), pile.findLast(({ underTread }) => underTread)];
  return {
    bottom,
    style,
    insole,
    welt,
    openSeat: welt !== undefined && style.weltEnds === 'at the seat',
    covers,
    topPiece,
    following,
    lifts,
    flat,
    apart,
    covered,
    nailed,
    stitched: welt ? stitchedThrough(heel ? beforeCovered(following, covered) : following) : [],
    flapped,
    walked: walked.filter((layer) => layer !== undefined),
    moulded: (layer) => walked.includes(layer) && mouldedFace(layer.stock),
  };
}

/** A cover with all that it goes round; of a heel under a platform each with its own, as they are built. */
function wrapped(layers: readonly Layer[], style: Style): readonly Wrapped[] {
  const covers = layers.flatMap((layer) => (layer.cover ? [{ cover: layer, strip: layer.cover }] : []));
  const parts = coveredParts(style);
  const platform = parts.platform ? layers.filter(({ part }) => part === 'platform') : [];
  const lifts = parts.lifts ? layers.filter(({ part }) => part === 'lift') : [];
  const edges = style.raise === 'heel' ? [platform, lifts].filter((one) => one.length > 0) : [[...lifts, ...platform]];
  return covers.map((one, i) => ({ ...one, covered: itemAt(edges, i) }));
}

interface Stacks {
  readonly lifts: readonly Layer[];
  readonly following: readonly Layer[];
  readonly flat: readonly Layer[];
  readonly covered: boolean;
  readonly nailed: boolean;
}

/**
 * What is joined off the last: lifts that lie flat, and the platform under a wedge of them; without a raise, soft slabs
 * and what lies under them, or the platform whose edge is covered.
 */
function builtApart(style: Style, { lifts, following, flat, covered, nailed }: Stacks): readonly Layer[] {
  if (style.raise === 'none') {
    const soft = following.findIndex(
      ({ part, material }) => material === 'cork' || material === 'foam' || (covered && part === 'platform'),
    );
    if (soft < 0) return [];
    // A covered platform has its outsole put on after it is on the last, as a wedge has.
    return following.slice(soft).filter(({ part }) => !(covered && part === 'outsole'));
  }
  if (style.laying === 'bent' || nailed) return [];
  return [...lifts, ...flat.filter(({ part }) => part === 'platform')];
}

/** What lies over a platform that is covered on the last: no thread goes through its cover. */
function beforeCovered(following: readonly Layer[], covered: readonly Layer[]): readonly Layer[] {
  const first = following.findIndex((layer) => covered.includes(layer));
  return first < 0 ? following : following.slice(0, first);
}

/** Leather and rubber against the last, as far as they lie on one another: a needle holds in nothing softer. */
function stitchedThrough(following: readonly Layer[]): readonly Layer[] {
  const soft = following.findIndex(({ material }) => material !== 'leather' && material !== 'rubber');
  return soft < 0 ? following : following.slice(0, soft);
}
