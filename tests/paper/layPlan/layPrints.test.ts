// The plan of a cloth at full size, read back.

import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT, NAMED_STYLES } from '../../../src/document';
import { DEFAULT_STYLE, draft } from '../../../src/engine';
import {
  cutOnce,
  DEFAULT_PROJECTOR,
  type LayPlan,
  layProjectorPdf,
  layRollPdf,
  layStrips,
  OPEN_CLOTH,
  startLay,
  windowOf,
} from '../../../src/paper';
import { planOfCloth } from '../../../src/paper/layPlan/layPanels';
import { placedName } from '../../../src/paper/layPlan/layTexts';
import { WITH_FACE } from '../demoPattern';
import { type ReadPattern, type ReadPoint, readPattern, sampled, toLines } from '../readPattern';

const HEAD = { client: 'Wren', draft: 'Bodice', date: '26 November 2026', unit: 'cm' } as const;
const ROLL = { widthMm: 914.4, heightMm: null, marginMm: 10 };
const { pieces, extras } = draft(
  DEMO_CLIENT.measurements,
  NAMED_STYLES.get('bridal-bodice')?.style ?? DEFAULT_STYLE,
);

function planOn(widthMm: number, folded: boolean): LayPlan {
  const cloth = { ...OPEN_CLOTH, widthMm, folded, gapMm: 6, shrinkAlong: 0.02 };
  const start = startLay([...pieces, ...extras].map(cutOnce), cloth, 1);
  if (!start.ok) throw new Error(start.faults.map(({ code }) => code).join());
  return start.work.best();
}

/** The outlines as they lie on the page of a plan, closed. */
const outlines = (plan: LayPlan): ReadPoint[][] =>
  planOfCloth(plan).panels.map(({ piece }) => [...piece.cutLine, piece.cutLine[0] as ReadPoint]);

/** The lines of all strips, laid together as their windows of the plan are. */
function joined(plan: LayPlan, { pages }: ReadPattern): ReadPoint[][] {
  const layout = layStrips(plan, ROLL);
  if (!layout) throw new Error('no strips');
  return layout.sheets.flatMap((position, i) => {
    const { left, top } = windowOf(layout.grid, position);
    const by = { x: left - layout.grid.marginMm, y: top - layout.grid.marginMm };
    const lines = pages[i + 1]?.lines ?? [];
    return lines.map(({ points }) => points.map(({ x, y }) => ({ x: x + by.x, y: y + by.y })));
  });
}

describe('a plan at full size', () => {
  it.each([
    ['open cloth that is wider than the roll', 1400, false, 2],
    ['folded cloth', 1400, true, 1],
  ] as const)(
    'of %s has every outline on the strips of a roll, with squares before them',
    async (_, width, folded, strips) => {
      const plan = planOn(width, folded);
      const bytes = await layRollPdf(plan, HEAD, ROLL, WITH_FACE);
      const read = await readPattern(bytes as Uint8Array);
      expect(read.pages).toHaveLength(1 + strips);
      for (const page of read.pages.slice(1)) expect(page.widthMm).toBeCloseTo(914.4, 2);
      const drawn = joined(plan, read);
      const farthest = Math.max(
        ...outlines(plan)
          .flatMap((ring) => sampled(ring, 10))
          .map((point) => toLines(point, drawn)),
      );
      expect(farthest).toBeLessThan(0.05);
      const names = read.pages.slice(1).flatMap(({ texts }) => texts.map(({ text }) => text));
      for (const placed of plan.placed) expect(names).toContain(placedName(placed, plan));
      expect(read.pages[0]?.texts.map(({ text }) => text).join(' ')).toContain('100');
    },
  );

  it('for a projector is one page as wide as the cloth, with every outline', async () => {
    const plan = planOn(1400, true);
    const bytes = await layProjectorPdf(plan, HEAD, DEFAULT_PROJECTOR, WITH_FACE);
    const { pages } = await readPattern(bytes as Uint8Array);
    expect(pages).toHaveLength(1);
    const drawn = (pages[0]?.lines ?? []).map(({ points }) => points);
    // The plan lies inside the frame and under the head of the picture.
    const by = { x: 10, y: 34 };
    const farthest = Math.max(
      ...outlines(plan)
        .flatMap((ring) => sampled(ring, 10))
        .map(({ x, y }) => toLines({ x: x + by.x, y: y + by.y }, drawn)),
    );
    expect(farthest).toBeLessThan(0.05);
  });

  it('is refused where a strip would be longer than a page may be', async () => {
    const plan = { ...planOn(1400, true), lengthMm: 6000 };
    expect(await layRollPdf(plan, HEAD, ROLL, WITH_FACE)).toBeNull();
    expect(await layProjectorPdf(plan, HEAD, DEFAULT_PROJECTOR, WITH_FACE)).toBeNull();
  });
});
