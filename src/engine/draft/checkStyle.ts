// A style from outside is checked before anything is computed, so that the draft never meets a number it cannot carry.

import { type Issue, issue } from '../issue';
import { LEVEL_NAMES, MOST_WEDGES, type Style } from './types';

/** Blocking issues at the field that is out of its span; empty when the style can be drafted. */
export function checkStyle(style: Style): Issue[] {
  const issues: Issue[] = [];
  const check = (field: string, value: unknown, least: number, most: number): void => {
    if (typeof value !== 'number' || !(value >= least && value <= most))
      issues.push(issue('styleOutOfRange', 'block', { field }, { least, most }));
  };
  for (const level of LEVEL_NAMES) {
    check(`ease.${level}`, style.ease[level], -600, 600);
    check(`frontShare.${level}`, style.frontShare[level], 0.2, 0.8);
  }
  check('overBustAbove', style.overBustAbove, 15, 150);
  check('topAbove', style.topAbove, -600, 200);
  check('hemBelow', style.hemBelow, -400, 800);
  check('closure.lacingGap', style.closure.lacingGap, 0, 300);
  check('balance.sideShare', style.balance.sideShare, 0, 1);
  check('balance.cap', style.balance.cap, 0, 300);
  for (const edge of ['seam', 'side', 'top', 'hem', 'centre'] as const)
    check(`allowances.${edge}`, style.allowances[edge], 0, 100);
  for (const wedge of style.wedges) {
    const field = `wedges.${wedge.id}`;
    check(`${field}.station`, wedge.station, -1, 1);
    check(`${field}.weight`, wedge.weight, 0.01, 100);
    for (const level of LEVEL_NAMES) {
      check(`${field}.stationAt.${level}`, wedge.stationAt[level] ?? 0, -1, 1);
      check(`${field}.intake.${level}`, wedge.intake[level] ?? 0, 0, 300);
    }
  }
  for (const block of ['front', 'back'] as const) {
    const count = style.wedges.filter((wedge) => wedge.block === block).length;
    if (count > MOST_WEDGES) issues.push(issue('tooManyWedges', 'block', { block }, { count, most: MOST_WEDGES }));
  }
  return issues;
}
