// The SVG pattern measured by a real browser: its millimetres, its outlines, and names that try to break out of it.

import { describe, expect, it } from 'vitest';
import { patternSvg } from '../../../src/paper';
import { withBrowser } from '../../browser/session';
import { demoPattern } from '../demoPattern';

const visit = withBrowser();

describe('the SVG pattern in a browser', () => {
  const input = demoPattern();

  it('measures what the engine drafted', async () => {
    const { context } = await visit('measure');
    const page = await context.newPage();
    await page.setContent(patternSvg(input));
    // CSS Values and Units 3, 5.2: 1 in is 96 px.
    const perPx = 25.4 / 96;
    for (const piece of input.draft.pieces) {
      const seen = await page.evaluate((id) => {
        const path = document.getElementById(`${id}.cut-line`)?.querySelector('path') as SVGPathElement;
        const { width, height } = path.getBoundingClientRect();
        // A bounding rectangle on the screen counts the stroke in; the box of the shape does not.
        const box = path.getBBox();
        const scale = (path.getScreenCTM() as DOMMatrix).a;
        return { width, height, length: path.getTotalLength(), box: [box.width, box.height], scale };
      }, piece.id);
      const [xs, ys] = [piece.cutLine.map(({ x }) => x), piece.cutLine.map(({ y }) => y)];
      const [across, down] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
      const round = piece.cutLine.reduce((sum, { x, y }, i) => {
        const next = piece.cutLine[(i + 1) % piece.cutLine.length] as { x: number; y: number };
        return sum + Math.hypot(next.x - x, next.y - y);
      }, 0);
      expect(Math.abs(seen.scale * perPx - 1)).toBeLessThan(1e-4);
      expect(Math.abs((seen.box[0] ?? 0) - across)).toBeLessThan(0.01);
      expect(Math.abs((seen.box[1] ?? 0) - down)).toBeLessThan(0.01);
      expect(Math.abs(seen.length - round)).toBeLessThan(0.1);
      expect(Math.abs(seen.width * perPx - across)).toBeLessThan(0.6);
      expect(Math.abs(seen.height * perPx - down)).toBeLessThan(0.6);
    }
  });

  it('runs nothing that a name brings', async () => {
    const name = '</title><script>document.title="taken"</script><g onload="document.title=1">';
    const { context } = await visit('measure');
    const page = await context.newPage();
    await page.setContent(patternSvg({ ...input, client: { ...input.client, name } }));
    expect(await page.title()).toBe('');
    expect(await page.locator('script, [onload]').count()).toBe(0);
  });
});
