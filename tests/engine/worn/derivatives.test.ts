// Gradient and second derivatives of the whole energy against differences, with every part of it at work.

import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import { draftWhole } from '../../../src/engine';
import { energyAt, makeCurvature, makeGarmentEnergy } from '../../../src/engine/worn/cloth/garmentEnergy';
import { constructionOf, facingsBehind } from '../../../src/engine/worn/construction';
import { meshGarment } from '../../../src/engine/worn/mesh/garmentMesh';
import { placeOn } from '../../../src/engine/worn/mesh/placing';
import { factorize, makeFactor } from '../../../src/engine/worn/solve/cholesky';
import { makeFronts } from '../../../src/engine/worn/solve/fronts';
import { dot } from '../../../src/engine/worn/solve/memory';
import { neighboursOf } from '../../../src/engine/worn/solve/neighbours';
import { substitute } from '../../../src/engine/worn/solve/substitute';
import { MEAN_BODY } from '../../support/bodies/drawBodies';
import { bodyFor } from '../../support/bodies/wornBodies';
import { randomFrom } from '../../support/random';

const style = NAMED_STYLES.get('bridal-bodice')?.style;
if (!style) throw new Error('the style is there');
const random = randomFrom(8);
const body = bodyFor(MEAN_BODY);
const drafted = draftWhole(MEAN_BODY, style);
const making = constructionOf(style, drafted);
const faced = { ...style, extras: { facing: { width: 40 } } };
const mesh = meshGarment(drafted.pieces, 24, facingsBehind(faced, drafted.pieces));
const places = placeOn(mesh, body, { front: 0, back: 0 });
// 7 mm farther in, some of the cloth lies inside the body, which pushes there.
for (let v = 0; v < places.length; v += 3) {
  const [x = 0, y = 0] = places.subarray(v, v + 2);
  const part = 1 - 7 / Math.hypot(x, y);
  places.set([part * x, part * y], v);
}
for (let i = 0; i < places.length; i += 1) places[i] = (places[i] as number) + 2 * (random() - 0.5);
const waistZ = body.levels.find(({ name }) => name === 'waist')?.z ?? 0;
const garment = makeGarmentEnergy(mesh, { ...body, waistZ }, making, places);
const direction = Float64Array.from(places, (_, i) =>
  i % 3 === 0 && garment.fixed[i / 3] === 1 ? 0 : random() - 0.5,
);
const moved = (by: number): Float64Array => places.map((x, i) => x + by * (direction[i] as number));
const gradientAt = (X: Float64Array): Float64Array => {
  const G = new Float64Array(X.length);
  energyAt(garment, X, G);
  return G;
};
const tree = makeFronts(
  neighboursOf(garment),
  Float64Array.from({ length: mesh.count }, (_, v) => places[3 * v] as number),
  Float64Array.from({ length: mesh.count }, (_, v) => places[3 * v + 2] as number),
);
const curvature = makeCurvature(garment, tree.pattern);

/** The matrix of blocks times a vector. */
function times(vector: Float64Array): Float64Array {
  const { rows, columns } = tree.pattern;
  const product = new Float64Array(vector.length);
  for (let p = 0; p < rows.length; p += 1) {
    const [i, j] = [3 * (rows[p] as number), 3 * (columns[p] as number)];
    for (let r = 0; r < 3; r += 1)
      for (let s = 0; s < 3; s += 1) {
        const value = curvature.blocks[9 * p + 3 * r + s] as number;
        product[i + r] = (product[i + r] as number) + value * (vector[j + s] as number);
        if (i !== j) product[j + s] = (product[j + s] as number) + value * (vector[i + r] as number);
      }
  }
  return product;
}

describe('derivatives', () => {
  it('the gradient agrees with differences of the energy', () => {
    const step = 3e-4;
    const energy = (by: number): number =>
      energyAt(garment, moved(by), new Float64Array(places.length)).energy;
    // Fourth-order difference.
    const difference =
      (8 * (energy(step) - energy(-step)) - (energy(2 * step) - energy(-2 * step))) / (12 * step);
    const slope = dot(gradientAt(places), direction);
    expect(Math.abs(difference / slope - 1)).toBeLessThan(1e-8);
  });

  it('the second derivatives agree with differences of the gradient', () => {
    const step = 1e-5;
    const [ahead, behind] = [gradientAt(moved(step)), gradientAt(moved(-step))];
    curvature.assemble(places, true);
    const product = times(direction);
    const scale = Math.sqrt(dot(product, product));
    let sum = 0;
    for (let i = 0; i < product.length; i += 1)
      sum += (((ahead[i] as number) - (behind[i] as number)) / (2 * step) - (product[i] as number)) ** 2;
    expect(Math.sqrt(sum) / scale).toBeLessThan(1e-8);
  });

  it('the factor solves, and says where the matrix is not positive', () => {
    const factor = makeFactor(tree);
    curvature.assemble(places, false);
    expect(factorize(factor, curvature.blocks, 0)).toBe(true);
    const solution = times(direction);
    substitute(factor, solution);
    const miss = solution.map((x, i) => x - (direction[i] as number));
    expect(Math.sqrt(dot(miss, miss) / dot(direction, direction))).toBeLessThan(1e-8);
    expect(factorize(factor, curvature.blocks, -1e4)).toBe(false);
  });
});
