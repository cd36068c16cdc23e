/** Weight of a volume of sheet, g: a kg/m³ is a g in 1,000,000 mm³ (derived). @param volume mm³ @param density kg/m³ */
export function weight(volume: number, density: number): number {
  return (volume * density) / 1e6;
}

/** Weight of a piece of sheet, g. @param area mm² @param thickness mm @param density kg/m³ */
export function sheetWeight(area: number, thickness: number, density: number): number {
  return weight(area * thickness, density);
}
