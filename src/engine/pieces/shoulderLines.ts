// What a panel of a shouldered block has instead of a top edge: neckline, shoulder line and armhole, from the centre to the side.

import type { ShoulderFrame } from '../block/shoulders';
import type { EdgeEnd } from '../edges/edgePoints';
import type { Cubic } from '../geometry/cubic';
import type { Point } from '../geometry/point';
import { pointsAlong } from '../geometry/polyline';
import { xAt } from '../geometry/smoothLine';
import type { Panel } from '../panels/panel';
import type { ShoulderPart } from '../terms/identity';
import type { BlockName } from '../terms/names';
import type { EdgeRow } from './edgeRow';

/** How a panel meets the shoulder. */
export interface PanelShoulder {
  readonly frame: ShoulderFrame;
  /** The panel reaches the side; else a wedge parts the shoulder at its outer edge. */
  readonly last: boolean;
  /** A wedge runs up to the shoulder, on this block or on the other: the seam is then made of two halves. */
  readonly halved: boolean;
}

/** Rows from the panel's inner edge to its outer; `ends` are where its legs end, as trued. */
export function shoulderRows(
  panel: Panel,
  { frame, last, halved }: PanelShoulder,
  [inner, outer]: readonly [EdgeEnd, EdgeEnd],
): EdgeRow[] {
  const first = panel.number === 1;
  const straight = (shoulder: ShoulderPart, from: Point, to: Point): EdgeRow => ({
    role: 'shoulder',
    shoulder,
    points: [from, to],
    sewnDistance: null,
  });
  if (first && last) {
    const across = (part: Point): Point => ({ x: part.x + xAt(panel.inner, part.y), y: part.y });
    const [neck, middle, tip] = [across(frame.neck), across(frame.middle), across(frame.tip)];
    return [
      necklineRow(inner, neck, frame.slope),
      ...(halved
        ? [straight('neck', neck, middle), straight('tip', middle, tip)]
        : [straight('whole', neck, tip)]),
      armholeRow(tip, frame, frame.slope, outer),
    ];
  }
  // The shoulder runs straight across the sewn wedge: from its end on the leg, turned as truing asks, half the seam's length.
  if (first) {
    const neck = along(outer, -frame.half);
    return [necklineRow(inner, neck, outer.slope), straight('neck', neck, outer.point)];
  }
  const tip = along(inner, frame.half);
  return [straight('tip', inner.point, tip), armholeRow(tip, frame, inner.slope, outer)];
}

/** How each panel meets the shoulder, by its id, when both blocks have one. */
export function panelShoulders(
  panels: readonly Panel[],
  frames: Readonly<Record<BlockName, ShoulderFrame>>,
): Map<string, PanelShoulder> {
  const of = (block: BlockName): Panel[] => panels.filter((panel) => panel.block === block);
  const halved = [of('front'), of('back')].some((block) => block.some(({ number }) => number > 1));
  return new Map(
    panels.map((panel) => {
      const last = panel.number > 1 || !of(panel.block).some(({ number }) => number > 1);
      return [panel.id, { frame: frames[panel.block], last, halved }];
    }),
  );
}

const along = ({ point, slope }: EdgeEnd, length: number): Point => {
  const part = length / Math.hypot(1, slope);
  return { x: point.x + part, y: point.y + slope * part };
};

/** How far a curve reaches along its two ends' directions, as a part of the way between them: near a quarter of an ellipse. */
const ROUND = 0.55;

/** A neckline that leaves the centre steeper than this is pointed. */
const POINTED = 0.5;

/** Neckline: from the centre line, which it leaves as truing asks, up to the neck point, where it meets the shoulder square. */
export function necklineRow({ point, slope }: EdgeEnd, neck: Point, shoulderSlope: number): EdgeRow {
  const [across, up] = [neck.x - point.x, point.y - neck.y];
  const length = Math.hypot(1, shoulderSlope);
  // A round neckline lies flat at the centre for most of its width; a pointed one runs straight for the neck.
  const pointed = Math.abs(slope) > POINTED;
  const [flat, rise] = pointed ? [1 / 3, 1 / 4] : [0.9, ROUND];
  const cubic: Cubic = {
    start: point,
    startHandle: { x: point.x + flat * across, y: point.y + flat * across * slope },
    // Square to the shoulder, pointing down from it.
    endHandle: {
      x: neck.x - (rise * up * shoulderSlope) / length,
      y: neck.y + (rise * up) / length,
    },
    end: neck,
  };
  return { role: 'top', points: [point, ...pointsAlong(cubic).slice(1)], sewnDistance: [0, 0] };
}

/** Armhole: from the shoulder's tip through its inward point down to the underarm. */
export function armholeRow(
  tip: Point,
  { armholeIn }: ShoulderFrame,
  shoulderSlope: number,
  { point: underarm, slope, sewnDistance }: EdgeEnd,
): EdgeRow {
  const depth = underarm.y - tip.y;
  const inward = { x: tip.x - armholeIn, y: tip.y + depth / 2 };
  const length = Math.hypot(1, shoulderSlope);
  const across = underarm.x - inward.x;
  const upper: Cubic = {
    start: tip,
    startHandle: {
      x: tip.x - ((depth / 6) * shoulderSlope) / length,
      y: tip.y + depth / 6 / length,
    },
    endHandle: { x: inward.x, y: inward.y - depth / 6 },
    end: inward,
  };
  const lower: Cubic = {
    start: inward,
    startHandle: { x: inward.x, y: inward.y + (ROUND * depth) / 2 },
    endHandle: { x: underarm.x - ROUND * across, y: underarm.y - ROUND * across * slope },
    end: underarm,
  };
  return {
    role: 'armhole',
    points: [...pointsAlong(upper), ...pointsAlong(lower).slice(1)],
    sewnDistance: [sewnDistance, sewnDistance],
  };
}
