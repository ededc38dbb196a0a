// The sentences of a plan: its cloth, its length, and a row for each outline.

import { formatLength, LAY_PLAN, type LengthUnit, pieceLabel } from '../../document';
import { type Cloth, laidWidth } from './cloth';
import type { LayFault, LayPlan, Placed } from './plan';

/** The cloth in one line. */
export function clothSentence({ cloth }: Pick<LayPlan, 'cloth'>, unit: LengthUnit): string {
  const { widthMm, folded, nap, gapMm, shrinkAlong, shrinkAcross } = cloth;
  return LAY_PLAN.cloth({
    width: formatLength(widthMm, unit, { withUnit: true }),
    folded,
    nap,
    gap: gapMm > 0 ? formatLength(gapMm, unit, { withUnit: true }) : null,
    shrinks: isShrunk(cloth) ? { along: percent(shrinkAlong), across: percent(shrinkAcross) } : null,
  });
}

export const isShrunk = ({ shrinkAlong, shrinkAcross }: Cloth): boolean =>
  shrinkAlong > 0 || shrinkAcross > 0;

export const lengthSentence = ({ lengthMm, density }: LayPlan, unit: LengthUnit): string =>
  LAY_PLAN.length({ length: formatLength(lengthMm, unit, { withUnit: true }), density: percent(density) });

/** To the tenth. */
const percent = (part: number): number => Math.round(part * 1000) / 10;

export const placedName = ({ piece, of, copy }: Placed, { placed }: LayPlan): string =>
  LAY_PLAN.piece({
    piece: pieceLabel(piece),
    of,
    copy,
    copies: placed.filter((each) => each.piece === piece).length,
  });

export const layColumns = ({ cloth }: LayPlan): string[] => {
  const { number, piece, along, across, lies } = LAY_PLAN.columns;
  return [number, piece, along, across[cloth.folded ? 'folded' : 'open'], lies];
};

/** The cells of an outline's row; outlines are counted from 1. */
export function layRow(plan: LayPlan, i: number, unit: LengthUnit): string[] {
  const placed = plan.placed[i] as Placed;
  const least = (of: 'x' | 'y'): string =>
    formatLength(Math.max(0, Math.min(...placed.outline.map((point) => point[of]))), unit, {
      withUnit: true,
    });
  return [String(i + 1), placedName(placed, plan), least('x'), least('y'), liesSentence(placed, plan.cloth)];
}

function liesSentence({ mirrored, onFold, turn }: Placed, { folded }: Cloth): string {
  const { lies } = LAY_PLAN;
  const side = onFold ? lies.fold : folded ? lies.both : mirrored ? lies.mirrored : lies.single;
  const way = turn === 0 ? lies.head : turn === 180 ? lies.foot : lies.turned({ degrees: turn });
  return `${side}, ${way}`;
}

/** What is wrong with a lay, and how to mend it. */
export function layFaultSentence(fault: LayFault, cloth: Cloth, unit: LengthUnit): string {
  const piece = pieceLabel(fault.piece);
  if (fault.code !== 'widerThanCloth') return LAY_PLAN.faults[fault.code]({ piece });
  const written = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  return LAY_PLAN.faults.widerThanCloth({
    piece,
    needs: written(fault.needsMm),
    width: written(laidWidth(cloth)),
    folded: cloth.folded,
  });
}
