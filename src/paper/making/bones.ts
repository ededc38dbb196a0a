// Where bones run, how long their channels are on the finished pieces, and what length to buy.

import {
  type Draft,
  identityOf,
  type PieceIdentity,
  type Point,
  polylineLength,
  type Style,
} from '../../engine';
import { belowHeight } from '../geometry/belowHeight';
import { offsetEdge } from '../geometry/offsetEdge';
import { centreEdges, lacedEdges } from './lacedEdges';
import type { MakingSettings } from './settings';

/** Where a bone runs; `piece` or `pieces` say on what. */
type BonePlace =
  | { readonly kind: 'seam'; readonly pieces: readonly [PieceIdentity, PieceIdentity] }
  | { readonly kind: 'centreFront'; readonly piece: PieceIdentity }
  | { readonly kind: 'lacing'; readonly piece: PieceIdentity; readonly beside: 'edge' | 'eyelets' };

export interface Bone {
  readonly place: BonePlace;
  /** How many the whole garment takes. */
  readonly count: number;
  /** From sewn edge to sewn edge, mm. */
  readonly channelMm: number;
  /** Whether its upper end is not that of its seam or edge but the over-bust line, above which nothing is boned. */
  readonly stopped: boolean;
  /** What to buy, a whole number of steps; null where the channel is too short for any. mm */
  readonly lengthMm: number | null;
}

export interface Busk {
  /** The straight front edge from sewn edge to sewn edge, mm. */
  readonly edgeMm: number;
  readonly lengthMm: number | null;
}

/** A seam shorter than this, or more level than upright, takes no bone (a strap, a band). Common practice, no source. mm */
const LEAST_CHANNEL_MM = 60;

/** A line cut off by less is not worth a word: its end lies on the over-bust line. mm */
const STOPPED_MM = 1;

/** How many times the garment has what the draft has once: for left and right, but where each is drafted for itself. */
export const timesCut = ({ halves }: Draft): number => (halves ? 1 : 2);

/** All bones from centre front round to centre back. On a shouldered block they end at the over-bust line. */
export function bonesOf(draft: Draft, style: Style, settings: MakingSettings): Bone[] {
  const bone = (place: BonePlace, count: number, piece: PieceIdentity, line: readonly Point[]): Bone[] => {
    const channelMm = polylineLength(belowHeight(line, highestBone(draft, piece)));
    const stopped = polylineLength(line) - channelMm > STOPPED_MM;
    return count > 0 && channelMm >= LEAST_CHANNEL_MM
      ? [{ place, count, channelMm, stopped, lengthMm: boneLength(channelMm, settings) }]
      : [];
  };
  const times = timesCut(draft);
  const front =
    style.closure.front === 'busk' || style.closure.front === 'lacing'
      ? []
      : centreEdges(draft, 'front')
          // Where left and right are cut apart, they share what is at the centre.
          .slice(0, 1)
          .flatMap(({ piece, edge }) =>
            bone(
              { kind: 'centreFront', piece: identityOf(piece) },
              settings.bonesAtCentre,
              piece,
              edge.points,
            ),
          );
  const seams = draft.proof.seams.flatMap(({ seam, a, b }) => {
    // A dart ends in soft cloth; a bone in it would poke through at the point.
    if (seam.kind === 'dart' || seam.kind === 'centre') return [];
    const edge = draft.pieces.find((piece) => piece.id === a.piece.id)?.edges[a.edge];
    if (edge?.role !== 'seam' || !isUpright(edge.points)) return [];
    const place = { kind: 'seam', pieces: [a.piece, b.piece] } as const;
    return bone(place, times * settings.bonesOnSeam, a.piece, edge.points);
  });
  const lacing = lacedEdges(draft).flatMap(({ piece, edge }) =>
    lacingPlaces(settings)
      .slice(0, settings.bonesAtLacing)
      .flatMap(({ beside, awayMm }) => {
        const line = offsetEdge(piece, edge, awayMm) ?? edge.points;
        return bone({ kind: 'lacing', piece: identityOf(piece), beside }, times, piece, line);
      }),
  );
  return [...front, ...seams, ...lacing];
}

/**
 * No bone of a piece reaches above this, mm below the shoulder level: over the chest and shoulder a shouldered block must
 * give, and a bone would stand off it (common practice, no source). A strapless one is boned up to its top edge.
 */
function highestBone({ pieces, levels, halves }: Draft, { side }: PieceIdentity): number {
  const shouldered = pieces.some(({ edges }) => edges.some(({ role }) => role === 'shoulder'));
  if (!shouldered) return Number.NEGATIVE_INFINITY;
  const own = side && halves ? halves[side].levels : levels;
  return own.find(({ name }) => name === 'overBust')?.y ?? Number.NEGATIVE_INFINITY;
}

/** The busk of a draft that closes with one; null where it does not. */
export function buskOf(draft: Draft, style: Style, settings: MakingSettings): Busk | null {
  const [centre] = style.closure.front === 'busk' ? centreEdges(draft, 'front') : [];
  if (!centre) return null;
  const edgeMm = polylineLength(centre.edge.points);
  return { edgeMm, lengthMm: roundedDown(edgeMm - shorterBy(settings), settings.buskStep) };
}

/**
 * The length to buy for a channel, mm: channel less what the rule takes off, rounded down to a step in which bones are
 * sold; null where nothing is left.
 */
export function boneLength(channelMm: number, settings: MakingSettings): number | null {
  return roundedDown(channelMm - shorterBy(settings), settings.boneStep);
}

/**
 * Between bindings: 1/2 in shorter than their distance (McCunn). By the channel: 3 cm shorter (a maker's published page).
 * Both figures are the defaults of the settings.
 */
const shorterBy = (settings: MakingSettings): number =>
  settings.rule === 'betweenBindings'
    ? 2 * settings.bindingDepth + settings.bindingsSlack
    : settings.channelSlack;

/** A hair is forgiven, so that a length on the step is not taken for one below it. */
function roundedDown(mm: number, stepMm: number): number | null {
  const steps = Math.floor(mm / stepMm + 1e-6);
  return steps > 0 ? steps * stepMm : null;
}

/** Casing widths that are published for a width of bone, inches: 1/4 takes 3/8, 3/8 takes 7/16. */
const QUARTER = { bone: 6.35, casing: 9.525 } as const;
const THREE_EIGHTHS = { bone: 9.525, casing: 11.1125 } as const;

/**
 * How wide to sew the channel of a bone, mm: the published widths, in proportion between them; narrower bones take as
 * much more as the narrow one, wider ones as the wide one (common practice, no source).
 */
export function casingWidth(boneWidthMm: number): number {
  const t = (boneWidthMm - QUARTER.bone) / (THREE_EIGHTHS.bone - QUARTER.bone);
  const part = Math.min(1, Math.max(0, t));
  const roomier = QUARTER.casing - QUARTER.bone;
  return boneWidthMm + roomier + part * (THREE_EIGHTHS.casing - THREE_EIGHTHS.bone - roomier);
}

/** One bone between edge and eyelets, one on their other side, each in its channel with the eyelets between. */
export function lacingPlaces(
  settings: MakingSettings,
): { readonly beside: 'edge' | 'eyelets'; readonly awayMm: number }[] {
  const half = casingWidth(settings.boneWidth) / 2;
  return [
    { beside: 'edge', awayMm: half },
    { beside: 'eyelets', awayMm: settings.eyeletInset + half + EYELET_ROOM_MM },
  ];
}

/** From the centre of an eyelet to the channel beyond it; common practice, no source. mm */
const EYELET_ROOM_MM = 5;

function isUpright(points: readonly Point[]): boolean {
  const [first, last] = [points[0], points[points.length - 1]];
  return !!first && !!last && Math.abs(last.y - first.y) > Math.abs(last.x - first.x);
}
