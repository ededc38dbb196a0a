// The room for texts on a panel, and the choice of a place in it.

import type { LengthUnit } from '../../document';
import type { Piece, Point, Style } from '../../engine';
import type { Box } from '../geometry/box';
import type { LayerName } from '../making/layers';
import type { MakingSettings } from '../making/settings';
import { isClear, type Room, touchesAny } from './room';
import { readable, type TextBlock, type TurnedBox } from './textBlock';

/** What is written on a panel, and how large. */
export interface PanelNames {
  readonly client: string;
  readonly draft: string;
  readonly unit: LengthUnit;
  /** The drafted style; it decides which edges close with a zip. */
  readonly style: Style;
  /** How many of each layer the garment has; null where a panel does not say what it is cut from. */
  readonly layers: Pick<MakingSettings, LayerName> | null;
  /** The date of the mock-up it belongs to; null for what is no mock-up. */
  readonly mockupOf: { readonly date: string; readonly number: number | null } | null;
  /** Factor on the sizes of texts where there is room; 1 is for reading at arm's length. */
  readonly textScale: number;
  /** How much farther heavier lines reach to either side than on paper. mm */
  readonly heavierMm: number;
  /** The panel is turned by a quarter turn with its texts, its head to the left. */
  readonly isSideways?: boolean;
}

/** The smallest size that is read at arm's length. pt */
export const LEAST_PT = 6;

const QUARTER_TURN = Math.PI / 2;

/** The direction of a text set at a right angle to the usual one, so that it can be read as the panel lies. rad */
export const sideways = ({ isSideways }: Pick<PanelNames, 'isSideways'>): number =>
  isSideways ? QUARTER_TURN : -QUARTER_TURN;

/** The direction of a text along a line, so that it can be read as the panel lies. rad */
export const readableOn = ({ isSideways }: Pick<PanelNames, 'isSideways'>, turnRad: number): number =>
  isSideways ? readable(turnRad - QUARTER_TURN) + QUARTER_TURN : readable(turnRad);

/** The lines and texts of a panel, and what decides how texts are placed among them. */
export interface PanelRoom {
  readonly piece: Piece;
  readonly room: Room;
  /** The sew line as a ring. */
  readonly sewn: readonly Point[];
  readonly bands: readonly Box[];
  /** Scales to try before the usual sizes, the largest first. */
  readonly larger: readonly number[];
  readonly heavierMm: number;
  readonly isSideways: boolean;
}

/** A text at a place that it may take. */
export interface Candidate {
  readonly block: TextBlock;
  readonly box: TurnedBox;
}

/** A text nearer to a line than this seems to stand on it. mm */
const USUAL_CLEAR_MM = 1.3;

/**
 * Finds the first candidate that is clear of lines and texts, and takes its room; null where none is. Candidates outside the
 * bands come before all others; in either group the usual clearance is tried before `leastMm`.
 */
export function takeFirstClear(
  { room, bands, heavierMm }: PanelRoom,
  candidates: readonly Candidate[],
  leastMm: number,
): Candidate | null {
  const clear = (avoid: readonly Box[], clearMm: number): Candidate | undefined =>
    candidates.find(({ box }) => !touchesAny(box, avoid) && isClear(room, box, clearMm + heavierMm));
  const either = (avoid: readonly Box[]): Candidate | undefined =>
    (leastMm < USUAL_CLEAR_MM ? clear(avoid, USUAL_CLEAR_MM) : undefined) ?? clear(avoid, leastMm);
  const found = either(bands) ?? (bands.length > 0 ? either([]) : undefined);
  if (found) room.taken.push(found.box);
  return found ?? null;
}
