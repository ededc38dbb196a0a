// Ready styles on drawn bodies: none is refused, as nobody can be told to move wedges that the draft sized itself.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../src/document';
import { draft, type Measurements } from '../../src/engine';
import { drawBodies } from '../support/drawBodies';
import { howMany } from '../support/howMany';

const BODIES: readonly Measurements[] = drawBodies(howMany({ few: 12, all: 150 }), 2112).map((body) => ({
  ...body,
  acrossShoulder: 366,
  backNeckToWaist: body.neckToWaist - 12,
}));

describe('a ready style', () => {
  it.each([...NAMED_STYLES])('is drafted for every body: %s', (_, { style }) => {
    const refused = BODIES.flatMap((body, i) =>
      draft(body, style)
        .issues.filter(({ severity }) => severity === 'error')
        .map(({ code }) => `${i}: ${code}`),
    );
    expect(refused).toEqual([]);
  });
});
