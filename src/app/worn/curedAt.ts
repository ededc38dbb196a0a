// Where what cures a place of the garment is set: a wedge at a level on Draft, the side seam in Fittings, the tape on Measure.

import {
  type BlockName,
  type Draft,
  type LevelName,
  type MeasurementName,
  partingWedges,
  type Side,
  type WornPlace,
  xAt,
} from '../../engine';

/** A level of the side seam, of one half where left and right are drafted apart. */
export interface SideSeamPlace {
  readonly level: LevelName;
  readonly side: Side | null;
}

export type CuredAt =
  | { readonly kind: 'wedge'; readonly block: BlockName; readonly wedge: string; readonly level: LevelName }
  | { readonly kind: 'sideSeam'; readonly level: LevelName }
  | { readonly kind: 'tape'; readonly measurement: MeasurementName };

/** The height of the tape that puts a level's marks where they are. */
const HEIGHTS: Readonly<Record<LevelName, MeasurementName>> = {
  overBust: 'neckToBust',
  bust: 'neckToBust',
  underBust: 'neckToUnderBust',
  waist: 'neckToWaist',
  highHip: 'neckToHip',
  hip: 'neckToHip',
};

/** Null where the draft has nothing there that can be set. */
export function curedAt(place: WornPlace, half: Draft): CuredAt | null {
  if (place.kind === 'rides') return { kind: 'tape', measurement: HEIGHTS[place.level] };
  const { level } = place;
  if (place.block === null)
    return half.proof.seams.some(({ seam }) => seam.kind === 'sideSeam') ? { kind: 'sideSeam', level } : null;
  const block = half.blocks?.[place.block];
  const y = half.levels.find(({ name }) => name === level)?.y ?? place.at?.y ?? 0;
  const away = ({ axis }: { readonly axis: Parameters<typeof xAt>[0] }): number =>
    Math.abs(xAt(axis, y) - (place.at?.x ?? 0));
  const [wedge] = [...(block ? partingWedges(block) : [])].sort((a, b) => away(a) - away(b));
  return wedge ? { kind: 'wedge', block: place.block, wedge: wedge.id, level } : null;
}
