// The pattern as a DXF file of release 12, which the trade's cutters and plotters read.

import type { Point } from '../../engine';
import type { PlanInput } from '../layout/planInput';
import { planPanels } from '../layout/planPanels';
import { eyeletsFor } from '../making/eyelets';
import { DO_NOT_CUT, hasErrors } from '../remarks/errors';
import { estimatedLines } from '../remarks/estimates';
import { ascii, asciiName } from '../text/ascii';
import { blockNames, dxfFile } from './dxfFile';
import { pieceBlock } from './pieceBlock';

/** Width of the plan: the narrowest usual cloth, 36 in. mm */
const MOST_WIDTH_MM = 914.4;

/**
 * The text of a DXF file, 7-bit ASCII with CR LF. It has a block for each piece on the layers of layers.ts, in the piece's
 * own coordinates (x from the centre line, y up to the shoulder level), with eyelets as drill holes where the input has making
 * settings, and an insert of each block, laid out side by side. The unit is mm, as the header and each block state. Names are
 * transliterated. Same input, same text.
 */
export function patternDxf(input: PlanInput): string {
  // A block is in its piece's own coordinates and inserted without rotation.
  const { panels, widthMm, heightMm } = planPanels({ ...input, nap: true }, MOST_WIDTH_MM);
  const faulty = hasErrors(input);
  const rows = input.making ? eyeletsFor(input.draft, input.making) : [];
  const holesIn = (piece: string): readonly Point[] =>
    rows.filter((row) => row.piece.id === piece).flatMap(({ points }) => points);
  const names = blockNames(panels.map(({ piece }) => piece.id));
  const headings = [
    `Style Name: ${asciiName(input.savedDraft.name)}`,
    `Client: ${asciiName(input.client.name)}`,
    `Creation Date: ${ascii(input.date)}`,
    'Units: METRIC (1 unit = 1 mm)',
    ...estimatedLines(input.client).map(ascii),
    ...(faulty ? [DO_NOT_CUT] : []),
  ];
  const blocks = panels.flatMap(({ piece }, i) =>
    pieceBlock(piece, names[i] ?? '', holesIn(piece.id), faulty ? [DO_NOT_CUT] : []),
  );
  const inserts = panels.map(({ offset }, i) => ({ name: names[i] ?? '', at: offset }));
  return dxfFile(blocks, inserts, headings, { widthMm, heightMm });
}
