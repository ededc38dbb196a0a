// Where wedges end in neckline, shoulder and armhole: which wedges do, at which place of the sewn edges, and what they take there.

import type { Body } from '../../body/body';
import { cubicsLength, cutCubics, type Heading } from '../../geometry/cubicLength';
import { between, type Point } from '../../geometry/point';
import { halfOpenAt } from '../../style/openings';
import type { Shoulders, Style } from '../../style/style';
import type { UpperEdge, Wedge } from '../../style/wedgeFields';
import { isDart } from '../../style/wedgeKind';
import { type Issue, issue } from '../../terms/issue';
import type { BlockName } from '../../terms/names';
import { inches } from '../../terms/units';
import { dartAngle } from '../lines/closedDart';
import type { Level } from '../lines/levels';
import { bustDartAngle, coneAngle } from './bustDart';
import { type AskedEnd, armholeCurve, backNeckOf, necklineCurve, type ShoulderFrame } from './shoulderFrame';
import type { FrontAndBack } from './shoulderLine';
import { DRAFTED_AT, opensInSide } from './sideDart';

/** A wedge with the place where it ends. */
interface EndingWedge {
  readonly wedge: Wedge;
  readonly at: PlaceAbove;
}

interface PlaceAbove {
  readonly edge: UpperEdge;
  readonly part: number;
}

const MIDDLE: PlaceAbove = { edge: 'shoulder', part: 0.5 };

/** Wedges that run up past the over-bust line, from the bust-point line outwards, of two as far the one that parts panels first. */
const upwardWedges = (style: Style, block: BlockName): Wedge[] =>
  style.wedges
    .filter((wedge) => wedge.block === block && wedge.station > -1 && !wedge.upper)
    .sort((a, b) => Math.abs(a.station) - Math.abs(b.station) || Number(isDart(a)) - Number(isDart(b)));

/** Edges in their order from the centre towards the side. */
const ORDER = ['neckline', 'shoulder', 'armhole'] as const satisfies readonly UpperEdge[];

const rankOf = ({ at }: EndingWedge): number => ORDER.indexOf(at.edge) + at.part;

/** Two wedges nearer than this in one edge, as a part of it, would leave no panel between them. */
const LEAST_PART_APART = 0.15;

/**
 * The wedges of a block that end above, from the centre towards the side. The one nearest to the bust-point line ends at
 * mid-shoulder where it does not say; another that does not say, that is a dart, or whose end does not lie between its
 * neighbours', is refused.
 */
export function endingWedges(style: Style, block: BlockName): { ending: EndingWedge[]; issues: Issue[] } {
  const upward = upwardWedges(style, block);
  const [main] = upward;
  const first = upward.find((wedge) => !isDart(wedge)) ?? main;
  const issues: Issue[] = [];
  const refuse = ({ id }: Wedge): void => {
    issues.push(issue('shoulderWedges', {}, { block, wedge: id }));
  };
  const ending: EndingWedge[] = [];
  for (const wedge of upward) {
    const asked = wedge.endsAt ?? (wedge === first ? MIDDLE : { edge: 'side', part: 0 });
    const { edge, part } = opensInSide(wedge, upward) ? DRAFTED_AT : asked;
    if (edge === 'side' || (isDart(wedge) && wedge !== main)) refuse(wedge);
    else ending.push({ wedge, at: { edge, part } });
  }
  ending.sort((a, b) => a.wedge.station - b.wedge.station || (a.wedge.id < b.wedge.id ? -1 : 1));
  for (const [i, each] of ending.entries()) {
    const before = ending[i - 1];
    if (before && rankOf(each) < rankOf(before) + LEAST_PART_APART) refuse(each.wedge);
  }
  return { ending, issues };
}

/** Nearer than this to an end of its edge no wedge ends. mm */
const CLEAR_MM = 15;

/** Front and back wedges nearer than this along the shoulder, as a part of it, meet there. */
const MEETING_PART = 0.13;

/** What the back wedge takes where the style does not say: from memory. mm */
const USUAL_BACK_INTAKE_MM = inches(0.25);

/** The ends of both blocks' wedges, from the centre towards the side. */
export function askedEnds(
  body: Body,
  style: Style,
  shoulders: Shoulders,
  levels: readonly Level[],
  frames: FrontAndBack<ShoulderFrame>,
): FrontAndBack<readonly AskedEnd[]> {
  const of = (block: BlockName, meet: readonly AskedEnd[]): AskedEnd[] => {
    const { ending } = endingWedges(style, block);
    const main = [...ending].sort((a, b) => Math.abs(a.wedge.station) - Math.abs(b.wedge.station))[0];
    return ending.map((each): AskedEnd => {
      const { edge } = each.at;
      const meeting =
        edge === 'shoulder'
          ? meet.find((other) => other.edge === edge && Math.abs(other.part - each.at.part) < MEETING_PART)
          : undefined;
      const { part, sewn } = placeIn(frames[block], edge, each.at.part, meeting?.part ?? null);
      const intake =
        each === main ? mainIntake(each.wedge, body, style, shoulders, levels, sewn.point) : null;
      return { wedge: each.wedge.id, isDart: isDart(each.wedge), edge, part, sewn, intake };
    });
  };
  const front = of('front', []);
  return { front, back: of('back', front) };
}

/** A place on a sewn edge, kept clear of its ends; that of the other block's wedge where they meet. */
function placeIn(
  frame: ShoulderFrame,
  edge: UpperEdge,
  asked: number,
  meeting: number | null,
): { part: number; sewn: Heading } {
  const { neck, tip, angle } = frame;
  if (edge === 'shoulder') {
    const part = meeting ?? heldPart(asked, Math.hypot(tip.x - neck.x, tip.y - neck.y));
    return { part, sewn: { point: between(neck, tip, part), angle } };
  }
  const curve =
    edge === 'neckline'
      ? [necklineCurve(frame.centre, neck, angle)]
      : armholeCurve(frame.block, { point: tip, angle }, inwardPoint(frame, tip), frame.underarm, 0);
  const part = heldPart(asked, cubicsLength(curve));
  return { part, sewn: cutCubics(curve, part).at };
}

const heldPart = (part: number, length: number): number => {
  const clear = Math.min(0.4, CLEAR_MM / length);
  return Math.min(1 - clear, Math.max(clear, part));
};

/** The inward point of a sewn armhole below a tip. */
const inwardPoint = ({ inward, underarm }: ShoulderFrame, tip: Point): Point => ({
  x: inward,
  y: (tip.y + underarm.y) / 2,
});

/** What a dart sized by hand opens to at a height, mm: its legs are straight from its point; undefined where no level says. */
function byHandAt(y: number, wedge: Wedge, levels: readonly Level[]): number | undefined {
  const { lower } = wedge;
  const from = levels.find(({ name }) => name === lower?.from);
  if (wedge.sizing !== 'manual' || !lower || !from) return undefined;
  const point = from.y + lower.below;
  const level = levels.find((each) => each.y < point && each.y > y && wedge.intake[each.name] !== undefined);
  return level && ((wedge.intake[level.name] ?? 0) * (point - y)) / (point - level.y);
}

/** A leg of the bust dart leans no more than this, so that it still runs up; of one within a panel, whose legs are straight. rad */
const [MOST_LEAN_RAD, MOST_DART_LEAN_RAD] = [(58 * Math.PI) / 180, (74 * Math.PI) / 180];

/**
 * What the wedge nearest to the bust-point line takes where it ends, level, mm. The front's is a dart from the bust point. Where
 * the style does not say how wide it is from leg to leg, its angle is that of the bust dart.
 */
function mainIntake(
  wedge: Wedge,
  body: Body,
  style: Style,
  shoulders: Shoulders,
  levels: readonly Level[],
  at: Point,
): number {
  const byHand = byHandAt(at.y, wedge, levels);
  if (byHand !== undefined) return byHand;
  const set = shoulders.intake?.[wedge.block];
  if (wedge.block === 'back') return set ?? USUAL_BACK_INTAKE_MM;
  const x = body.bustPointWidth / 2 - halfOpenAt('front', style.closure);
  const height = body.neckToBust - at.y;
  if (height <= 0) return set ?? 0;
  const leg = Math.hypot(at.x - x, height);
  const side = (levels.find(({ name }) => name === 'bust')?.net.front ?? 0) - x;
  const inner = Math.atan2(at.x - x, height);
  const most = isDart(wedge) ? MOST_DART_LEAN_RAD : MOST_LEAN_RAD;
  const openBy = (angle: number): number =>
    Math.max(0, height * (Math.tan(Math.min(most, inner + angle)) - Math.tan(inner)));
  // A dart that is turned into the side seam is as wide there as it is set, measured at the bust line.
  const reach = wedge.endsAt?.edge === 'side' ? side : leg;
  if (set !== undefined) return openBy(dartAngle(Math.min(set, 2 * reach), reach));
  let intake = 0;
  // What a wedge sized by hand was asked for hangs on how wide it opens, and that on what it was asked for.
  for (let round = 0; round < (wedge.sizing === 'manual' ? ROUNDS : 1); round += 1) {
    const atBust = wedge.intake.bust ?? 0;
    const opening = intake;
    const straightAt = (y: number): number => atBust + ((opening - atBust) * (body.neckToBust - y)) / height;
    const cone = coneAngle(wedge, style, body, levels, straightAt);
    intake = openBy(bustDartAngle(backNeckOf(body, shoulders), side, cone));
  }
  return intake;
}

/** So often is the opening of a wedge sized by hand reckoned again from what it then was asked for; the changes fall fast. */
const ROUNDS = 12;
