// Names on the assembly map: each panel has one, or a number with the name in the key.

import { describe, expect, it } from 'vitest';
import { mapLabels } from '../../../src/paper/pdf/mapLabels';

const ring = (left: number, top: number, width: number, height: number) => [
  { x: left, y: top },
  { x: left + width, y: top },
  { x: left + width, y: top + height },
  { x: left, y: top + height },
];

const names = (...panels: readonly (readonly [string, ReturnType<typeof ring>])[]) =>
  mapLabels(
    panels.map(([name, own]) => ({ name, ring: own })),
    [],
    [],
    [],
  );

describe('names on the map', () => {
  it('stand inside their panels, upright where that is too narrow', () => {
    const { labels, key } = names(
      ['Front 1', ring(0, 0, 30, 10)],
      ['Back modesty panel', ring(40, 0, 6, 60)],
    );
    expect(labels.map(({ text }) => [text.text, Math.sign(text.turnRad)])).toEqual([
      ['Front 1', 0],
      ['Back modesty panel', -1],
    ]);
    expect(key).toEqual([]);
    const box = labels[1]?.box;
    expect(box?.left).toBeGreaterThan(40);
    expect(box?.right).toBeLessThan(46);
  });

  it('are numbers with a key where there is no room, one number for panels of one name', () => {
    const { labels, key } = names(
      ['Strap', ring(0, 0, 2, 8)],
      ['Front 1', ring(10, 0, 30, 10)],
      ['Back facing', ring(50, 0, 2, 3)],
      ['Strap', ring(60, 0, 2, 8)],
    );
    expect(labels.map(({ text }) => text.text)).toEqual(['1', 'Front 1', '2', '1']);
    expect(key).toEqual(['Strap', 'Back facing']);
  });

  it('keep clear of the names of sheets and of each other, and of joints where there is room', () => {
    const own = ring(0, 0, 40, 12);
    const corner = { left: 0, top: 0, right: 26, bottom: 12 };
    const { labels } = mapLabels(
      [
        { name: 'Front 1', ring: own },
        { name: 'Front 2', ring: own },
      ],
      [corner],
      [],
      [],
    );
    const [first, second] = labels.map(({ box }) => box);
    expect(first?.left).toBeGreaterThanOrEqual(corner.right);
    expect((first?.bottom ?? 0) <= (second?.top ?? 0) || (second?.bottom ?? 0) <= (first?.top ?? 0)).toBe(
      true,
    );
    const crossed = mapLabels([{ name: 'Front 1', ring: own }], [], [20], []).labels[0]?.box;
    expect(crossed && (crossed.right <= 20 || crossed.left >= 20)).toBe(true);
  });
});
