// Places of bones, lengths of their channels on the finished pieces, and the lengths to buy.

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
import { centreEdges, lacedEdges, type PieceEdge } from './lacedEdges';
import type { MakingSettings } from './settings';

/** The seam or edge that a bone runs along, with the pieces it is on. */
type BonePlace =
  | { readonly kind: 'seam'; readonly pieces: readonly [PieceIdentity, PieceIdentity] }
  | { readonly kind: 'centreFront'; readonly piece: PieceIdentity }
  | { readonly kind: 'lacing'; readonly piece: PieceIdentity; readonly beside: 'edge' | 'eyelets' };

export interface Bone {
  readonly place: BonePlace;
  /** The edges of the draft that it runs along: both mates of a seam, each centre front edge, one laced edge. */
  readonly along: readonly PieceEdge[];
  /** Bones of this kind in the whole garment. */
  readonly count: number;
  /** Length of the channel from sewn edge to sewn edge, mm. */
  readonly channelMm: number;
  /** True where it ends at the over-bust line, below the end of its seam or edge. */
  readonly stopped: boolean;
  /** Length to buy, a multiple of `boneStep`; null where the channel is too short for any. mm */
  readonly lengthMm: number | null;
}

export interface Busk {
  /** Length of the straight front edge from sewn edge to sewn edge, mm. */
  readonly edgeMm: number;
  readonly lengthMm: number | null;
}

/** A seam shorter than this takes no bone, nor does one that is more level than upright. Common practice, no source. mm */
const LEAST_CHANNEL_MM = 60;

/** A channel shortened by less than this is not reported as stopped. mm */
const STOPPED_MM = 1;

/** How many times the garment has each part of the draft: 2, for left and right; 1 where each is drafted by itself. */
export const timesCut = ({ halves }: Draft): number => (halves ? 1 : 2);

/** All bones of the garment. On a shouldered block they end at the over-bust line. */
export function bonesOf(draft: Draft, style: Style, settings: MakingSettings): Bone[] {
  const bone = (
    place: BonePlace,
    along: readonly PieceEdge[],
    count: number,
    line: readonly Point[],
  ): Bone[] => {
    const [first] = along;
    if (!first) return [];
    const channelMm = polylineLength(belowHeight(line, highestBone(draft, first.piece)));
    const stopped = polylineLength(line) - channelMm > STOPPED_MM;
    return count > 0 && channelMm >= LEAST_CHANNEL_MM
      ? [{ place, along, count, channelMm, stopped, lengthMm: boneLength(channelMm, settings) }]
      : [];
  };
  const times = timesCut(draft);
  const centres =
    style.closure.front === 'busk' || style.closure.front === 'lacing' ? [] : centreEdges(draft, 'front');
  // Left and right share the bones at the centre, also where they are drafted apart.
  const front = centres
    .slice(0, 1)
    .flatMap(({ piece, edge }) =>
      bone({ kind: 'centreFront', piece: identityOf(piece) }, centres, settings.bonesAtCentre, edge.points),
    );
  const seams = draft.proof.seams.flatMap(({ seam, a, b }) => {
    // A bone in a dart would pierce the cloth at its point.
    if (seam.kind === 'dart' || seam.kind === 'centre') return [];
    // A bone in the side seam ends below a dart that opens there.
    if (seam.kind === 'sideSeam' && seam.part === 'aboveDart') return [];
    const mates = [a, b].flatMap((mate): PieceEdge[] => {
      const piece = draft.pieces.find(({ id }) => id === mate.piece.id);
      const edge = piece?.edges[mate.edge];
      return piece && edge ? [{ piece, edge }] : [];
    });
    const edge = mates[0]?.edge;
    if (edge?.role !== 'seam' || !isUpright(edge.points)) return [];
    const place = { kind: 'seam', pieces: [a.piece, b.piece] } as const;
    return bone(place, mates, times * settings.bonesOnSeam, edge.points);
  });
  const lacing = lacedEdges(draft).flatMap(({ piece, edge }) =>
    lacingPlaces(settings)
      .slice(0, settings.bonesAtLacing)
      .flatMap(({ beside, awayMm }) => {
        const line = offsetEdge(piece, edge, awayMm) ?? edge.points;
        const place = { kind: 'lacing', piece: identityOf(piece), beside } as const;
        return bone(place, [{ piece, edge }], times, line);
      }),
  );
  return [...front, ...seams, ...lacing];
}

/**
 * Height above which no bone of a piece reaches, mm below the shoulder level. A shouldered block must give over chest and
 * shoulder, where a bone would stand off the body (common practice, no source). A strapless one is boned up to its top edge: −∞.
 */
export function highestBone({ pieces, levels, halves }: Draft, { side }: PieceIdentity): number {
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
 * The length to buy for a channel, mm: the channel less the deduction of the rule, rounded down to the step in which bones are
 * sold; null where nothing is left.
 */
export function boneLength(channelMm: number, settings: MakingSettings): number | null {
  return roundedDown(channelMm - shorterBy(settings), settings.boneStep);
}

/**
 * How much shorter than its channel a bone is, mm. Between bindings it is 1/2 in shorter than their distance (McCunn); by the
 * channel it is 3 cm shorter (a maker's published page). Both figures are the defaults of the settings.
 */
const shorterBy = (settings: MakingSettings): number =>
  settings.rule === 'betweenBindings'
    ? 2 * settings.bindingDepth + settings.bindingsSlack
    : settings.channelSlack;

/** A length rounded down to a step, mm; null below one step. Tolerance: 1e-6 of a step. */
function roundedDown(mm: number, stepMm: number): number | null {
  const steps = Math.floor(mm / stepMm + 1e-6);
  return steps > 0 ? steps * stepMm : null;
}

/** Published widths of casing for bones of 1/4 in (3/8 in) and 3/8 in (7/16 in). mm */
const QUARTER = { bone: 6.35, casing: 9.525 } as const;
const THREE_EIGHTHS = { bone: 9.525, casing: 11.1125 } as const;

/**
 * Sewn width of the channel of a bone, mm: interpolated between the published widths. Narrower and wider bones take as much more
 * than their own width as the nearer published one (common practice, no source).
 */
export function casingWidth(boneWidthMm: number): number {
  const t = (boneWidthMm - QUARTER.bone) / (THREE_EIGHTHS.bone - QUARTER.bone);
  const part = Math.min(1, Math.max(0, t));
  const roomier = QUARTER.casing - QUARTER.bone;
  return boneWidthMm + roomier + part * (THREE_EIGHTHS.casing - THREE_EIGHTHS.bone - roomier);
}

/**
 * The two channels of a laced edge: one between edge and eyelets, one beyond the eyelets; distances of their middles from the
 * edge.
 */
export function lacingPlaces(
  settings: MakingSettings,
): { readonly beside: 'edge' | 'eyelets'; readonly awayMm: number }[] {
  const half = casingWidth(settings.boneWidth) / 2;
  return [
    { beside: 'edge', awayMm: half },
    { beside: 'eyelets', awayMm: settings.eyeletInset + settings.eyeletFlange / 2 + half },
  ];
}

/** The least distance from the edge at which the flanges of eyelets lie clear of the channel along it, mm. */
export const leastEyeletInset = (settings: MakingSettings): number =>
  (settings.bonesAtLacing > 0 ? casingWidth(settings.boneWidth) : 0) + settings.eyeletFlange / 2;

function isUpright(points: readonly Point[]): boolean {
  const [first, last] = [points[0], points[points.length - 1]];
  return !!first && !!last && Math.abs(last.y - first.y) > Math.abs(last.x - first.x);
}
