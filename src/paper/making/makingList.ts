// Everything to buy, cut and make for one draft, in mm. makingSections.ts puts it into words.

import { edgeName } from '../../document';
import {
  type BlockName,
  type Draft,
  type Edge,
  finishedCloth,
  identityOf,
  type Piece,
  type PieceIdentity,
  polylineLength,
  type Style,
  turnsHemUp,
} from '../../engine';
import { type Bone, type Busk, bonesOf, buskOf, casingWidth, timesCut } from './bones';
import { type ClothLength, clothFor } from './cloth';
import { type EyeletRow, eyeletsFor } from './eyelets';
import { type Fastening, fasteningsOf } from './fastenings';
import { isCutOnce, type Layer, layersOf } from './layers';
import type { MakingSettings } from './settings';
import { type WaistSeam, waistSeamOf } from './waistSeam';

export interface MakingList {
  readonly pieces: readonly {
    readonly piece: PieceIdentity;
    /** Times it is cut from one layer. */
    readonly count: number;
    readonly onFold: boolean;
    /** True where it is cut from one layer only, not from each. */
    readonly once: boolean;
  }[];
  /** Outermost first. */
  readonly layers: readonly Layer[];
  readonly bones: readonly Bone[];
  readonly busk: Busk | null;
  /** Sewn width of a bone's channel, mm. */
  readonly casingWidthMm: number;
  readonly eyelets: readonly EyeletRow[];
  readonly fastenings: readonly Fastening[];
  /** Lengths to buy, mm; 0 where nothing of it is needed. */
  readonly laceMm: number;
  /** How far apart the laced edges stand for putting the garment on, mm; 0 where nothing is laced. */
  readonly laceOpeningMm: number;
  readonly casingMm: number;
  readonly bindingMm: {
    /** Length of the top edge; of neckline and armholes where there are shoulders. */
    readonly top: number;
    /** Length of the hem; 0 where it is turned up. */
    readonly hem: number;
    readonly both: number;
  };
  /** The allowances of bound edges, which are trimmed away before binding; mm. */
  readonly trimmed: readonly { readonly edge: string; readonly allowanceMm: number }[];
  /** True where the panels or a shoulder band have neckline and armholes instead of a top edge. */
  readonly shouldered: boolean;
  readonly tapeMm: number;
  /** The waist seam of a joined skirt or trousers; null where the hem does not lie at the waist. */
  readonly waistSeam: Readonly<Record<BlockName, WaistSeam>> | null;
  readonly cloth: readonly ClothLength[];
}

/** The making list of a draft; an empty one for a draft without pieces. `checkMaking` must have accepted the settings. */
export function makingList(draft: Draft, style: Style, settings: MakingSettings): MakingList {
  const pieces = [...draft.pieces, ...draft.extras];
  const bones = bonesOf(draft, style, settings);
  const eyelets = eyeletsFor(draft, settings);
  // Where there is a shoulder band, the panels' top edge is sewn to it, and only the band has free upper edges.
  const bands = draft.extras.filter(({ kind }) => kind === 'band');
  const upper = bands.length > 0 ? bands : draft.pieces;
  const times = timesCut(draft);
  const laceOpeningMm = eyelets.length > 0 ? laceOpeningOf(draft, style, settings) : 0;
  const top = times * edgesAlong(upper, ['top', 'armhole']);
  const hem = turnsHemUp(style) ? 0 : times * edgesAlong(draft.pieces, ['hem']);
  return {
    pieces: pieces.map((piece) => ({
      piece: identityOf(piece),
      count: piece.cut.count,
      onFold: piece.cut.onFold,
      once: isCutOnce(piece),
    })),
    layers: layersOf(settings),
    bones,
    busk: buskOf(draft, style, settings),
    casingWidthMm: casingWidth(settings.boneWidth),
    eyelets,
    fastenings: fasteningsOf(draft, style),
    laceMm: Math.max(0, ...eyelets.map((row) => laceFor(row, laceOpeningMm, settings))),
    laceOpeningMm,
    casingMm: bones.reduce(
      (sum, { count, channelMm }) => sum + count * (channelMm + settings.casingSpare),
      0,
    ),
    bindingMm: { top, hem, both: (top + hem) * (1 + settings.bindingSpare) },
    trimmed: [
      ...trimmedOf(upper, ['top', 'armhole']),
      ...(turnsHemUp(style) ? [] : trimmedOf(draft.pieces, ['hem'])),
    ],
    shouldered: upper.some(({ edges }) => edges.some(({ role }) => role === 'shoulder')),
    tapeMm: waistTapeFor(draft, settings),
    waistSeam: waistSeamOf(draft, style),
    cloth: pieces.length > 0 ? clothFor(pieces, settings) : [],
  };
}

/** Total length of the free edges of these roles, mm. */
function edgesAlong(pieces: readonly Piece[], roles: readonly Edge['role'][]): number {
  let length = 0;
  for (const { edges } of pieces)
    for (const { role, mate, points } of edges)
      if (roles.includes(role) && mate === null) length += polylineLength(points);
  return length;
}

/**
 * Length of lace for two rows laced crosswise, mm, with the edges as far apart as for putting the garment on: two slants between
 * neighbours, one bar across at each end, and the loops and ends. Common practice, no source.
 */
function laceFor({ fromTop }: EyeletRow, openingMm: number, settings: MakingSettings): number {
  const across = openingMm + 2 * settings.eyeletInset;
  let length = 2 * across + settings.laceEnds;
  for (let i = 1; i < fromTop.length; i += 1)
    length += 2 * Math.hypot(across, (fromTop[i] as number) - (fromTop[i - 1] as number));
  return length;
}

/**
 * How far apart laced edges stand for putting the garment on, mm: with another opening so far that it closes round the body without
 * strain at every level; without one so far that the narrowest level passes over the widest part of the body. Two lacings share it.
 * At least what the settings say. Common practice, no source.
 */
function laceOpeningOf({ proof, laced }: Draft, { closure }: Style, settings: MakingSettings): number {
  const rows = proof.ledger.filter(({ targetGirth }) => targetGirth > 0);
  const sewn = rows.flatMap((row) => {
    const cloth = finishedCloth(row);
    return cloth === null ? [] : [{ bodyGirth: row.bodyGirth, cloth }];
  });
  const opens =
    closure.sideZip === true ||
    [closure.front, closure.back].some((each) => each === 'busk' || each === 'hooks' || each === 'zip');
  const widest = Math.max(0, ...rows.map(({ bodyGirth }) => bodyGirth));
  const wanted = sewn.map(({ bodyGirth, cloth }) => (opens ? bodyGirth : widest) - cloth);
  return Math.max(settings.laceOpening, Math.max(0, ...wanted) / Math.max(1, laced.length));
}

/** The allowances of free edges of these roles, each edge and allowance once; none where there is no allowance. */
function trimmedOf(pieces: readonly Piece[], roles: readonly Edge['role'][]): MakingList['trimmed'] {
  const found = pieces.flatMap((piece) =>
    piece.edges
      .filter(({ role, mate, allowance }) => roles.includes(role) && mate === null && allowance > 0)
      .map((edge) => ({ edge: edgeName(edge, piece), allowanceMm: edge.allowance })),
  );
  return found.filter(
    (each, i) =>
      found.findIndex(
        (other) => other.edge === each.edge && Math.abs(other.allowanceMm - each.allowanceMm) < 1e-6,
      ) === i,
  );
}

/** Length of waist tape, mm: the sewn waist and the turned ends; 0 where the garment does not reach the waist all round. */
function waistTapeFor({ proof }: Draft, settings: MakingSettings): number {
  const waist = proof.ledger.find(({ level }) => level === 'waist');
  const cloth = waist ? finishedCloth(waist) : null;
  return cloth === null ? 0 : cloth + settings.tapeEnds;
}
