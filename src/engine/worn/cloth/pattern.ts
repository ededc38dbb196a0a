// Where the second derivatives of an energy stand: 3 × 3 blocks for pairs of vertices that some part of the energy joins.

export interface BlockPattern {
  /** How many blocks there are. */
  readonly blocks: number;
  /** Index of the block of two vertices; where the block stands the other way round, its bitwise complement. */
  readonly slotOf: (i: number, j: number) => number;
  /** Both vertices of each block. */
  readonly rows: Int32Array;
  readonly columns: Int32Array;
}

/** The index of a block whichever way round it stands. */
export const eitherWay = (slot: number): number => (slot < 0 ? ~slot : slot);
