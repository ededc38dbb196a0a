// A style from outside is checked before anything is computed, so that the draft never meets a number it cannot carry.
// What comes in is taken for unknown: it may have been typed, or read from a file.

import { type Issue, issue } from '../terms/issue';
import { LEVEL_NAMES } from '../terms/names';
import { checkExtras } from './extrasSpans';
import {
  BACK_CLOSURES,
  DART_LEVELS,
  EDGE_NODES,
  FRONT_CLOSURES,
  MOST_WEDGES,
  type Style,
  TOP_LEVELS,
} from './style';
import { SHOULDERS_SPANS, STYLE_SPANS } from './styleSpans';

/**
 * Blocking issues at the field that cannot be drafted; empty when the style can be. A number out of its span carries
 * the span as `least` and `most`; a choice that is not among those there are, a part that is missing or a wedge's id
 * that another one has carries no span.
 */
export function checkStyle(style: Style): Issue[] {
  const given = record(style);
  const issues: Issue[] = [];
  const number: NumberCheck = (field, value, least, most) => {
    if (typeof value !== 'number' || !(value >= least && value <= most))
      issues.push(issue('styleOutOfRange', 'error', { field }, { least, most }));
  };
  const choice: ChoiceCheck = (field, value, allowed) => {
    if (!allowed.includes(value)) issues.push(issue('styleOutOfRange', 'error', { field }));
  };
  for (const level of LEVEL_NAMES) {
    number(`ease.${level}`, record(given.ease)[level], ...STYLE_SPANS.ease);
    number(`frontShare.${level}`, record(given.frontShare)[level], 0.2, 0.8);
  }
  number('overBustAbove', given.overBustAbove, 15, 150);
  number('topAbove', given.topAbove, ...STYLE_SPANS.topAbove);
  number('hemBelow', given.hemBelow, ...STYLE_SPANS.hemBelow);
  choice('topFrom', given.topFrom, TOP_LEVELS);
  for (const edge of ['topShape', 'hemShape'] as const)
    for (const node of EDGE_NODES) {
      const { beyond, kind } = record(record(given[edge])[node]);
      number(`${edge}.${node}`, beyond, ...STYLE_SPANS.edgeNode);
      choice(`${edge}.${node}.kind`, kind, ['smooth', 'corner']);
    }
  number('closure.lacingGap', record(given.closure).lacingGap, ...STYLE_SPANS.lacingGap);
  choice('closure.front', record(given.closure).front, FRONT_CLOSURES);
  choice('closure.back', record(given.closure).back, BACK_CLOSURES);
  choice('closure.sideZip', record(given.closure).sideZip, [undefined, true, false]);
  choice('joinedSide', given.joinedSide, [undefined, true, false]);
  choice('turnedHem', given.turnedHem, [undefined, true, false]);
  if (given.shoulders !== undefined) {
    const { drop, armholeIn, intake, bandAbove } = record(given.shoulders);
    number('shoulders.drop', drop, ...SHOULDERS_SPANS.drop);
    number('shoulders.armholeIn', armholeIn, ...SHOULDERS_SPANS.armholeIn);
    if (bandAbove !== undefined) number('shoulders.bandAbove', bandAbove, ...SHOULDERS_SPANS.bandAbove);
    for (const block of ['front', 'back'] as const)
      number(`shoulders.intake.${block}`, record(intake)[block], ...SHOULDERS_SPANS[`intake.${block}`]);
  }
  number('balance.sideShare', record(given.balance).sideShare, 0, 1);
  number('balance.cap', record(given.balance).cap, 0, 300);
  for (const edge of ['seam', 'side', 'top', 'hem', 'centre'] as const)
    number(`allowances.${edge}`, record(given.allowances)[edge], ...STYLE_SPANS.allowance);
  checkExtras(given.extras, number);
  choice('wedges', Array.isArray(given.wedges), [true]);
  const wedges = Array.isArray(given.wedges) ? Array.from(given.wedges, record) : [];
  const taken = new Set<string>();
  for (const [i, wedge] of wedges.entries()) {
    const field = `wedges.${typeof wedge.id === 'string' ? wedge.id : i}`;
    if (typeof wedge.id !== 'string' || taken.has(wedge.id))
      issues.push(issue('styleOutOfRange', 'error', { field: `${field}.id` }));
    else taken.add(wedge.id);
    checkWedge(wedge, field, number, choice);
  }
  for (const block of ['front', 'back'] as const) {
    const count = wedges.filter((wedge) => wedge.block === block).length;
    if (count > MOST_WEDGES)
      issues.push(issue('tooManyWedges', 'error', { block }, { count, most: MOST_WEDGES }));
  }
  return issues;
}

type NumberCheck = (field: string, value: unknown, least: number, most: number) => void;
type ChoiceCheck = (field: string, value: unknown, allowed: readonly unknown[]) => void;
type Unchecked = Readonly<Record<string, unknown>>;

function checkWedge(wedge: Unchecked, field: string, number: NumberCheck, choice: ChoiceCheck): void {
  choice(`${field}.block`, wedge.block, ['front', 'back']);
  choice(`${field}.sizing`, wedge.sizing, ['balanced', 'manual']);
  number(`${field}.station`, wedge.station, -1, 1);
  number(`${field}.weight`, wedge.weight, 0.01, 100);
  for (const part of ['stationAt', 'intake'] as const)
    choice(`${field}.${part}`, isRecord(wedge[part]), [true]);
  if (wedge.cup !== undefined) {
    number(`${field}.cup.below`, record(wedge.cup).below, ...STYLE_SPANS.cupBelow);
    number(`${field}.cup.intake`, record(wedge.cup).intake, ...STYLE_SPANS.cupIntake);
  }
  const ends = (['upper', 'lower'] as const).filter((end) => wedge[end] !== undefined);
  for (const end of ends) {
    number(`${field}.${end}.below`, record(wedge[end]).below, ...STYLE_SPANS.dartPoint);
    choice(`${field}.${end}.from`, record(wedge[end]).from, DART_LEVELS);
  }
  const [least, most] = ends.length > 0 ? STYLE_SPANS.dartIntake : STYLE_SPANS.wedgeIntake;
  for (const level of LEVEL_NAMES) {
    number(`${field}.stationAt.${level}`, record(wedge.stationAt)[level] ?? 0, -1, 1);
    number(`${field}.intake.${level}`, record(wedge.intake)[level] ?? 0, least, most);
  }
}

const isRecord = (value: unknown): value is Unchecked => typeof value === 'object' && value !== null;

const record = (value: unknown): Unchecked => (isRecord(value) ? value : {});
