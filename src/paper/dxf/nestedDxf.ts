// Sizes one over another as a DXF file of release 12, with a block for each piece of each size.

import type { NestedInput } from '../nested/nestedInput';
import { drawnNests, nestsOnRoll } from '../nested/nestedPanels';
import { ascii, asciiName } from '../text/ascii';
import { blockNames, dxfFile } from './dxfFile';
import { pieceBlock } from './pieceBlock';

/** Width of the plan: the narrowest usual cloth, 36 in. mm */
const MOST_WIDTH_MM = 914.4;

/**
 * The text of a DXF file. It has a block for each piece of each size, FRONT-1_38, on the layers of layers.ts and in the piece's own
 * coordinates (x from the centre line, y up to the shoulder level), and an insert of each; those of a piece lie on one another as in
 * the print. The unit is mm. Names are transliterated. Same input, same text.
 */
export function nestedDxf(input: NestedInput): string {
  const { nests, widthMm, heightMm } = nestsOnRoll(drawnNests(input), MOST_WIDTH_MM);
  const placed = nests.flatMap(({ nest, offset }) =>
    nest.parts.map(({ size, piece, by }) => ({
      piece,
      size: input.sizes[size]?.name ?? '',
      at: { x: offset.x + by.x, y: offset.y + by.y },
    })),
  );
  const names = blockNames(placed.map(({ piece, size }) => `${piece.id}_${size}`));
  return dxfFile(
    placed.flatMap(({ piece, size }, i) =>
      pieceBlock(piece, names[i] ?? '', [], [`Size: ${asciiName(size)}`]),
    ),
    placed.map(({ at }, i) => ({ name: names[i] ?? '', at })),
    [
      `Style Name: ${asciiName(input.savedDraft.name)}`,
      `Sizes: ${input.sizes.map(({ name }) => asciiName(name)).join(', ')}`,
      `Creation Date: ${ascii(input.date)}`,
      'Units: METRIC (1 unit = 1 mm)',
    ],
    { widthMm, heightMm },
  );
}
