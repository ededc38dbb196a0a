// The handles of a wedge: its axis, its legs at each level it crosses, and the points of a dart.

import {
  keepAxis,
  setDartPoint,
  setIntake,
  setStation,
  shoulderKind,
  wedgesBeside,
  wedgeWithId,
} from '../../document';
import {
  type Block,
  type Draft,
  type DraftedWedge,
  isDart,
  type Level,
  type PerLevel,
  reaches,
  type Style,
  stationOf,
  type Wedge,
  wedgeSpan,
  xAt,
} from '../../engine';
import { type CanvasLayout, directionOf, onCanvas } from '../layout/layOut';
import { bendHandles, type Redraft } from './bendHandles';
import { askedExtent } from './dartExtent';
import type { Handle } from './handle';
import { isSideDart, sideDartHandles } from './sideDartHandles';

/** An axis nearer to the centre line than this is put on it: the panel between could not be sewn. mm */
const LEAST_PANEL_WIDTH_MM = 16;

/** Tolerance: a level no farther than this from the top edge or the hem lies on it, and the legs end there. mm */
const EDGE_MM = 2;

/** The handles of one wedge: of its axis, then of its points, then of its legs from the top down; or of its axis and its bends. */
export function wedgeHandles(
  wedge: DraftedWedge,
  block: Block,
  draft: Draft,
  style: Style,
  layout: CanvasLayout,
  bending: Redraft | null,
): Handle[] {
  const { levels, span } = draft;
  const waist = levels.find((level) => level.name === 'waist');
  if (!span || !waist) return [];
  const asked = wedgeWithId(style, wedge.id);
  const extent = askedExtent(asked, levels);
  // Shoulders rise above the level edge that the armhole starts from, and wedges with them.
  const top = shoulderKind(style) === 'shoulders' ? span.highest : span.top;
  const crossed = levels.filter(({ y }) => y > top - EDGE_MM && y < span.hem + EDGE_MM && reaches(extent, y));
  if (!asked) return [];
  if (isSideDart(asked, style)) return sideDartHandles(asked, draft, layout);
  const axis = axisHandle(block, asked, wedge, levels, span, layout);
  if (bending) return [axis, ...bendHandles(wedge, block, crossed, draft, layout, bending)];
  return [
    axis,
    ...pointHandles(asked, wedge, draft, layout),
    ...crossed.flatMap((level) => legHandles(block, asked, wedge, level, style, layout)),
  ];
}

/** The intake of a drafted wedge at each level, mm. */
export function intakeNow(wedge: DraftedWedge): Partial<PerLevel> {
  return Object.fromEntries(wedge.intake);
}

/** The axis is pulled half way between waist and hem; its value is the distance from the centre line at the waist, mm. */
function axisHandle(
  block: Block,
  asked: Wedge,
  wedge: DraftedWedge,
  levels: readonly Level[],
  span: { top: number; hem: number; waist: number },
  layout: CanvasLayout,
): Handle {
  const y = axisHeight(wedge, span);
  const width = block.width.get('waist') ?? xAt(block.sideSeam, span.waist);
  const value = wedge.onCentre ? 0 : xAt(wedge.axis, span.waist);
  const reach = (at: number): number => (value > block.bustLine ? at - block.bustLine : block.bustLine);
  const gain = reach(width) / Math.max(1, reach(xAt(block.sideSeam, y)));
  return {
    id: `axis:${wedge.id}`,
    kind: 'axis',
    wedge: wedge.id,
    block: block.name,
    level: 'waist',
    which: null,
    node: null,
    at: onCanvas(layout, block.name, { x: xAt(wedge.axis, y), y }),
    value,
    // A dart ends within a panel, so it never comes to lie on the centre line.
    least: isDart(asked) ? LEAST_PANEL_WIDTH_MM : 0,
    firstAfterLeast: LEAST_PANEL_WIDTH_MM,
    most: width,
    gain: { x: directionOf(block.name) * gain, y: 0 },
    set: (before, at) => {
      if (at === value) return before;
      const station = stationOf(at, block.bustLine, width);
      // A bent axis keeps its shape: it moves by as much as it does at the waist.
      const moved = wedge.onCentre
        ? station
        : wedge.station + station - stationOf(value, block.bustLine, width);
      // An axis that a typed number put nearer to the centre line is put on it when it is pulled inwards.
      const isPutOnCentreLine = !isDart(asked) && at < LEAST_PANEL_WIDTH_MM && (wedge.onCentre || at < value);
      if (isPutOnCentreLine) return setStation(before, wedge.id, -1);
      const there = setStation(before, wedge.id, Math.min(1, Math.max(-0.99, moved)));
      // A wedge that leaves the centre line has no axis yet that it could keep.
      return wedge.onCentre ? there : keepAxis(there, { wedge, block, levels }, at - value);
    },
  };
}

/** Half way between waist and hem, where no level has handles; half way down a dart that does not extend so far. mm */
function axisHeight(wedge: DraftedWedge, span: { top: number; hem: number; waist: number }): number {
  const y = span.hem > span.waist + 40 ? (span.waist + span.hem) / 2 : (span.top + span.hem) / 2;
  const upper = Math.max(wedge.extent.upper ?? span.top, span.top);
  const lower = Math.min(wedge.extent.lower ?? span.hem, span.hem);
  return y > upper + CLEAR_OF_POINT_MM && y < lower - CLEAR_OF_POINT_MM ? y : (upper + lower) / 2;
}

/** The least distance of the axis handle from a point of the dart, mm. */
const CLEAR_OF_POINT_MM = 20;

/** The least length that a dart can be pulled to, mm. */
const LEAST_DART_MM = 35;
/** How far past an edge the point of a dart can be pulled, mm. */
const PAST_EDGE_MM = 20;

/** The points of a dart; the value of each is its distance below its level, mm, negative above it. */
function pointHandles(asked: Wedge, wedge: DraftedWedge, draft: Draft, layout: CanvasLayout): Handle[] {
  const { span, levels } = draft;
  const extent = askedExtent(asked, levels);
  if (!span) return [];
  return (['upper', 'lower'] as const).flatMap((which): Handle[] => {
    const point = asked[which];
    const from = levels.find(({ name }) => name === point?.from);
    const at = extent[which];
    if (!point || !from || at === null) return [];
    const [least, most] =
      which === 'upper'
        ? [span.highest - PAST_EDGE_MM, (extent.lower ?? span.lowest) - LEAST_DART_MM]
        : [(extent.upper ?? span.highest) + LEAST_DART_MM, span.lowest + PAST_EDGE_MM];
    const allowed = wedgeSpan(asked.kind, `${which}.below`);
    const end = wedge.extent[which];
    const y = Math.min(Math.max(at, layout.top + IN_VIEW_MM), layout.top + layout.height - IN_VIEW_MM);
    return [
      {
        id: `point:${wedge.id}:${which}`,
        kind: 'point',
        wedge: wedge.id,
        block: asked.block,
        level: point.from,
        which,
        node: null,
        at: onCanvas(layout, asked.block, { x: xAt(wedge.axis, y), y }),
        ...(end !== null && Math.abs(end - at) > 1
          ? { tip: onCanvas(layout, asked.block, { x: xAt(wedge.axis, end), y: end }) }
          : {}),
        value: point.below,
        least: Math.max(least - from.y, allowed[0]),
        most: Math.min(most - from.y, allowed[1]),
        gain: { x: 0, y: 1 },
        set: (before, below) => setDartPoint(before, wedge.id, which, { from: point.from, below }),
      },
    ];
  });
}

/** The handle of a point far beyond an edge lies this far inside the rim of the canvas, mm. */
const IN_VIEW_MM = 6;

function legHandles(
  block: Block,
  asked: Wedge,
  wedge: DraftedWedge,
  level: Level,
  style: Style,
  layout: CanvasLayout,
): Handle[] {
  const sides = wedge.onCentre ? (['outer'] as const) : (['inner', 'outer'] as const);
  const current = intakeNow(wedge);
  const { upper, lower } = wedge.extent;
  const [least, most] = wedgeSpan(asked.kind, 'intake');
  const reached = (upper === null || level.y >= upper) && (lower === null || level.y <= lower);
  return sides.map((which) => {
    // Beyond the point of a dart the legs coincide with the axis.
    const leg = reached ? (which === 'inner' ? wedge.innerLeg : wedge.outerLeg) : wedge.axis;
    return {
      id: `leg:${wedge.id}:${level.name}:${which}`,
      kind: 'leg',
      wedge: wedge.id,
      block: block.name,
      level: level.name,
      which,
      node: null,
      at: onCanvas(layout, block.name, { x: xAt(leg, level.y), y: level.y }),
      value: wedge.intake.get(level.name) ?? 0,
      least,
      most,
      gain: { x: directionOf(block.name) * legGain(block, wedge, style, which), y: 0 },
      set: (before, value) => setIntake(before, wedge.id, level.name, value, current),
    };
  });
}

/**
 * Change of the intake, mm, for 1 mm of a leg's travel away from the centre line. A leg moves by half the change of the intake.
 * Where no balanced wedge compensates for it, the side seam moves out too, and with it an axis beyond the bust-point line.
 */
function legGain(block: Block, wedge: DraftedWedge, style: Style, which: 'inner' | 'outer'): number {
  if (wedge.onCentre) return 1;
  const others = wedgesBeside(style, wedge.id).some(
    (other) => other.block === block.name && other.id !== wedge.id && other.sizing === 'balanced',
  );
  const carried = others ? 0 : Math.max(0, wedge.station);
  // An inner leg that hardly moves would have an unbounded gain; it is taken as for a leg at half the intake.
  if (which === 'inner') return carried < 0.25 ? -1 / (0.5 - carried) : -2;
  return 1 / (0.5 + carried);
}
