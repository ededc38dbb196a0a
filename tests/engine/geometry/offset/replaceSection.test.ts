import { describe, expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../../src/document';
import { draft } from '../../../../src/engine';
import { bandedRing } from '../../../../src/engine/geometry/offset/bandedRing';
import { type AllowedEdge, cutLineTurnedUp } from '../../../../src/engine/geometry/offset/cutLine';
import { hasClearance } from '../../../../src/engine/geometry/offset/hasClearance';
import { replaceSection } from '../../../../src/engine/geometry/offset/replaceSection';
import type { Point } from '../../../../src/engine/geometry/point';
import { drawBodies } from '../../../support/bodies/drawBodies';
import { withShoulders } from '../../../support/bodies/sizedBodies';
import { holds, selfMeeting } from '../../../support/judges/outline';

const at = (x: number, y: number): Point => ({ x, y });

describe('a section put into a ring', () => {
  // Counter-clockwise as seen on paper: down, along, up.
  const box = [at(0, 0), at(0, 100), at(80, 100), at(80, 0)];

  it('is followed from where it begins on the ring to where it ends on it', () => {
    const section = [at(0, 90), at(10, 130), at(70, 130), at(80, 90)];
    expect(replaceSection(box, section, 0.01)).toEqual([...section, at(80, 0), at(0, 0)]);
  });

  it('may be as far off the ring at its ends as it is allowed to', () => {
    const section = [at(-0.005, 90), at(40, 130), at(80.005, 90)];
    expect(replaceSection(box, section, 0.01)).toEqual([...section, at(80, 0), at(0, 0)]);
    expect(replaceSection(box, section, 0.001)).toBeNull();
    expect(replaceSection(box, [], 0.01)).toBeNull();
  });

  it('takes the place of points it begins or ends on', () => {
    const section = [at(0, 100), at(40, 130), at(80, 100)];
    expect(replaceSection(box, section, 0.01)).toEqual([...section, at(80, 0), at(0, 0)]);
  });

  it('that begins and ends on one chord leaves the rest as it is, or is all there is', () => {
    const [forth, back] = [
      [at(20, 100), at(40, 130), at(60, 100)],
      [at(60, 100), at(40, 130), at(20, 100)],
    ];
    expect(replaceSection(box, forth, 0.01)).toEqual([
      ...forth,
      at(80, 100),
      at(80, 0),
      at(0, 0),
      at(0, 100),
    ]);
    expect(replaceSection(box, back, 0.01)).toEqual(back);
  });
});

describe('a hem turned up under an edge that turns in sharply', () => {
  const around = (a: number): number => (a * Math.PI) / 180;
  /** A slit 16 wide with a round end: allowances of 10 fill it, and leave loops that cannot be told from the line. */
  const slit = Array.from({ length: 19 }, (_, i) =>
    at(140 + 8 * Math.cos(around(10 * i)), 30 + 8 * Math.sin(around(10 * i))),
  );
  const edges: AllowedEdge[] = [
    { points: [at(0, 0), at(-75, 100)], allowance: 8 },
    { points: [at(-75, 100), at(355, 100)], allowance: 24, turnedUp: { start: true, end: true } },
    { points: [at(355, 100), at(280, 0)], allowance: 12 },
    { points: [at(280, 0), at(148, 0), ...slit, at(132, 0), at(0, 0)], allowance: 10 },
  ];

  it('has the images of its seams below its fold all the same', () => {
    const { line, turnsUp } = cutLineTurnedUp(edges);
    expect(turnsUp).toBe(true);
    // Both seams lean out by 3 in 4: moved out by 8 and 12 they cross the fold 10 and 15 farther out, and lean in below it.
    for (const [x, y] of [
      [-75 - 10, 100],
      [-75 - 10 + 18, 124],
      [355 + 15 - 18, 124],
      [355 + 15, 100],
    ] as const)
      expect(line?.some((p) => Math.hypot(p.x - x, p.y - y) < 1e-6)).toBe(true);
    expect(selfMeeting(line ?? [])).toBeNull();
    for (const { points } of edges) expect(hasClearance(bandedRing(line ?? []), points, 8 - 0.02)).toBe(true);
  });

  it('is not where the images of its seams meet: then the whole is cut as if the hem were bound', () => {
    const deep = edges.map((edge, i) => (i === 1 ? { ...edge, allowance: 330 } : edge));
    const { line, turnsUp } = cutLineTurnedUp(deep);
    expect(turnsUp).toBe(false);
    for (const { points } of deep)
      for (const point of points) expect(holds(line ?? [], point, 1e-6)).toBe(true);
  });

  it('is turned up on panels with a tight armhole and behind a heart-shaped neckline, on drawn bodies', () => {
    let pieces = 0;
    for (const name of ['basque-bodice', 'off-shoulder-bridal']) {
      const found = [...NAMED_STYLES].find(([each]) => each === name)?.[1].style;
      if (!found) throw new Error(`no style ${name}`);
      const style = {
        ...found,
        turnedHem: true,
        closure: { ...found.closure, front: 'lacing' as const },
        extras: { modesty: { overlap: 50 }, facing: { width: 45 } },
      };
      for (const body of drawBodies(20, 5).map(withShoulders)) {
        const made = draft(body, style);
        expect(made.issues.filter(({ code }) => code === 'hemTurnsShort')).toEqual([]);
        pieces += made.pieces.length + made.extras.length;
        for (const { cutLine } of [...made.pieces, ...made.extras]) expect(selfMeeting(cutLine)).toBeNull();
      }
    }
    expect(pieces).toBeGreaterThan(100);
  });
});
