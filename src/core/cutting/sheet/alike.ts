import { OutlineIndex } from '../../geometry/outline-index';
import type { Layout, Placements } from './layout';
import { BEST } from './natural-sheet';
import type { Piece } from './piece';

/** Pieces of which those that are alike are taken together: a layout of the kinds can be handed out to the pieces. */
export interface Alike {
  /** One piece of each kind, with the count of them all. */
  readonly kinds: readonly Piece[];
  /** A layout of the pieces from one of the kinds: where a kind lies, its pieces lie in their order. */
  handedOut(layout: Layout): Layout;
}

/**
 * Takes pieces together that have equal outlines and may lie the same way on the same quality, such as those of styles on
 * one last.
 * @param matched whether pieces are to match in pairs: they are then alike where both of the pair are
 */
export function alike(pieces: readonly Piece[], matched: boolean): Alike {
  const outlines = new OutlineIndex();
  const looks = pieces.map(({ ring, way, quality = BEST }) => {
    const { number, mirrored } = outlines.find(ring);
    return JSON.stringify([number, mirrored, way, quality]);
  });
  const pairs = new Map<string, string>();
  if (matched)
    for (const [i, { pair }] of pieces.entries()) if (pair) pairs.set(pair, `${pairs.get(pair) ?? ''} ${looks[i]}`);
  const byLooks = new Map<string, number[]>();
  for (const [i, { pair }] of pieces.entries()) {
    const look = `${looks[i]} of ${(pair && pairs.get(pair)) ?? 'any'}`;
    const known = byLooks.get(look);
    if (known) known.push(i);
    else byLooks.set(look, [i]);
  }
  const members = [...byLooks.values()].map((list) => list.map((index) => ({ index, piece: pieces[index]! })));
  const kinds = members.map((list): Piece => ({
    ...list[0]!.piece,
    count: list.reduce((sum, { piece }) => sum + piece.count, 0),
  }));
  const one = members.length === pieces.length;
  return { kinds, handedOut: (layout) => (one ? layout : handedOut(layout, members)) };
}

type Members = readonly (readonly { readonly index: number; readonly piece: Piece }[])[];

function handedOut(layout: Layout, members: Members): Layout {
  const queues = members.map((list) => inTurn(list));
  const give = (placements: Placements): Placements =>
    placements.map((placement) => ({ ...placement, piece: queues[placement.piece]!.next().value as number }));
  return {
    offcuts: layout.offcuts.map(({ code, placements }) => ({ code, placements: give(placements) })),
    sheets: layout.sheets.map(give),
  };
}

/** Each piece of a kind as often as it is wanted. */
function* inTurn(list: Members[number]): Generator<number> {
  for (const { index, piece } of list) for (let count = 0; count < piece.count; count++) yield index;
}
