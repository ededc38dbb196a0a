// The edges above on the flat block: where each wedge that ends in them has its end, and what lies beyond it towards the side.
// The cloth nearer the centre lies as the sewn frame has it; what lies beyond a wedge is turned with the wedge's other leg, so
// that the edges run straight on across the sewn seam.

import type { Cubic } from '../../geometry/cubic';
import { cutCubics, type Heading, laidBetween, moveAlong } from '../../geometry/cubicLength';
import { between, type Point } from '../../geometry/point';
import { heightAtLength, seamLength } from '../../geometry/seamLength';
import { slopeAt, xAt } from '../../geometry/smoothLine';
import type { DraftedWedge } from '../lines/wedge';
import { type AskedEnd, armholeCurve, necklineCurve, type ShoulderFrame } from './shoulderFrame';

/** A wedge's end on the flat block, on its leg nearer the centre. */
export interface UpperEnd extends AskedEnd {
  readonly at: Heading;
  readonly intake: number;
}

/** The edges above on a flat block. */
export interface UpperEdges {
  readonly frame: ShoulderFrame;
  /** From the centre towards the side. */
  readonly ends: readonly UpperEnd[];
  /** The armhole's inward point as the panel nearest the centre has it, then as each panel beyond an end has it. */
  readonly inward: readonly Point[];
}

/** The ends of the wedges that part panels: the n-th lies behind the panel with number n. */
export const partingEnds = ({ ends }: Pick<UpperEdges, 'ends'>): UpperEnd[] =>
  ends.filter(({ isDart }) => !isDart);

/** The end of a dart that opens in neckline, shoulder or armhole; null where it does not. */
export const endOfDart = (upper: Pick<UpperEdges, 'ends'> | null, wedge: string): UpperEnd | null =>
  upper?.ends.find((end) => end.isDart && end.wedge === wedge) ?? null;

/** What lies from a place of the edges above to the underarm, on one panel. */
export interface RestOfEdges {
  /** From that place to the neck point; null past it. */
  readonly neckline: Cubic | null;
  /** The neck point, and the tip with the direction of the shoulder line there; null past them. */
  readonly neck: Point | null;
  readonly tip: Heading | null;
  readonly armhole: readonly Cubic[];
}

/**
 * The edges above from where a panel begins.
 *
 * @param end that of the wedge before the panel; null at the centre line
 * @param start where the panel begins there, and how its edge leaves
 * @param shift of the frame at the centre line, mm
 * @param underarm where the armhole ends, and the slope dy/dx at which it is to arrive
 */
export function edgesFrom(
  frame: ShoulderFrame,
  end: AskedEnd | null,
  start: Heading,
  shift: number,
  inward: Point,
  underarm: { readonly point: Point; readonly slope: number },
): RestOfEdges {
  const { block, neck, tip, angle } = frame;
  if (end?.edge === 'armhole') {
    const upper = armholeCurve(
      block,
      { point: tip, angle },
      { x: frame.inward, y: inward.y },
      frame.underarm,
      0,
    );
    return {
      neckline: null,
      neck: null,
      tip: null,
      armhole: restOfArmhole(upper, end, start, inward, underarm),
    };
  }
  const move = end
    ? moveAlong(end.sewn, start)
    : ({ point, angle: own }: Heading): Heading => ({
        point: { x: point.x + shift, y: point.y },
        angle: own,
      });
  const movedTip = move({ point: tip, angle });
  const armhole = armholeCurve(block, movedTip, inward, underarm.point, underarm.slope);
  if (end?.edge === 'shoulder') return { neckline: null, neck: null, tip: movedTip, armhole };
  const movedNeck = move({ point: neck, angle });
  const neckline = end
    ? laidBetween(cutCubics([necklineCurve(frame.centre, neck, angle)], end.part).after[0] as Cubic, start, {
        point: movedNeck.point,
        angle: movedNeck.angle - Math.PI / 2,
      })
    : necklineCurve(start, movedNeck.point, angle);
  return { neckline, neck: movedNeck.point, tip: movedTip, armhole };
}

/** The armhole past a wedge that ends in it: through the inward point where that lies beyond. */
function restOfArmhole(
  whole: readonly [Cubic, Cubic],
  { part }: AskedEnd,
  start: Heading,
  inward: Point,
  { point, slope }: { readonly point: Point; readonly slope: number },
): Cubic[] {
  const { after } = cutCubics(whole, part);
  const [first, second] = after;
  const arriving: Heading = { point, angle: Math.atan(slope) };
  const upright: Heading = { point: inward, angle: Math.PI / 2 };
  if (!first) return [];
  if (!second || start.point.y > inward.y - CLEAR_OF_INWARD_MM)
    return [laidBetween(second ?? first, start, arriving)];
  return [laidBetween(first, start, upright), laidBetween(second, upright, arriving)];
}

/** A wedge that ends nearer above the inward point than this goes past it without touching. mm */
const CLEAR_OF_INWARD_MM = 12;

/** The edges above while a block is drafted, from the centre outwards. */
export interface UpperProgress extends UpperEdges {
  /** What lies from the last end passed to the underarm. */
  readonly rest: RestOfEdges;
  /** Where that is, on the side of it away from the centre. */
  readonly start: Heading;
  readonly passed: readonly DraftedWedge[];
  readonly shift: number;
}

/**
 * The edges above at the centre line, before any wedge is drafted.
 *
 * @param shift how far a wedge on the centre line moves the frame out, mm
 */
export function startOfEdges(frame: ShoulderFrame, shift: number): UpperProgress {
  const { centre, tip } = frame;
  const start = { ...centre, point: { x: shift, y: centre.point.y } };
  const inward = { x: frame.inward + shift, y: (tip.y + frame.underarm.y) / 2 };
  const underarm = { point: { x: frame.underarm.x + shift, y: frame.underarm.y }, slope: 0 };
  return {
    frame,
    ends: [],
    inward: [inward],
    rest: edgesFrom(frame, null, start, shift, inward, underarm),
    start,
    passed: [],
    shift,
  };
}

/**
 * Where the next wedge ends.
 *
 * @param intakeAt what it takes at a height where the style does not say, mm
 */
export function endOn(progress: UpperProgress, asked: AskedEnd, intakeAt: (y: number) => number): UpperEnd {
  const at = headingOn(progress, asked);
  return { ...asked, at, intake: asked.intake ?? intakeAt(at.point.y) };
}

function headingOn({ rest, ends, start }: UpperProgress, asked: AskedEnd): Heading {
  const last = ends.at(-1);
  const passed = last?.edge === asked.edge ? last.part : 0;
  const part = (asked.part - passed) / (1 - passed);
  if (asked.edge === 'shoulder' && rest.tip) {
    const from = last?.edge === 'shoulder' ? start.point : rest.neck;
    if (from) return { point: between(from, rest.tip.point, part), angle: rest.tip.angle };
  }
  const curve = asked.edge === 'neckline' && rest.neckline ? [rest.neckline] : rest.armhole;
  return cutCubics(curve, part).at;
}

/**
 * The edges past a drafted wedge. Both legs are as long from the waist up, and the edges beyond are turned by the angle between
 * them.
 *
 * @param waist height that legs are measured from, mm
 */
export function pastEnd(
  progress: UpperProgress,
  end: UpperEnd,
  wedge: DraftedWedge,
  waist: number,
): UpperProgress {
  const { frame, shift } = progress;
  const passed = [...progress.passed, wedge];
  const { y } = end.at.point;
  const { innerLeg, outerLeg } = wedge;
  const longer = seamLength(innerLeg, waist, y) - seamLength(outerLeg, waist, y);
  const outerY = heightAtLength(outerLeg, y, longer);
  const turn = Math.atan(slopeAt(innerLeg, y)) - Math.atan(slopeAt(outerLeg, outerY));
  const start: Heading = { point: { x: xAt(outerLeg, outerY), y: outerY }, angle: end.at.angle + turn };
  const takenAt = (height: number): number =>
    passed.reduce((sum, each) => sum + xAt(each.outerLeg, height) - xAt(each.innerLeg, height), shift);
  const tip =
    end.edge === 'armhole' ? frame.tip : moveAlong(end.sewn, start)({ point: frame.tip, angle: 0 }).point;
  const inwardY =
    end.edge === 'armhole' ? (progress.inward.at(-1) as Point).y : (tip.y + frame.underarm.y) / 2;
  const inward = { x: frame.inward + takenAt(inwardY), y: inwardY };
  const underarm = { x: frame.underarm.x + takenAt(frame.underarm.y), y: frame.underarm.y };
  return {
    frame,
    ends: [...progress.ends, end],
    inward: [...progress.inward, inward],
    rest: edgesFrom(frame, end, start, shift, inward, { point: underarm, slope: 0 }),
    start,
    passed,
    shift,
  };
}
