// A draft's pieces with their lines, and what is written on each once it is known where on the plan it lies.

import type { Piece, Point } from '../../engine';
import { type Box, moved } from '../geometry/box';
import { halfTurned } from '../geometry/halfTurn';
import type { Placement } from '../packing/placements';
import { eyeletLines } from '../panel/eyeletLines';
import { panelLines } from '../panel/panelLines';
import { panelTexts } from '../panel/panelTexts';
import type { PlacedText, Stroke } from '../panel/strokes';
import type { PlanInput } from './planInput';

/** How panels are written on for the way they are read. */
export interface Reading {
  /** How many times as large as on paper letters are where there is room. */
  readonly textScale: number;
  /** How much farther lines reach to either side than on paper. mm */
  readonly heavierMm: number;
}

const PAPER_READING: Reading = { textScale: 1, heavierMm: 0 };

export interface LinedPiece {
  readonly piece: Piece;
  readonly lines: readonly Stroke[];
}

/** A piece on the plan; lines and texts are where they are printed. */
export interface PlacedPanel extends LinedPiece {
  /** It lies with its head down: the piece here is drafted upside down, not mirrored, and its texts read upright. */
  readonly turned: boolean;
  /** What was added to the piece's coordinates. */
  readonly offset: Point;
  readonly texts: readonly PlacedText[];
}

export const linedPieces = ({ draft, making }: PlanInput): LinedPiece[] =>
  [...draft.pieces, ...draft.extras].map((piece) => ({
    piece,
    lines: [...panelLines(piece), ...(making ? eyeletLines(draft, making, piece.id) : [])],
  }));

/**
 * Panels at their places, written on; texts keep clear of `bands` of the plan where they can.
 */
export function placePanels(
  lined: readonly LinedPiece[],
  placements: readonly Placement[],
  { client, savedDraft }: PlanInput,
  bands: readonly Box[],
  { textScale, heavierMm }: Reading = PAPER_READING,
): PlacedPanel[] {
  const names = {
    client: client.name,
    draft: savedDraft.name,
    unit: client.unit,
    style: savedDraft.style,
    textScale,
    heavierMm,
  };
  return lined.map((drafted, i) => {
    const { turned, offset } = placements[i] ?? { turned: false, offset: { x: 0, y: 0 } };
    const { piece, lines } = turned ? halfTurned(drafted) : drafted;
    const ownBands = bands.map((band) => shifted(band, { x: -offset.x, y: -offset.y }));
    const { texts, leaders } = panelTexts(piece, lines, names, ownBands);
    return movedPanel(
      { piece, turned, offset: { x: 0, y: 0 }, lines: [...lines, ...leaders], texts },
      offset,
    );
  });
}

const shifted = (box: Box, by: Point): Box => ({
  left: box.left + by.x,
  right: box.right + by.x,
  top: box.top + by.y,
  bottom: box.bottom + by.y,
});

/** A panel moved on its plan. */
export const movedPanel = (panel: PlacedPanel, by: Point): PlacedPanel => ({
  ...panel,
  offset: { x: panel.offset.x + by.x, y: panel.offset.y + by.y },
  lines: panel.lines.map((line) => ({ ...line, points: moved(line.points, by) })),
  texts: panel.texts.map((text) => ({
    ...text,
    start: { x: text.start.x + by.x, y: text.start.y + by.y },
  })),
});
