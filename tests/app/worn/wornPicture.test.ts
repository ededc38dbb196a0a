// What the worker hands to the page: the garment, its body and its lacing, and what is seen at a place of the picture.

import { describe, expect, it } from 'vitest';
import { partedInBands } from '../../../src/app/worn/view/bands';
import {
  FRONT,
  frameOf,
  moved,
  projected,
  projection,
  seenAt,
  VIEWS,
} from '../../../src/app/worn/view/camera';
import { bandPlace, scaleOf } from '../../../src/app/worn/view/shades';
import { finer } from '../../../src/app/worn/view/smoothed';
import { buffersOf, wornResult } from '../../../src/app/worn/view/wornPicture';
import { toBeSewn } from '../../../src/app/worn/wornRequest';
import { DEMO_CLIENT, NAMED_STYLES } from '../../../src/document';
import { draftWhole, sewGarment } from '../../../src/engine';

const style = NAMED_STYLES.get('cincher')?.style;
if (!style) throw new Error('the style is there');
const { measurements } = DEMO_CLIENT;
const drafted = draftWhole(measurements, style);
const result = wornResult(sewGarment(drafted, measurements, style));
const { picture } = result;
if (!picture) throw new Error('the garment was sewn');

const triples = (list: Float32Array): [number, number, number][] =>
  Array.from(
    { length: list.length / 3 },
    (_, i) => [...list.subarray(3 * i, 3 * i + 3)] as [number, number, number],
  );

const tenths = (mm: number): number => Math.round(10 * mm) + 0;

describe('a sewn garment as a picture', () => {
  it('has both halves, mirror images of each other', () => {
    const xs = triples(picture.places).map(([x]) => x);
    expect(Math.min(...xs)).toBeCloseTo(-Math.max(...xs), 3);
    expect(new Set(picture.panelOf).size).toBe(drafted.pieces.length);
  });

  it('shades the body alike on both sides, and has some of it above and below', () => {
    const { places, normals } = picture.body;
    const lit = triples(normals);
    const mirrored = new Map(triples(places).map(([x, y, z], i) => [[x, y, z].map(tenths).join(' '), i]));
    let pairs = 0;
    for (const [i, [x, y, z]] of triples(places).entries()) {
      const other = mirrored.get([-x, y, z].map(tenths).join(' '));
      if (other === undefined || Math.abs(x) < 1) continue;
      pairs += 1;
      const [[nx, ny, nz], [mx, my, mz]] = [lit[i] ?? [0, 0, 0], lit[other] ?? [0, 0, 0]];
      expect(Math.hypot(nx + mx, ny - my, nz - mz)).toBeLessThan(1e-4);
    }
    expect(pairs).toBeGreaterThan(places.length / 4);
    const heights = (list: Float32Array): number[] => triples(list).map(([, , z]) => z);
    expect(Math.max(...heights(places)) - Math.max(...heights(picture.places))).toBeGreaterThan(88);
    expect(Math.min(...heights(picture.places)) - Math.min(...heights(places))).toBeGreaterThan(88);
  });

  it('laces across the gap', () => {
    const strokes = triples(picture.lacing);
    expect(strokes.length).toBeGreaterThan(8);
    for (let i = 0; i < strokes.length; i += 2)
      expect((strokes[i]?.[0] ?? 0) * (strokes[i + 1]?.[0] ?? 0)).toBeLessThan(0);
  });

  it('has its eyelets evenly apart', () => {
    const left = triples(picture.eyelets).filter(([x]) => x > 0);
    const steps = left
      .slice(1)
      .map((place, i) => Math.hypot(...place.map((value, j) => value - (left[i]?.[j] ?? 0))));
    expect(steps.length).toBeGreaterThan(3);
    expect(Math.max(...steps) - Math.min(...steps)).toBeLessThan(0.5);
  });

  it('lays a channel over every bone, and beside an open edge only on the cloth', () => {
    const { channels, bones, stitches } = picture;
    expect(stitches).toHaveLength(2 * bones.length);
    const middles = new Set(triples(bones).map(String));
    for (const [i, v] of channels.of.entries())
      if (i % 3 === 1) {
        const place = [...picture.places.subarray(3 * v, 3 * v + 3)];
        const away = place.map((value, j) => value - (channels.places[3 * i + j] ?? 0));
        expect(middles.has(String(place))).toBe(true);
        expect(Math.hypot(...away)).toBeLessThan(4.6);
      }
    const gap = style.closure.lacingGap / 2;
    const behind = triples(channels.places).filter(([x, y]) => y < 0 && Math.abs(x) < gap + 8);
    expect(behind.length).toBeGreaterThan(10);
    for (const [x] of behind) expect(Math.abs(x)).toBeGreaterThan(gap - 0.1);
  });

  it('is bent between its vertices: the middles of a tube’s edges lie on the tube', () => {
    const [sides, radius] = [12, 100];
    const place = (k: number, z: number): number[] => {
      const t = (2 * Math.PI * k) / sides;
      return [radius * Math.sin(t), radius * Math.cos(t), z];
    };
    const rows = [0, 40, 80].flatMap((z) => Array.from({ length: sides }, (_, k) => place(k, z)));
    const triangles = [0, 1].flatMap((row) =>
      Array.from({ length: sides }, (_, k) => {
        const [a, b] = [row * sides + k, row * sides + ((k + 1) % sides)];
        return [a, a + sides, b, b, a + sides, b + sides];
      }).flat(),
    );
    const height = Float32Array.from(rows, ([, , z = 0]) => z);
    const {
      places,
      values,
      triangles: parted,
    } = finer(Float32Array.from(rows.flat()), Uint32Array.from(triangles), [height]);
    expect(parted).toHaveLength(4 * triangles.length);
    const sag = triples(places).map(([x, y]) => Math.abs(Math.hypot(x, y) - radius));
    // The chord of a twelfth lies 3.4 mm inside.
    expect(Math.max(...sag)).toBeLessThan(1);
    expect(values[0]?.length).toBe(places.length / 3);
    for (const [i, value] of (values[0] ?? []).entries()) {
      const z = places[3 * i + 2] ?? 0;
      if (z > 30 && z < 50) expect(Math.abs(value - z)).toBeLessThan(6);
    }
  });

  it('gives the same without what is not sent to the worker', () => {
    expect(wornResult(sewGarment(toBeSewn(drafted), measurements, style))).toEqual(result);
  });

  it('is copied whole by a structured clone that takes its buffers', () => {
    const copy = structuredClone(result);
    expect(copy.picture?.places.length).toBe(picture.places.length);
    expect(new Set(buffersOf(result)).size).toBe(buffersOf(result).length);
  });
});

describe('the camera', () => {
  it('sees the wearer’s left on the right from the front, and on the left from the back', () => {
    const frame = frameOf([picture], 1);
    const at = (turn: number): number[] =>
      projected(projection({ ...FRONT, turn, tilt: 0 }, frame), 100, 0, frame.middle);
    expect(at(VIEWS.front)[0]).toBeGreaterThan(0);
    expect(at(VIEWS.back)[0]).toBeLessThan(0);
    expect(at(VIEWS.side)[2]).toBeGreaterThan(0);
  });

  it('finds the foremost panel at a place', () => {
    const blockAt = (turn: number): string | undefined => {
      const seen = seenAt(picture, projection({ ...FRONT, turn }, frameOf([picture], 1)), 0.25, 0);
      return seen ? picture.panels[picture.panelOf[seen.triangle] ?? 0]?.block : undefined;
    };
    expect(blockAt(VIEWS.front)).toBe('front');
    expect(blockAt(VIEWS.back)).toBe('back');
    expect(seenAt(picture, projection(FRONT, frameOf([picture], 1)), 0.99, 0.99)).toBeNull();
  });

  it('shows the whole width of the garment in a narrow picture, and keeps zoom and tilt within limits', () => {
    const frame = frameOf([picture], 0.5);
    const matrix = projection({ ...FRONT, tilt: 0 }, frame);
    for (const [x, y, z] of triples(picture.places))
      expect(Math.abs(projected(matrix, x, y, z)[0])).toBeLessThan(0.5);
    expect(moved(FRONT, { zoom: 1000 }).zoom).toBe(6);
    expect(moved(FRONT, { tilt: -9 }).tilt).toBeGreaterThan(-Math.PI / 2);
  });
});

describe('the bands of colour', () => {
  it('part a triangle along their limits, and cover it', () => {
    const area = (corners: readonly (readonly number[])[]): number =>
      Math.abs(
        corners.reduce((sum, [x = 0, y = 0], i) => {
          const [u = 0, v = 0] = corners[(i + 1) % corners.length] ?? [];
          return sum + (x * v - u * y) / 2;
        }, 0),
      );
    const triangle = [
      [0, 0, 0, 0.5],
      [4, 0, 0, 2.5],
      [0, 3, 0, 1.2],
    ] as const;
    const { polygons, limits } = partedInBands(triangle);
    expect(polygons.map(({ band }) => band)).toEqual([0, 1, 2]);
    expect(polygons.reduce((sum, { corners }) => sum + area(corners), 0)).toBeCloseTo(6, 9);
    expect(limits.map((ends) => ends.map(([, , , band]) => band))).toEqual([
      [1, 1],
      [2, 2],
    ]);
    expect(limits[0]?.[0]?.slice(0, 2)).toEqual([1, 0]);
    expect(partedInBands(triangle.map(([x, y, z]) => [x, y, z, 1.5])).polygons).toHaveLength(1);
  });

  it('part at their limits, and hold what lies beyond all of them', () => {
    const scale = scaleOf('standOff', 'cm');
    expect([-4, 0.5, 3, 4, 100].map((value) => Math.floor(bandPlace(scale, value)))).toEqual([0, 0, 2, 2, 6]);
    for (const shading of ['standOff', 'warp', 'weft'] as const)
      for (const unit of ['in', 'cm'] as const) {
        const { limits, colours } = scaleOf(shading, unit);
        expect(colours).toHaveLength(limits.length - 1);
      }
  });
});
