/**
 * Adhesive for an area of faces, ml: area × coats / coverage (common practice; coverage as in US federal specification
 * MMM-A-121).
 * @param area of all faces to coat, mm²
 * @param coverage what a litre covers with one coat, m², above 0
 */
export function adhesiveForArea(area: number, coats: number, coverage: number): number {
  // 1,000,000 mm² a m², 1,000 ml a litre.
  return (area * coats) / (coverage * 1000);
}
