// Everything on the cutting table that can be pulled: where it stands, which number it is, and what a pull changes.

import { setEdgeNode, setIntake, setStation } from '../document';
import {
  type Block,
  type Draft,
  type DraftedWedge,
  type EdgeNodeName,
  type EdgeNodePlace,
  type Level,
  type LevelName,
  type PerLevel,
  type Point,
  type Side,
  type Style,
  stationOf,
  xAt,
} from '../engine';
import { directionOf, onTable, type TableLayout } from './layout';

export interface Handle {
  readonly id: string;
  /** `edge`: the whole top edge or hem. `node`: one place of it. */
  readonly kind: 'axis' | 'leg' | 'edge' | 'node';
  /** The wedge it belongs to, if any. */
  readonly wedge: string | null;
  readonly block: Side | null;
  readonly level: LevelName | null;
  readonly which: 'inner' | 'outer' | 'top' | 'hem' | null;
  readonly node: EdgeNodeName | null;
  /** Where it stands, table mm. */
  readonly at: Point;
  /** The number it changes, mm, and how far it may go. */
  readonly value: number;
  readonly least: number;
  readonly most: number;
  /** Change of the value for one mm of travel on the table to the right and down. */
  readonly gain: Point;
  /** The style with the number set. */
  readonly set: (style: Style, value: number) => Style;
}

/** An axis nearer the centre line than this settles on it: the panel between could not be sewn. mm */
const SETTLE_MM = 16;

/** The most a wedge may be pulled open by hand at a level, mm. */
const MOST_INTAKE_MM = 150;

/** The most a gore may add by hand at a level, mm. */
const MOST_ADDED_MM = 100;

/** All handles of a draft: edges first, then wedge by wedge, the axis before its legs. */
export function handlesOf(draft: Draft, style: Style, layout: TableLayout): Handle[] {
  const { blocks, span } = draft;
  if (!blocks || !span) return [];
  const inside = draft.levels.filter((level) => level.y > span.top + 2 && level.y < span.hem - 2);
  const waist = draft.levels.find((level) => level.name === 'waist');
  if (!waist) return [];
  return [
    ...edgeHandles(style, span, layout),
    ...draft.nodes.map((node) => nodeHandle(node, style, layout)),
    ...(['front', 'back'] as const).flatMap((side) =>
      blocks[side].wedges.flatMap((wedge) => [
        axisHandle(blocks[side], wedge, waist, span, layout),
        ...inside.flatMap((level) => legHandles(blocks[side], wedge, level, style, layout)),
      ]),
    ),
  ];
}

/** What a wedge takes now at each level, mm, as plain data. */
export function intakeNow(wedge: DraftedWedge): Partial<PerLevel> {
  return Object.fromEntries(wedge.intake);
}

function edgeHandles(style: Style, span: { top: number; hem: number }, layout: TableLayout): Handle[] {
  const x = layout.centreX.front - 12;
  const shared = { kind: 'edge', wedge: null, block: null, level: null, node: null } as const;
  return [
    {
      ...shared,
      id: 'edge:top',
      which: 'top',
      at: { x, y: span.top },
      value: style.topAbove,
      least: -300,
      most: 120,
      gain: { x: 0, y: -1 },
      set: (before, value) => ({ ...before, topAbove: value }),
    },
    {
      ...shared,
      id: 'edge:hem',
      which: 'hem',
      at: { x, y: span.hem },
      value: style.hemBelow,
      least: -200,
      most: 400,
      gain: { x: 0, y: 1 },
      set: (before, value) => ({ ...before, hemBelow: value }),
    },
  ];
}

/** How far a node may be pulled from the level edge, mm. */
const MOST_BEYOND_MM = 200;

function nodeHandle({ edge, name, side, at }: EdgeNodePlace, style: Style, layout: TableLayout): Handle {
  const shape = edge === 'top' ? 'topShape' : 'hemShape';
  return {
    id: `node:${edge}:${name}`,
    kind: 'node',
    wedge: null,
    block: side,
    level: null,
    which: edge,
    node: name,
    at: onTable(layout, side, at),
    value: style[shape][name].beyond,
    least: -MOST_BEYOND_MM,
    most: MOST_BEYOND_MM,
    gain: { x: 0, y: edge === 'top' ? -1 : 1 },
    set: (before, beyond) => setEdgeNode(before, shape, name, { ...before[shape][name], beyond }),
  };
}

/** The axis is pulled half way between waist and hem; its number is the distance from the centre line at the waist. */
function axisHandle(
  block: Block,
  wedge: DraftedWedge,
  waist: Level,
  span: { top: number; hem: number; waist: number },
  layout: TableLayout,
): Handle {
  const y = span.hem > span.waist + 40 ? (span.waist + span.hem) / 2 : (span.top + span.hem) / 2;
  const width = block.width.get('waist') as number;
  const value = wedge.onCentre ? 0 : xAt(wedge.axis, waist.y);
  const reach = (at: number): number => (value > block.bustLine ? at - block.bustLine : block.bustLine);
  const gain = reach(width) / Math.max(1, reach(xAt(block.sideSeam, y)));
  return {
    id: `axis:${wedge.id}`,
    kind: 'axis',
    wedge: wedge.id,
    block: block.side,
    level: 'waist',
    which: null,
    node: null,
    at: onTable(layout, block.side, { x: xAt(wedge.axis, y), y }),
    value,
    least: 0,
    most: width,
    gain: { x: directionOf(block.side) * gain, y: 0 },
    set: (before, at) =>
      setStation(before, wedge.id, at < SETTLE_MM ? -1 : stationOf(at, block.bustLine, width)),
  };
}

function legHandles(
  block: Block,
  wedge: DraftedWedge,
  level: Level,
  style: Style,
  layout: TableLayout,
): Handle[] {
  const sides = wedge.onCentre ? (['outer'] as const) : (['inner', 'outer'] as const);
  const current = intakeNow(wedge);
  return sides.map((which) => {
    const leg = which === 'inner' ? wedge.innerLeg : wedge.outerLeg;
    return {
      id: `leg:${wedge.id}:${level.name}:${which}`,
      kind: 'leg',
      wedge: wedge.id,
      block: block.side,
      level: level.name,
      which,
      node: null,
      at: onTable(layout, block.side, { x: xAt(leg, level.y), y: level.y }),
      value: wedge.intake.get(level.name) ?? 0,
      least: -MOST_ADDED_MM,
      most: MOST_INTAKE_MM,
      gain: { x: directionOf(block.side) * legGain(block, wedge, style, which), y: 0 },
      set: (before, value) => setIntake(before, wedge.id, level.name, value, current),
    };
  });
}

/**
 * Intake for one mm of a leg's travel. The leg moves by half the intake; and where no balanced wedge makes room, the
 * side seam moves out with it and takes an axis beyond the bust-point line along.
 */
function legGain(block: Block, wedge: DraftedWedge, style: Style, which: 'inner' | 'outer'): number {
  if (wedge.onCentre) return 1;
  const others = style.wedges.some(
    (other) => other.block === block.side && other.id !== wedge.id && other.sizing === 'balanced',
  );
  const carried = others ? 0 : Math.max(0, wedge.station);
  // An inner leg that hardly moves at all would be pulled for ever; it is read as half the intake.
  if (which === 'inner') return carried < 0.25 ? -1 / (0.5 - carried) : -2;
  return 1 / (0.5 + carried);
}
