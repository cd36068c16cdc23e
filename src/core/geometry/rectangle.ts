import type { Box, Ring } from './ring';

/** The ring of an upright rectangle, from its lower left corner on. */
export function rectangleAbout({ left, bottom, right, top }: Box): Ring {
  return [
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
  ];
}

/** The ring of a rectangle from the origin. */
export function rectangle(length: number, width: number): Ring {
  return rectangleAbout({ left: 0, bottom: 0, right: length, top: width });
}
