// Every ready-made style, with a joined side panel and with a shoulder band too, for bodies of three sizes that differ left
// to right: no bound breaks, nothing blocks that did not before, and all mates are each other's, bands included.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../src/document';
import {
  type BodySides,
  type Draft,
  draft,
  draftWhole,
  type Measurements,
  SIDES,
  type Style,
  styleOfSide,
} from '../../src/engine';
import { checkBody } from '../../src/engine/body/body';
import { bodyOfSide } from '../../src/engine/body/sides';
import { SIZED_BODIES } from '../support/bodies/sizedBodies';
import { broken, judge } from '../support/judges/judge';
import { lengthOf } from '../support/judges/outline';

const DIFFERING: BodySides = {
  leftShare: { bust: 0.51, waist: 0.52, hip: 0.49 },
  rightLower: { bust: 6, underBust: 6, waist: 8, hip: 10 },
};

const variants = (style: Style): Style[] => [
  style,
  { ...style, joinedSide: true },
  {
    ...style,
    joinedSide: false,
    shoulders: { drop: 25, armholeIn: 12, intake: { front: 12, back: 6 }, bandAbove: 40 },
  },
];

const blocks = ({ issues }: Draft): number => issues.filter(({ severity }) => severity === 'error').length;

/** Mates that are not each other's, or not as long as each other but for the ease that is asked for. */
function unmated({ pieces, extras }: Draft): string[] {
  const all = [...pieces, ...extras];
  return all.flatMap((piece) =>
    piece.edges.flatMap(({ mate, points, ease = 0 }, i) => {
      if (!mate) return [];
      const other = all.find(({ id }) => id === mate.piece.id)?.edges[mate.edge];
      const back = other?.mate?.piece.id === piece.id && other.mate.edge === i;
      const own = lengthOf(other?.points ?? []) - (other?.ease ?? 0);
      const apart = Math.abs(own - lengthOf(points) + ease);
      return back && apart <= 0.05 ? [] : [`${piece.id}/${i}`];
    }),
  );
}

describe.each(SIZED_BODIES)('the %s body, differing left to right', (_, sized) => {
  const body: Measurements = { ...sized, acrossShoulder: 150 + 0.25 * (sized.bust ?? 0) };
  const checked = checkBody(body).body;

  it.each([...NAMED_STYLES.keys()])('is good in the style %s', (name) => {
    const named = NAMED_STYLES.get(name);
    if (!named || !checked) throw new Error('no such style or body');
    for (const style of variants(named.style)) {
      const made = draftWhole(body, style, DIFFERING);
      expect(blocks(made)).toBeLessThanOrEqual(2 * blocks(draft(body, style)));
      expect(unmated(made)).toEqual([]);
      expect(
        broken(judge(body, style, made).filter(({ bound }) => bound !== 'D5' && bound !== 'D6')),
      ).toEqual([]);
      for (const side of SIDES) {
        const half = made.halves?.[side];
        if (!half) throw new Error('not drafted apart');
        const own = judge(bodyOfSide(body, checked, DIFFERING, side), styleOfSide(style, side), half);
        expect(broken(own), side).toEqual([]);
      }
    }
  });
});
