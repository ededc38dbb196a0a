// Darts are sewn shut on the body, one within its panel as one that opens at an edge.

import { describe, expect, it } from 'vitest';
import { DEFAULT_STYLE, draftWhole, type Style } from '../../../src/engine';
import { meshGarment } from '../../../src/engine/worn/mesh/garmentMesh';
import { MEAN_BODY } from '../../support/bodies/drawBodies';
import { bodyFor, wear } from '../../support/bodies/wornBodies';

const through = DEFAULT_STYLE.wedges.filter(({ kind, station }) => kind === 'through' && station !== -1);
const [front, back] = (['front', 'back'] as const).map((block) =>
  through.filter((wedge) => wedge.block === block).at(-1),
);

/** The outermost front wedge ends in a point towards the top, the outermost back one at both ends. */
const style: Style = {
  ...DEFAULT_STYLE,
  wedges: DEFAULT_STYLE.wedges.map((wedge) => {
    const upper = { from: 'waist', below: -70 } as const;
    if (wedge.kind !== 'through') return wedge;
    if (wedge === front) return { ...wedge, kind: 'openAtHem', upper };
    if (wedge === back) return { ...wedge, kind: 'closed', upper, lower: { from: 'waist', below: 60 } };
    return wedge;
  }),
};

describe('darts as worn', () => {
  const drafted = draftWhole(MEAN_BODY, style);
  const mesh = meshGarment(drafted.pieces, 12);

  it('are lines of the cloth', () => {
    expect(drafted.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(mesh.lines.filter(({ kind }) => kind === 'dart')).toHaveLength(2);
  });

  it('have a triangle on both sides: no edge is free but those of the outline', () => {
    const sides = new Map<string, number>();
    for (let t = 0; t < mesh.triangles.length; t += 3)
      for (let k = 0; k < 3; k += 1) {
        const ends = [k, (k + 1) % 3].map((j) => mesh.sewnAs[mesh.triangles[t + j] ?? 0] ?? 0);
        const key = [Math.min(...ends), Math.max(...ends)].join(' ');
        sides.set(key, (sides.get(key) ?? 0) + 1);
      }
    const outline = new Set(
      mesh.lines.filter(({ kind }) => kind !== 'seam' && kind !== 'dart').flatMap(({ sewn }) => sewn),
    );
    const free = [...sides].filter(([, count]) => count === 1).map(([key]) => key.split(' ').map(Number));
    expect(free.length).toBeGreaterThan(20);
    expect(free.flat().filter((vertex) => !outline.has(vertex))).toEqual([]);
    expect(Math.max(...sides.values())).toBe(2);
  });

  it('come to rest with the garment', () => {
    const { draped, figures } = wear(MEAN_BODY, style, bodyFor(MEAN_BODY), { width: 24 });
    expect(draped.rest.atRest).toBe(true);
    expect(figures.score).toBeGreaterThan(0);
  });
});
