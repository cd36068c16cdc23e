import type { Material } from './stock';

/**
 * Thicknesses in which a material is sold for bottoms and what goes round them, least and most, mm: from linings to blocks
 * (common practice). What lies outside is more often mistyped than meant.
 */
export const USUAL_THICKNESS: Readonly<Record<Material, { readonly least: number; readonly most: number }>> = {
  cork: { least: 0.5, most: 50 },
  foam: { least: 1, most: 50 },
  leather: { least: 0.4, most: 10 },
  rubber: { least: 0.8, most: 25 },
  board: { least: 0.3, most: 8 },
  fabric: { least: 0.1, most: 10 },
  steel: { least: 0.3, most: 4 },
};
