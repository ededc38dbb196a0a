// The making list behind the sheets of the printed pattern, and the eyelets on its panels, read back from the file.

import DxfParser from 'dxf-parser';
import { beforeAll, describe, expect, it } from 'vitest';
import { patternDxf, patternPdf } from '../../../src/paper';
import { linedPieces } from '../../../src/paper/layout/placePanels';
import { eyeletsFor } from '../../../src/paper/making/eyelets';
import { makingList } from '../../../src/paper/making/makingList';
import { makingSections } from '../../../src/paper/making/makingSections';
import { usualMaking } from '../../../src/paper/making/settings';
import { quickPattern } from '../demoPattern';
import { type ReadPage, type ReadPattern, readPattern } from '../readPattern';

const INPUT = quickPattern('A4');
const MAKING = usualMaking('in');

let plain: ReadPattern;
let listed: ReadPattern;
beforeAll(async () => {
  plain = await readPattern(await patternPdf(INPUT));
  listed = await readPattern(await patternPdf({ ...INPUT, making: MAKING }));
});

const isListPage = ({ texts }: ReadPage): boolean =>
  texts.some(({ text }) => /^Making list · page \d/.test(text));
const wordsOf = (pages: readonly ReadPage[]): string =>
  pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');

describe('the printed making list', () => {
  it('comes behind the sheets, on upright pages of the paper, and only where it is asked for', () => {
    expect(plain.pages.filter(isListPage)).toEqual([]);
    const first = listed.pages.findIndex(isListPage);
    expect(first).toBe(plain.pages.length);
    for (const page of listed.pages.slice(first)) {
      expect(isListPage(page)).toBe(true);
      expect([page.widthMm, page.heightMm].map(Math.round)).toEqual([210, 297]);
    }
  });

  it('says every item of the list, inside the margins and over no other text', () => {
    const pages = listed.pages.filter(isListPage);
    const words = wordsOf(pages);
    for (const { heading, lines } of makingSections(
      makingList(INPUT.draft, INPUT.savedDraft.style, MAKING),
      MAKING,
      'in',
    )) {
      expect(words).toContain(heading);
      for (const { item } of lines) expect(words).toContain(item.split(',')[0]);
    }
    expect(words).toContain('Wren Abernathy, Winter ball bodice');
    for (const { texts } of pages) {
      for (const { at, widthMm } of texts) {
        expect(at.x).toBeGreaterThanOrEqual(10 - 0.01);
        expect(at.x + widthMm).toBeLessThanOrEqual(200.01);
        expect(at.y).toBeGreaterThan(10);
        expect(at.y).toBeLessThanOrEqual(287.01);
      }
      for (const [i, a] of texts.entries())
        for (const b of texts.slice(i + 1)) {
          const beside = a.at.x + a.widthMm <= b.at.x + 0.01 || b.at.x + b.widthMm <= a.at.x + 0.01;
          const apart = Math.abs(a.at.y - b.at.y) >= 0.7 * Math.min(a.sizePt, b.sizePt) * (25.4 / 72);
          expect(beside || apart, `“${a.text}” over “${b.text}”`).toBe(true);
        }
    }
  });

  it('goes on over as many pages as a small paper takes', async () => {
    const paper = { ...INPUT.paper, widthMm: 190, heightMm: 262 };
    const { pages } = await readPattern(
      await patternPdf({ ...INPUT, paper, making: { ...MAKING, eyeletSpacing: 8, waistSpacing: 8 } }),
    );
    const list = pages.filter(isListPage);
    expect(list.length).toBeGreaterThanOrEqual(1);
    expect(wordsOf(list)).toContain('Steel ends, cutters and hot hole-setters');
    for (const { texts } of list) for (const { at } of texts) expect(at.y).toBeLessThanOrEqual(252.01);
  });
});

describe('eyelets on the panels', () => {
  it('are drill holes in the file for cutters', () => {
    const [row] = eyeletsFor(INPUT.draft, MAKING);
    const read = new DxfParser().parseSync(patternDxf({ ...INPUT, making: MAKING }));
    const holes = Object.values(read?.blocks ?? {}).flatMap(({ entities }) =>
      entities.filter(({ type, layer }) => type === 'POINT' && layer === '13'),
    ) as unknown as { position: { x: number; y: number } }[];
    expect(holes.map(({ position }) => [position.x, -position.y])).toEqual(
      row?.points.map(({ x, y }) => [expect.closeTo(x, 3), expect.closeTo(y, 3)]),
    );
  });

  it('are drawn round their centres on the laced panel and nowhere else', () => {
    const [row] = eyeletsFor(INPUT.draft, MAKING);
    const before = new Map(linedPieces(INPUT).map(({ piece, lines }) => [piece.id, lines]));
    for (const { piece, lines } of linedPieces({ ...INPUT, making: MAKING })) {
      const added = lines.slice(before.get(piece.id)?.length).filter(({ kind }) => kind !== 'bone');
      expect(added.length).toBe(piece.id === row?.piece.id ? 3 * row.points.length : 0);
      for (const [i, { points }] of added.entries()) {
        const centre = row?.points[Math.floor(i / 3)] ?? { x: Number.NaN, y: Number.NaN };
        const closed = i % 3 === 0 ? points.slice(1) : points;
        const mean = (key: 'x' | 'y'): number =>
          closed.reduce((sum, point) => sum + point[key], 0) / closed.length;
        expect(mean('x')).toBeCloseTo(centre.x, 6);
        expect(mean('y')).toBeCloseTo(centre.y, 6);
      }
    }
  });
});
