// The handles that bend the axis of a wedge: one at each level it crosses. The axis of a closed dart is straight and has one at
// each point.

import { keepAxis, pointX, setStationAt, slantDart, straightenAt } from '../../document';
import {
  type Block,
  type Draft,
  type DraftedWedge,
  type Level,
  type Style,
  stationOf,
  xAt,
} from '../../engine';
import { type CanvasLayout, directionOf, onCanvas } from '../layout/layOut';
import type { Handle } from './handle';

/** Drafts another style for the same body. */
export type Redraft = (style: Style) => Draft;

/** The least distance of an axis from the centre line, mm. */
const CLEAR_MM = 16;

/**
 * The handles of one wedge; none where it lies on the centre line.
 *
 * @param crossed the levels between top edge and hem at which the wedge can have intake
 */
export function bendHandles(
  wedge: DraftedWedge,
  block: Block,
  crossed: readonly Level[],
  draft: Draft,
  layout: CanvasLayout,
  redraft: Redraft,
): Handle[] {
  if (wedge.onCentre) return [];
  const shared = {
    kind: 'bend',
    wedge: wedge.id,
    block: block.name,
    node: null,
    least: CLEAR_MM,
    gain: { x: directionOf(block.name), y: 0 },
  } as const;
  const { upper, lower } = wedge.extent;
  if (upper !== null && lower !== null)
    return (['upper', 'lower'] as const).map((end): Handle => {
      const y = end === 'upper' ? upper : lower;
      const x = pointX(draft, wedge.id, end) ?? 0;
      return {
        ...shared,
        id: `bend:${wedge.id}:${end}`,
        level: null,
        which: end,
        at: onCanvas(layout, block.name, { x, y }),
        value: x,
        most: xAt(block.sideSeam, y),
        set: (before, value) => slantDart(before, wedge.id, end, value, redraft),
      };
    });
  return crossed.map((level): Handle => {
    const width = block.width.get(level.name) ?? 0;
    const x = xAt(wedge.axis, level.y);
    const straight = wedge.unbent.get(level.name) ?? x;
    return {
      ...shared,
      id: `bend:${wedge.id}:${level.name}`,
      level: level.name,
      which: null,
      at: onCanvas(layout, block.name, { x, y: level.y }),
      value: x,
      most: width,
      set: (before, value) =>
        Math.abs(value - straight) < STRAIGHT_MM
          ? straightenAt(before, wedge.id, level.name)
          : keepAxis(
              setStationAt(before, wedge.id, level.name, stationOf(value, block.bustLine, width)),
              { wedge, block, levels: draft.levels },
              value - x,
              level.name,
            ),
    };
  });
}

/** An axis nearer than this to its straight position is set straight. mm */
const STRAIGHT_MM = 0.01;
