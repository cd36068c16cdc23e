/** Square of the distance of a point from the edge ab, mm². */
export function pointToEdge(x: number, y: number, ax: number, ay: number, bx: number, by: number): number {
  const ex = bx - ax;
  const ey = by - ay;
  const along = ((x - ax) * ex + (y - ay) * ey) / (ex * ex + ey * ey);
  const t = along < 0 ? 0 : along > 1 ? 1 : along;
  const gx = x - ax - t * ex;
  const gy = y - ay - t * ey;
  return gx * gx + gy * gy;
}
