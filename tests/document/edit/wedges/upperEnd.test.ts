// Where a wedge ends above, and the front's part of a girth, as steps from one style to the next.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES, setFrontShare, setUpperEdge, setUpperPart } from '../../../../src/document';
import { DEFAULT_STYLE, draft, type Measurements, type Style } from '../../../../src/engine';
import { MEAN_BODY } from '../../../support/bodies/drawBodies';

const PRINCESS = NAMED_STYLES.get('princess-bodice')?.style as Style;
const BODY: Measurements = { ...MEAN_BODY, acrossShoulder: 366, backNeckToWaist: 385 };

const endOf = (style: Style) => style.wedges.find(({ id }) => id === 'front-bust')?.endsAt;

describe('the upper end of a wedge', () => {
  it('is put in an edge, moved along it, and left to the draft again', () => {
    const put = setUpperEdge(PRINCESS, 'front-bust', 'armhole');
    expect(endOf(put)).toEqual({ edge: 'armhole', part: 0.5 });
    const moved = setUpperPart(put, 'front-bust', 0.4);
    expect(endOf(setUpperEdge(moved, 'front-bust', 'neckline'))).toEqual({ edge: 'neckline', part: 0.4 });
    expect(setUpperEdge(moved, 'front-bust', null)).toEqual(PRINCESS);
    expect(setUpperPart(PRINCESS, 'front-bust', 0.4)).toEqual(PRINCESS);
  });

  it('is where the seam ends on the block', () => {
    const edges = (['shoulder', 'armhole', 'neckline'] as const).map((edge) => {
      const made = draft(BODY, setUpperEdge(PRINCESS, 'front-bust', edge));
      return made.blocks?.front.upper?.ends.map((end) => end.edge);
    });
    expect(edges).toEqual([['shoulder'], ['armhole'], ['neckline']]);
  });
});

describe('the front’s part of a girth', () => {
  it('is set at one level, drafted, and left to the draft again', () => {
    const set = setFrontShare(DEFAULT_STYLE, 'waist', 0.55);
    const waist = draft(MEAN_BODY, set).levels.find(({ name }) => name === 'waist');
    expect(waist?.frontShare).toBe(0.55);
    expect(setFrontShare(set, 'waist', null)).toEqual(DEFAULT_STYLE);
  });
});
