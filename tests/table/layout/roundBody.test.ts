import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT, NAMED_STYLES } from '../../../src/document';
import { draft } from '../../../src/engine';
import { roundBody, type SeenPanel } from '../../../src/table/layout/roundBody';

/** Styles, and how far above the waist they are looked at, mm: the darted one ends there. */
const STYLES = [
  ['default', 5],
  ['long-line-side-panels', 5],
  ['darted-bodice', 40],
] as const;

/** Where a panel lies at a height: its least and greatest x. */
function across({ outline }: SeenPanel, y: number): [number, number] | null {
  const xs = outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a;
    return a.y > y === b.y > y ? [] : [a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)];
  });
  return xs.length > 0 ? [Math.min(...xs), Math.max(...xs)] : null;
}

describe.each(STYLES)('%s round the body', (name, above) => {
  const style = NAMED_STYLES.get(name)?.style;
  if (!style) throw new Error('no such style');
  const made = draft(DEMO_CLIENT.measurements, style);
  const seen = roundBody(made, style.closure);
  const waist = (made.levels.find((level) => level.name === 'waist')?.y ?? 0) - above;

  it.each(['front', 'back'] as const)(
    'lies panel to panel from the middle to the side, from the %s',
    (view) => {
      const spans = seen[view]
        .flatMap((panel) => {
          const span = across(panel, waist);
          return span ? [span] : [];
        })
        .sort(([a], [b]) => a - b);
      expect(spans.length).toBeGreaterThan(0);
      for (const [i, [from]] of spans.entries())
        if (i > 0) expect(from).toBeCloseTo(spans[i - 1]?.[1] ?? 0, 0);
      // An oval three quarters as deep as it is wide is 0.362 of its half girth from its middle to its side.
      const row = made.proof.ledger.find(({ level }) => level === 'waist');
      // Only of those that reach the waist.
      if (!row?.sewnGirth) return;
      const half = row.sewnGirth / 2;
      const gap = style.closure.back === 'lacing' ? style.closure.lacingGap / 2 : 0;
      expect(Math.abs((spans.at(-1)?.[1] ?? 0) - 0.362 * (half + gap))).toBeLessThan(2);
    },
  );

  it('shows nothing beyond the side', () => {
    for (const panel of [...seen.front, ...seen.back])
      expect(Math.min(...panel.outline.map(({ x }) => x))).toBeGreaterThanOrEqual(-0.5);
  });
});
