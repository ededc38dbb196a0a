import { jsPDF } from 'jspdf';
import { expect, it } from 'vitest';
import { pdfCanvas } from '../../../src/paper/pdf/file/pdfCanvas';

/** The texts that were drawn as outlines. */
function drawn(text: string): string[] {
  const texts: string[] = [];
  const shaper = {
    set: (line: string) => {
      texts.push(line);
      return { outline: [], advance: 1000 };
    },
  };
  const outlines = { shaper, unseen: {} } as unknown as Parameters<typeof pdfCanvas>[2];
  const placed = { text, start: { x: 10, y: 10 }, turnRad: 0, sizePt: 9, bold: false };
  pdfCanvas(new jsPDF(), undefined, outlines).text(placed);
  return texts;
}

it('a line in outlines has all its fractions spelled where one has no sign of its own', () => {
  expect(drawn('ผ้า: taken in 3⅜ in, ½ in and ¹¹⁄₁₆ in, 1¼ in')).toEqual([
    'ผ้า: taken in 3 3/8 in, 1/2 in and 11/16 in, 1 1/4 in',
  ]);
});

it('a line in outlines keeps a fraction as it was typed where each has a sign of its own', () => {
  expect(drawn('ผ้า (½)')).toEqual(['ผ้า (½)']);
});
