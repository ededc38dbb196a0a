// Places pieces on the plan with their lines, and writes texts on them.

import type { Piece, Point } from '../../engine';
import { type Box, boxAround, moved } from '../geometry/box';
import { type Turns, turnedBy } from '../geometry/turned';
import type { Placement } from '../packing/placements';
import { channelLines } from '../panel/channelLines';
import { eyeletLines } from '../panel/eyeletLines';
import { levelLines, type PanelLabel } from '../panel/levelLines';
import { panelLines } from '../panel/panelLines';
import { panelTexts } from '../panel/panelTexts';
import type { PlacedText, Stroke } from '../panel/strokes';
import type { PlanInput } from './planInput';

/** How large texts are for the distance at which they are read. */
export interface Reading {
  /** Factor on the sizes of texts on paper, where there is room. */
  readonly textScale: number;
  /** How much farther heavier lines reach to either side than on paper. mm */
  readonly heavierMm: number;
}

const PAPER_READING: Reading = { textScale: 1, heavierMm: 0 };

export interface LinedPiece {
  readonly piece: Piece;
  readonly lines: readonly Stroke[];
  /** Texts that belong to a point of the piece. */
  readonly labels: readonly PanelLabel[];
}

/** A piece on the plan. Lines and texts are in the coordinates of the plan. */
export interface PlacedPanel extends Omit<LinedPiece, 'labels'> {
  /** How `piece` and its lines are turned, never mirrored; texts read from left to right or from the foot up all the same. */
  readonly turns: Turns;
  /** Added to the coordinates of `piece`. mm */
  readonly offset: Point;
  readonly texts: readonly PlacedText[];
}

/** The pieces of a draft with their lines, and with eyelets, channels and lines across where the input asks for them. */
export function linedPieces({ draft, savedDraft, making, across, mockup }: PlanInput): LinedPiece[] {
  const channels = making ? channelLines(draft, savedDraft.style, making) : null;
  return [...draft.pieces, ...draft.extras].map((piece) => {
    const levels = across ? levelLines(draft, piece, across) : { lines: [], labels: [] };
    return {
      piece,
      lines: [
        ...panelLines(piece),
        ...levels.lines,
        ...(channels?.get(piece.id) ?? []),
        ...(making && !mockup ? eyeletLines(draft, making, piece.id) : []),
      ],
      labels: levels.labels,
    };
  });
}

/** Panels at their placements with their texts, which keep clear of `bands` of the plan where there is room. */
export function placePanels(
  lined: readonly LinedPiece[],
  placements: readonly Placement[],
  { client, savedDraft, making, mockup, mockupNumber, date }: PlanInput,
  bands: readonly Box[],
  { textScale, heavierMm }: Reading = PAPER_READING,
): PlacedPanel[] {
  const names = {
    client: client.name,
    draft: savedDraft.name,
    unit: client.unit,
    style: savedDraft.style,
    layers: making && !mockup ? making : null,
    mockupOf: mockup ? { date, number: mockupNumber ?? null } : null,
    textScale,
    heavierMm,
  };
  return lined.map((drafted, i) => {
    const { turns, offset } = placements[i] ?? { turns: 0 as const, offset: { x: 0, y: 0 } };
    // Texts are set on the panel as it lies, or for one that lies sideways as it lay before its last quarter turn.
    const isSideways = turns % 2 === 1;
    const { piece, lines, labels } = turnedBy(drafted, turns >= 2 ? 2 : 0);
    const ownBands = bands.map((band) => {
      const own = shifted(band, { x: -offset.x, y: -offset.y });
      return isSideways ? turnedBox(own) : own;
    });
    const { texts, leaders } = panelTexts(piece, lines, labels, { ...names, isSideways }, ownBands);
    const set = { piece, lines: [...lines, ...leaders], texts };
    return movedPanel({ ...(isSideways ? quarterTurned(set) : set), turns, offset: { x: 0, y: 0 } }, offset);
  });
}

/** A panel with its texts turned by a quarter turn, the head to the left. */
function quarterTurned({ piece, lines, texts }: Pick<PlacedPanel, 'piece' | 'lines' | 'texts'>) {
  const turned = turnedBy({ piece, lines, texts }, 1);
  return { ...turned, texts: turned.texts.map((text) => ({ ...text, turnRad: text.turnRad - Math.PI / 2 })) };
}

/** A box turned back by a quarter turn. */
const turnedBox = ({ left, top, right, bottom }: Box): Box =>
  boxAround(
    turnedBy(
      [
        { x: left, y: top },
        { x: right, y: bottom },
      ],
      3,
    ),
  ) as Box;

const shifted = (box: Box, by: Point): Box => ({
  left: box.left + by.x,
  right: box.right + by.x,
  top: box.top + by.y,
  bottom: box.bottom + by.y,
});

/** A panel moved on the plan. */
export const movedPanel = (panel: PlacedPanel, by: Point): PlacedPanel => ({
  ...panel,
  offset: { x: panel.offset.x + by.x, y: panel.offset.y + by.y },
  lines: panel.lines.map((line) => ({ ...line, points: moved(line.points, by) })),
  texts: panel.texts.map((text) => ({
    ...text,
    start: { x: text.start.x + by.x, y: text.start.y + by.y },
  })),
});
