// The closed half: the seams and places of a half garment with its wedges sewn up, counted from centre front past the side to
// centre back.

import { type Block, partingWedges } from '../../block/block';
import { isThrough } from '../../block/lines/extent';
import type { DraftedWedge } from '../../block/lines/wedge';
import { sewnDistanceAt, sewnDistancesAt } from '../../edges/edgeLine';
import { at } from '../../geometry/lists';
import { xAt } from '../../geometry/smoothLine';
import type { Style } from '../../style/style';
import type { BlockName } from '../../terms/names';
import type { AlteredPlace, PanelName, SeamName } from '../terms/alteration';
import { isCentre, samePanel } from '../terms/alterationsOfSide';
import { partedPanels } from '../terms/partedPanels';

type Blocks = Readonly<Record<BlockName, Block>>;

/** A line of the closed half from top edge to hem, or a dart. Each stands once, so that two are the same line when they are the same object. */
export type BodyLine =
  | { readonly kind: 'wedge' | 'dart'; readonly block: BlockName; readonly wedge: DraftedWedge }
  | { readonly kind: 'sideSeam' }
  | { readonly kind: 'centre'; readonly block: BlockName }
  | { readonly kind: 'bustLine' };

/** A seam as the draft has it. */
interface StandingSeam {
  readonly line: BodyLine;
  /** In sewing order. */
  readonly pieces: readonly [PanelName, PanelName];
}

export interface ClosedHalf {
  readonly blocks: Blocks;
  /** From centre front to centre back; the side line is among them where front and back side panel are cut in one. */
  readonly lines: readonly BodyLine[];
  readonly seams: readonly StandingSeam[];
  /** Wedges that part no panels, of the front before those of the back. */
  readonly darts: readonly (BodyLine & { readonly kind: 'dart' })[];
}

const panel = (block: BlockName, number: number): PanelName => ({ kind: 'panel', block, number });

/** The seams, lines and darts of a style on its blocks. */
export function closedHalfOf(blocks: Blocks, { joinedSide = false }: Pick<Style, 'joinedSide'>): ClosedHalf {
  const cuts = { front: partingWedges(blocks.front), back: partingWedges(blocks.back) };
  const counts = { front: cuts.front.length, back: cuts.back.length };
  const { isJoined, panelAt: pieceAt } = partedPanels(counts, joinedSide);
  const seamsOn = (block: BlockName): StandingSeam[] =>
    cuts[block].map((wedge, i) => ({
      line: { kind: 'wedge', block, wedge },
      pieces: [pieceAt(block, i + 1), pieceAt(block, i + 2)],
    }));
  const [front, back] = [seamsOn('front'), seamsOn('back')];
  // The side panel in one is sewn to the back as its first mate.
  const behind = back.map(
    (seam): StandingSeam =>
      seam.pieces[1].kind === 'sidePanel' ? { ...seam, pieces: [seam.pieces[1], seam.pieces[0]] } : seam,
  );
  const sideSeam: StandingSeam = {
    line: { kind: 'sideSeam' },
    pieces: [panel('front', cuts.front.length + 1), panel('back', cuts.back.length + 1)],
  };
  const centre = (block: BlockName): StandingSeam => ({
    line: { kind: 'centre', block },
    pieces: [panel(block, 1), panel(block, 1)],
  });
  const [first, last] = [centre('front'), centre('back')];
  return {
    blocks,
    lines: [first, ...front, sideSeam, ...[...behind].reverse(), last].map(({ line }) => line),
    seams: [first, ...front, ...(isJoined ? [] : [sideSeam]), ...behind, last],
    darts: (['front', 'back'] as const).flatMap((block) =>
      blocks[block].wedges
        .filter(({ extent }) => !isThrough(extent))
        .map((wedge) => ({ kind: 'dart', block, wedge }) as const),
    ),
  };
}

/**
 * The line of a seam or dart by its name, and whether its two panels are named against the sewing order; null where there is none.
 */
export function lineNamed(
  { seams, darts }: ClosedHalf,
  name: SeamName,
): { readonly line: BodyLine; readonly isTurned: boolean } | null {
  if (name.kind === 'dart') {
    const line = darts.find(({ wedge }) => wedge.id === name.wedge);
    return line ? { line, isTurned: false } : null;
  }
  const [a, b] = name.pieces;
  for (const { line, pieces } of seams) {
    if (samePanel(pieces[0], a) && samePanel(pieces[1], b)) return { line, isTurned: false };
    if (samePanel(pieces[0], b) && samePanel(pieces[1], a)) return { line, isTurned: !isCentre(name) };
  }
  return null;
}

/** The line at a place; null where the style has no such seam. */
export function lineAt(closedHalf: ClosedHalf, place: AlteredPlace): BodyLine | null {
  if (place.kind !== 'landmark') return lineNamed(closedHalf, place)?.line ?? null;
  const { lines } = closedHalf;
  switch (place.name) {
    case 'centreFront':
      return at(lines, 0);
    case 'centreBack':
      return at(lines, lines.length - 1);
    case 'side':
      return lines.find(({ kind }) => kind === 'sideSeam') ?? null;
    case 'bustLine':
      return BUST_LINE;
  }
}

const BUST_LINE: BodyLine = { kind: 'bustLine' };

/**
 * Distances of lines from centre front at a height, wedges sewn up, mm; each is reckoned once.
 *
 * @param whole the width from centre front to centre back at that height, mm
 */
export function distancesAt({ blocks }: ClosedHalf, y: number, whole: number): (line: BodyLine) => number {
  const sewn = { front: sewnDistancesAt(blocks.front, y), back: sewnDistancesAt(blocks.back, y) };
  const distanceOf = (line: BodyLine): number => {
    switch (line.kind) {
      case 'centre':
        return line.block === 'front' ? 0 : whole;
      case 'sideSeam':
        return sewn.front(xAt(blocks.front.sideSeam, y));
      case 'bustLine':
        return sewn.front(blocks.front.bustLine);
      default: {
        const own = sewn[line.block](xAt(line.wedge.innerLeg, y));
        return line.block === 'front' ? own : whole - own;
      }
    }
  };
  const known = new Map<BodyLine, number>();
  return (line) => {
    const before = known.get(line);
    if (before !== undefined) return before;
    const distance = distanceOf(line);
    known.set(line, distance);
    return distance;
  };
}

/** The width from centre front to centre back at a height, with the wedges sewn up, mm. */
export const wholeAt = ({ blocks: { front, back } }: ClosedHalf, y: number): number =>
  sewnDistanceAt(front, xAt(front.sideSeam, y), y) + sewnDistanceAt(back, xAt(back.sideSeam, y), y);
