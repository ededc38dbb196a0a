// The scales in the strips of the sheets, in dots: what a ruler laid on them reads, far into the stack as on the first sheet.

import { expect, it } from 'vitest';
import { NAMED_STYLES } from '../../../src/document';
import { paperChoice, patternPdf } from '../../../src/paper';
import { DEMO_SHEET, demoPattern } from '../demoPattern';
import { crossings, rasteredPdf, rowOf } from '../rasteredPage';
import { readPattern } from '../readPattern';

const DPI = 600;

it.each([
  ['as they are', undefined],
  ['corrected for a printer', { across: 1.012, down: 0.99 }],
])('are true on the first and every tenth sheet, %s', async (_, correction) => {
  const style = NAMED_STYLES.get('princess-bodice')?.style ?? DEMO_SHEET.style;
  const paper = { ...paperChoice('A4'), name: 'Small', widthMm: 190, heightMm: 262, overlapMm: 30 };
  const bytes = await patternPdf({
    ...demoPattern('A4', style),
    paper,
    ...(correction ? { correction } : {}),
  });
  const { pages } = await readPattern(bytes);
  const sheets = pages.slice(1, -1);
  expect(sheets.length).toBeGreaterThan(10);
  const pdf = await rasteredPdf(bytes, 'strokes');
  const withScale: number[] = [];
  for (const [i, { texts, widthMm, heightMm }] of sheets.entries()) {
    const label = texts.find(({ text, sizePt }) => text === '2 in' && sizePt < 7.5);
    if (!label) continue;
    withScale.push(i + 1);
    // A sheet that lies on its side goes through the printer upright.
    const along = widthMm > heightMm ? correction?.down : correction?.across;
    const length = 2 * 25.4 * (along ?? 1);
    const part = { left: label.at.x - length - 5, top: label.at.y - 1.5, width: length + 5, height: 1 };
    const raster = await pdf.raster(i + 2, part, DPI);
    const ticks = crossings(rowOf(raster, Math.round(raster.rows / 2)), raster.perMm);
    expect(ticks, `sheet ${i + 1}`).toHaveLength(3);
    const [first, , last] = ticks;
    expect(Math.abs((last?.at ?? 0) - (first?.at ?? 0) - length), `sheet ${i + 1}`).toBeLessThan(0.1);
  }
  await pdf.close();
  const due = sheets.map((_, i) => i + 1).filter((number) => number === 1 || number % 10 === 0);
  expect(withScale).toEqual(due);
});
