import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT, setEnds, setJoinedSide } from '../../../src/document';
import { type BlockName, DEFAULT_STYLE, draft, type Point, type Style, xAt } from '../../../src/engine';
import { panelsOnBlock } from '../../../src/table/layout/panelsOnBlock';

const draftOf = (style: Style) => draft(DEMO_CLIENT.measurements, style);
const apart = draftOf(DEFAULT_STYLE);
const joined = draftOf(setJoinedSide(DEFAULT_STYLE, true));

const across = (ring: readonly Point[], y: number): number => {
  const met = ring.flatMap((b, i) => {
    const a = ring.at(i - 1) as Point;
    return a.y > y === b.y > y ? [] : [a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)];
  });
  return Math.max(...met) - Math.min(...met);
};

describe('panels on a block', () => {
  it('lie there from the centre line to the side', () => {
    for (const block of ['front', 'back'] as const) {
      const panels = panelsOnBlock(apart, block);
      expect(panels.map(({ piece, number, isJoined }) => [piece.id, number, isJoined])).toEqual([
        [`${block}-1`, 1, false],
        [`${block}-2`, 2, false],
        [`${block}-3`, 3, false],
      ]);
      for (const { inner, outer } of panels)
        for (const row of [inner, outer])
          expect((row.at(-1)?.y ?? 0) - (row[0]?.y ?? 0)).toBeGreaterThan(100);
    }
  });

  it.each(['front', 'back'] as const)(
    'a side panel in one is split along the side seam, and as wide at each level of the %s as it was with one',
    (block: BlockName) => {
      const own = panelsOnBlock(joined, block).at(-1);
      const was = panelsOnBlock(apart, block).at(-1);
      expect(own).toMatchObject({ number: 3, isJoined: true, piece: { id: 'side' } });
      for (const { x, y } of own?.outer ?? [])
        expect(x).toBeCloseTo(xAt(joined.blocks?.[block].sideSeam as never, y), 6);
      for (const name of ['underBust', 'waist'] as const) {
        const y = joined.levels.find((level) => level.name === name)?.y ?? 0;
        // Split between its points, a curve is met a little beside itself.
        expect(across(own?.ring ?? [], y)).toBeCloseTo(across(was?.ring ?? [], y), 1);
      }
      expect(own?.lines).toHaveLength(2);
    },
  );

  it('the darts of a side panel in one lie on the block they belong to', () => {
    const space = { top: 0, bust: 270, waist: 400, hem: 600 };
    const style = setJoinedSide(
      {
        ...DEFAULT_STYLE,
        wedges: [
          ...DEFAULT_STYLE.wedges,
          {
            ...DEFAULT_STYLE.wedges[4],
            id: 'back-dart',
            station: 0.75,
            sizing: 'manual',
            intake: { waist: 14 },
          } as never,
        ],
      },
      true,
    );
    const made = draftOf(setEnds(style, 'back-dart', 'closed', space));
    const [front, back] = (['front', 'back'] as const).map((block) => panelsOnBlock(made, block).at(-1));
    expect(front?.darts).toEqual([]);
    expect(back?.darts.map(({ wedge }) => wedge)).toEqual(['back-dart']);
    expect(back?.drills).toHaveLength(2);
    const drafted = made.blocks?.back.wedges.find(({ id }) => id === 'back-dart');
    // Its points stand as drafted; between them its fold runs straight on the panel in one, which is bent where the side lines were.
    const [inner, outer] = [back?.darts[0]?.inner ?? [], back?.darts[0]?.outer ?? []];
    for (const point of [inner[0], inner.at(-1), outer[0], outer.at(-1)])
      expect(point?.x).toBeCloseTo(xAt(drafted?.innerLeg as never, point?.y ?? Number.NaN), 6);
    const waist = made.levels.find(({ name }) => name === 'waist')?.y ?? Number.NaN;
    const across = [inner, outer].map(
      (leg) => leg.find(({ y }) => Math.abs(y - waist) < 1e-6)?.x ?? Number.NaN,
    );
    expect(Math.abs((across[0] ?? 0) - (across[1] ?? 0))).toBeCloseTo(drafted?.intake.get('waist') ?? 0, 6);
  });
});

describe('the nodes of the edges', () => {
  it('stand where they stood before the side panel was cut in one', () => {
    for (const node of apart.nodes) {
      const same = joined.nodes.find(
        ({ edge, name, block }) => edge === node.edge && name === node.name && block === node.block,
      );
      // The edge itself may run a few mm otherwise where the wedges beside the panel take the side's shaping.
      expect(Math.abs((same?.at.x ?? Number.NaN) - node.at.x), `${node.edge} ${node.name}`).toBeLessThan(4);
      expect(Math.abs((same?.at.y ?? Number.NaN) - node.at.y), `${node.edge} ${node.name}`).toBeLessThan(5);
    }
  });
});
