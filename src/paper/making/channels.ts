// The channels of the bones as they lie on the panels.

import { type Draft, distanceToChord, type Point, polylineLength, type Style } from '../../engine';
import { belowHeight } from '../geometry/belowHeight';
import { offsetEdge, pointAt } from '../geometry/offsetEdge';
import { type Bone, bonesOf, casingWidth, highestBone, lacingPlaces } from './bones';
import type { MakingSettings } from './settings';

/** What of a channel lies on one panel, in the coordinates of its block. */
export interface Channel {
  /** Id of the panel. */
  readonly piece: string;
  /** Its long sides, from the lower end up; without the side that is the sew line itself. */
  readonly sides: readonly (readonly Point[])[];
  /** Lines across it at both ends of the bone; none where it is too short for a bone. */
  readonly ends: readonly (readonly [Point, Point])[];
}

/**
 * The channels of all bones, in the order of the bones. A channel on a seam lies half on either mate, and so does one at centre
 * front; with two bones on a seam each mate has a whole one.
 */
export function channelsOf(draft: Draft, style: Style, settings: MakingSettings): Channel[] {
  return bonesOf(draft, style, settings).flatMap((bone) => {
    const [fromMm, toMm] = reachOf(bone, settings);
    return bone.along.flatMap(({ piece, edge }): Channel[] => {
      const highest = highestBone(draft, piece);
      const [near, far] = [fromMm, toMm].map((awayMm) => {
        const line = awayMm === 0 ? edge.points : offsetEdge(piece, edge, awayMm);
        return line ? thinned(belowHeight(line, highest)) : [];
      }) as [readonly Point[], readonly Point[]];
      if (near.length < 2 || far.length < 2) return [];
      return [{ piece: piece.id, sides: fromMm === 0 ? [far] : [near, far], ends: endsOf(bone, near, far) }];
    });
  });
}

/** From where to where a bone's channel reaches on a panel, mm inside its edge. */
function reachOf({ place }: Bone, settings: MakingSettings): [from: number, to: number] {
  const width = casingWidth(settings.boneWidth);
  if (place.kind === 'lacing') {
    const middle = lacingPlaces(settings).find(({ beside }) => beside === place.beside)?.awayMm ?? 0;
    return [Math.max(0, middle - width / 2), middle + width / 2];
  }
  const bones = place.kind === 'seam' ? settings.bonesOnSeam : settings.bonesAtCentre;
  return [0, (bones * width) / 2];
}

/** The ends of the bone, which lies in the middle of its channel. */
function endsOf(
  { channelMm, lengthMm }: Bone,
  near: readonly Point[],
  far: readonly Point[],
): Channel['ends'] {
  if (lengthMm === null) return [];
  const fraction = (channelMm - lengthMm) / 2 / channelMm;
  return [fraction, 1 - fraction].map((at): [Point, Point] => [
    pointAt(near, at * polylineLength(near)),
    pointAt(far, at * polylineLength(far)),
  ]);
}

/** A drawn channel is this near to the true one: a tenth of the width of its line. mm */
const DRAWN_MM = 0.02;

/** A line of fewer points, none of those left out farther from it than {@link DRAWN_MM} (Ramer, Douglas and Peucker). */
function thinned(points: readonly Point[]): readonly Point[] {
  const [first, last] = [points[0], points[points.length - 1]];
  if (!first || !last || points.length < 3) return points;
  let [farthest, at] = [0, 0];
  for (let i = 1; i < points.length - 1; i += 1) {
    const away = distanceToChord(points[i] as Point, first, last);
    if (away > farthest) [farthest, at] = [away, i];
  }
  if (farthest <= DRAWN_MM) return [first, last];
  return [...thinned(points.slice(0, at + 1)).slice(0, -1), ...thinned(points.slice(at))];
}
