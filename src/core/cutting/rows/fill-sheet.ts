import type { Placements } from '../sheet/layout';
import { wholeTurn } from '../sheet/way';
import { fillRows, type Later, type Sequence } from './fill-rows';
import type { RowSource } from './row';
import type { Supply } from './supply';

/** A direction of rows on the sheet, with the pieces in one posture in them. */
export interface Direction extends RowSource {
  /** Rows run along the sheet's length or across it. */
  readonly along: boolean;
}

/** A rectangle of the room on a sheet. */
export interface Block {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

/** Pieces laid on a sheet. */
export interface FilledSheet {
  readonly placements: Placements;
  /** Area of the pieces. */
  readonly area: number;
  /** How far along the room's length and width the pieces reach. */
  readonly length: number;
  readonly width: number;
}

/** Fills sheets with rows from one supply of pieces. */
export class SheetFiller {
  constructor(
    private readonly supply: Supply,
    private readonly directions: readonly Direction[],
  ) {}

  /** Rows in one direction, then rows in any direction in what is left beside and beyond them. Takes nothing for good. */
  fill(direction: Direction, sequence: Sequence, room: Block, later?: Later): FilledSheet {
    let sheet = this.block(direction, sequence, room, later);
    if (this.supply.total > 0) {
      const { x, y, length, width } = room;
      const { length: usedLength, width: usedWidth } = sheet;
      const beside = { x: x + usedLength, y, length: length - usedLength, width };
      const above = { x, y: y + usedWidth, length, width: width - usedWidth };
      const rest = direction.along
        ? [beside, { ...above, length: usedLength }]
        : [above, { ...beside, width: usedWidth }];
      for (const block of rest) sheet = joined(sheet, this.rest(block));
    }
    this.putBack(sheet);
    return sheet;
  }

  private rest(block: Block): FilledSheet {
    let best: FilledSheet = { placements: [], area: 0, length: 0, width: 0 };
    for (const direction of this.directions) {
      const sheet = this.block(direction, 'greedy', block);
      this.putBack(sheet);
      if (sheet.area > best.area) best = sheet;
    }
    for (const { piece } of best.placements) this.supply.take(piece);
    return best;
  }

  private block(direction: Direction, sequence: Sequence, block: Block, later?: Later): FilledSheet {
    const { along } = direction;
    const [rowLength, across] = along ? [block.length, block.width] : [block.width, block.length];
    const filled = fillRows(direction, rowLength, across, sequence, later);
    const placements = filled.items.map(({ kind, lay, u, v }) =>
      along
        ? { piece: kind, x: block.x + u, y: block.y + v, turn: lay.turn }
        : { piece: kind, x: block.x + v, y: block.y + filled.length - u, turn: wholeTurn(lay.turn - 90) },
    );
    const [length, width] = along ? [filled.length, filled.height] : [filled.height, filled.length];
    return { placements, area: filled.area, length: block.x + length, width: block.y + width };
  }

  private putBack({ placements }: FilledSheet): void {
    for (const { piece } of placements) this.supply.putBack(piece);
  }
}

function joined(a: FilledSheet, b: FilledSheet): FilledSheet {
  if (!b.placements.length) return a;
  return {
    placements: [...a.placements, ...b.placements],
    area: a.area + b.area,
    length: Math.max(a.length, b.length),
    width: Math.max(a.width, b.width),
  };
}
