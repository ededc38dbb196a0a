// The fittings of one draft for another draft of the same client.

import { carriedOver, type Draft, type Style } from '../../engine';
import type { Fitting } from '../model/fittings';

/** A draft without its fittings, and its style. */
interface Standing {
  readonly draft: Pick<Draft, 'blocks' | 'span' | 'halves'>;
  readonly style: Style;
}

/** The fittings with their seams found again by where they stand on the body; as they are where one of the drafts has no blocks. */
export function carryOver(fittings: readonly Fitting[], from: Standing, to: Standing): readonly Fitting[] {
  const [was, is] = [from, to].map(({ draft, style }) => {
    const { blocks, span } = draft.halves?.left ?? draft;
    return blocks && span ? { blocks, waist: span.waist, style } : null;
  });
  if (!was || !is) return fittings;
  return fittings.map((fitting) => ({
    ...fitting,
    alterations: fitting.alterations.map((each) => ({ ...carriedOver(each, was, is), on: each.on })),
  }));
}
