import { formatOn, type SheetFormat, type SheetName } from './sheet';

/** Where one piece lies: turned counter-clockwise about its ring's origin by `turn` degrees, then moved by (x, y) mm. */
export interface Placement {
  /** Index in the list of pieces. */
  readonly piece: number;
  readonly x: number;
  readonly y: number;
  readonly turn: number;
}

/** What lies on one sheet or one offcut. */
export type Placements = readonly Placement[];

/** The pieces on the offcuts that are used, in the order of the format's, and on each whole sheet. */
export interface Layout {
  readonly offcuts: readonly { readonly code: string; readonly placements: Placements }[];
  readonly sheets: readonly Placements[];
}

/** One sheet, or one offcut, and what lies on it. */
export interface LaidSheet {
  /** Its own, without offcuts. */
  readonly format: SheetFormat;
  readonly placements: Placements;
}

/** One of the sheets of a layout. */
export interface NamedSheet extends LaidSheet {
  readonly name: SheetName;
}

/** All sheets of a layout: the offcuts that are used, then the whole sheets. */
export function laidSheets({ offcuts, sheets }: Layout, format: SheetFormat): readonly NamedSheet[] {
  const laid = (name: SheetName, placements: Placements) => ({ name, format: formatOn(format, name), placements });
  return [
    ...offcuts.map(({ code, placements }) => laid({ offcut: code }, placements)),
    ...sheets.map((placements, i) => laid({ sheet: i + 1 }, placements)),
  ];
}

/** The layout that some sheets make; those on which nothing lies are left out, and the whole ones are numbered anew. */
export function layoutOf(laid: readonly Pick<NamedSheet, 'name' | 'placements'>[]): Layout {
  const used = laid.filter(({ placements }) => placements.length > 0);
  return {
    offcuts: used.flatMap(({ name, placements }) => ('offcut' in name ? [{ code: name.offcut, placements }] : [])),
    sheets: used.flatMap(({ name, placements }) => ('sheet' in name ? [placements] : [])),
  };
}

/** All placements of a layout, whatever they lie on. */
export function allPlacements({ offcuts, sheets }: Layout): Placements {
  return [...offcuts.flatMap(({ placements }) => placements), ...sheets.flat()];
}
