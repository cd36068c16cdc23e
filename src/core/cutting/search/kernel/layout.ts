/** Where what stands in the kernel's memory: distances in bytes from the address of a thing. */

/** Numbers of 64 bits, whole ones of 32, and of 16. */
export const REAL: i32 = 8;
export const WORD: i32 = 4;
export const HALF: i32 = 2;

/** Of a pair: box of its no-fit region, steps of its grid per length and height, and the quantum of its losses. */
export const LEFT: i32 = 0;
export const BOTTOM: i32 = 8;
export const RIGHT: i32 = 16;
export const TOP: i32 = 24;
export const STEPS_X: i32 = 32;
export const STEPS_Y: i32 = 40;
export const QUANTUM: i32 = 48;
/** Its number, where bands, edges and level edges begin, and where the last end. */
export const NUMBER: i32 = 56;
export const BANDS: i32 = 60;
export const EDGES: i32 = 64;
export const LEVELS: i32 = 68;
export const LEVELS_END: i32 = 72;
/** Where the outline of its region begins; 0 until it is asked for. */
export const EXITS: i32 = 76;
/** Where the poles of both stand. */
export const FIRST_POLES: i32 = 80;
export const SECOND_POLES: i32 = 84;
/** Then the points of its grid, row by row. */
export const POINTS: i32 = 88;

/** Of a shape's poles: where they end, the shape's greatest diameter, and then each pole: x, y, radius. */
export const DIAMETER: i32 = 8;
export const POLES: i32 = 16;
export const POLE_SIZE: i32 = 24;

/**
 * What a pair of shapes is known by: its address, a multiple of 8, with the quarter turns that bring these two onto it, and
 * with this where they are first to be mirrored in the length line, y to −y.
 */
export const MIRRORED: i32 = 4;
export const QUARTERS: i32 = 3;

/** Of a point: first the loss there in quanta, 0 while it is unknown, then what is known of the cell to its right and above. */
export const POINT_CELL: i32 = 2;
export const POINT_SIZE: i32 = 4;

/** Bands for each step of a grid: edges are looked up by the band in which a point lies. */
export const BANDS_PER_STEP: i32 = 2;

/** Of an edge, in steps of the grid: x and y of its lower end, y of its upper, run per rise, 1 upward and −1 downward. */
export const EDGE_X: i32 = 0;
export const EDGE_LOW: i32 = 8;
export const EDGE_HIGH: i32 = 16;
export const EDGE_SLOPE: i32 = 24;
export const EDGE_UPWARD: i32 = 32;
export const EDGE_SIZE: i32 = 40;

/**
 * Level edges stand after the others. They are read in the same way, so steep that what lies below them is to their left:
 * from the left end, with the right end in the place of the upper.
 */
export const LEVEL_RIGHT: i32 = EDGE_HIGH;

/** What is known of a cell; above these the lowest edge through it, whether others follow, and on which side the region lies. */
export const UNKNOWN: i32 = 0;
export const FREE: i32 = 1;
export const WITHIN: i32 = 2;
export const MIXED: i32 = 3;
export const CHAIN: i32 = 2;

/** Of a shape's box: left, bottom, right, top. */
export const BOX_SIZE: i32 = 32;

/** A job. Of shapes among each other: how many, steps of the grid, and where pairs are found and where boxes of shapes are. */
export const SHAPES: i32 = 0;
export const GRID: i32 = 4;
export const PAIRS: i32 = 8;
export const BOXES: i32 = 12;

/** Of a move: the piece, its choices of shapes, and how many of them. */
export const PIECE: i32 = 16;
export const CHOICES: i32 = 20;
export const CHOICE_COUNT: i32 = 24;
/** All pieces: how many, their shapes, places, and what a loss by each weighs for the one that is moved. */
export const COUNT: i32 = 28;
export const SHAPE_OF: i32 = 32;
export const XS: i32 = 36;
export const YS: i32 = 40;
export const WEIGHTS: i32 = 44;
/** The space: how many rectangles, their lengths and widths. */
export const RECTANGLES: i32 = 48;
export const LENGTHS: i32 = 52;
export const WIDTHS: i32 = 56;
/** Scratch: which choices are listed, neighbours' records, which of them reach into each cell of the space, and how many do. */
export const LISTED: i32 = 60;
export const RECORDS: i32 = 64;
export const MEMBERS: i32 = 68;
export const SIZES: i32 = 72;
/** Cells of the space along x and y, and cells per length and height. */
export const CELLS_X: i32 = 76;
export const CELLS_Y: i32 = 80;
export const CELLS_PER_LENGTH: i32 = 88;
export const CELLS_PER_HEIGHT: i32 = 96;
/** Distance from one rectangle to the next, and what sticking out weighs. */
export const PITCH: i32 = 104;
export const OUT_WEIGHT: i32 = 112;
/** State of chance: four words. */
export const CHANCE: i32 = 120;
/** Places to sample about where the piece lies, and anywhere. */
export const NEAR: i32 = 136;
export const ANYWHERE: i32 = 140;
/** Answers: evaluations, the shape, and the place. */
export const SPENT: i32 = 144;
export const FOUND_SHAPE: i32 = 148;
export const FOUND_X: i32 = 152;
export const FOUND_Y: i32 = 160;
/** The best places so far, and a copy of them. */
export const BEST: i32 = 168;
export const COPY: i32 = 264;
export const JOB_SIZE: i32 = 360;

/** Of a place among the best: choice of shape, place, and loss. */
export const BEST_CHOICE: i32 = 0;
export const BEST_X: i32 = 8;
export const BEST_Y: i32 = 16;
export const BEST_LOSS: i32 = 24;
export const BEST_SIZE: i32 = 32;

/**
 * Of a neighbour: how a place of the moved piece becomes one on the grid of their pair, along x or, where that is turned by
 * a quarter, along y; what a quantum of loss weighs, the pair, and whether it is so turned.
 */
export const SCALE_U: i32 = 0;
export const SHIFT_U: i32 = 8;
export const SCALE_V: i32 = 16;
export const SHIFT_V: i32 = 24;
export const WEIGHT: i32 = 32;
export const PAIR: i32 = 40;
export const CROSSED: i32 = 44;
export const RECORD_SIZE: i32 = 48;

/** Of the outline of a region: first where it ends, then its edges, each by its start, its run and rise, and 1 over the square of its length. */
export const EXIT_SIZE: i32 = 40;

/** A job to push pieces apart: how many rounds, pieces and pairs; the answer, 1 where none overlaps any more; then the pieces. */
export const PUSH_ROUNDS: i32 = 16;
export const PUSH_PIECES: i32 = 20;
export const PUSH_PAIRS: i32 = 24;
export const PUSH_APART: i32 = 28;
export const PUSH_SIZE: i32 = 32;

/** Of a piece that is pushed: place, the one before, and between which it may lie. The pairs follow the pieces. */
export const PUSHED_Y: i32 = 8;
export const PUSHED_LAST_X: i32 = 16;
export const PUSHED_LAST_Y: i32 = 24;
export const PUSHED_LEFT: i32 = 32;
export const PUSHED_BOTTOM: i32 = 40;
export const PUSHED_RIGHT: i32 = 48;
export const PUSHED_TOP: i32 = 56;
export const PUSHED_SIZE: i32 = 64;

/** Of two that may come to overlap: where both stand, and their pair with its quarter turns. */
export const PUSH_FIRST: i32 = 0;
export const PUSH_SECOND: i32 = 4;
export const PUSH_CODE: i32 = 8;
export const PUSH_PAIR_SIZE: i32 = 12;
