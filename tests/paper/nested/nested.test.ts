// The nested print read back from its files by other code, against the prints of each size by itself.

import DxfParser from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import {
  draftSize,
  type NamedBody,
  readSizes,
  SAFETY_STANDING,
  type SizedDraft,
} from '../../../src/document';
import { DEFAULT_STYLE, type Style } from '../../../src/engine';
import {
  dashOfSize,
  type NestedInput,
  nestedDxf,
  nestedPagePdf,
  nestedPdf,
  nestedProjectorPdf,
  nestedSvg,
  numbersOfSizes,
  onePagePdf,
  type PlanInput,
  paperChoice,
  patternDxf,
  patternSvg,
  type WithFace,
} from '../../../src/paper';
import { sizeRange } from '../../support/bodies/sizeRange';
import { auditDxf, PYTHON_WITH_EZDXF } from '../../support/judges/auditDxf';
import { WITH_FACE } from '../demoPattern';
import { type ReadPoint, readPattern, sampled, toLines } from '../readPattern';

const FOLDED: Style = {
  ...DEFAULT_STYLE,
  closure: { ...DEFAULT_STYLE.closure, front: 'fold' },
  wedges: DEFAULT_STYLE.wedges.filter(({ station }) => station > -1),
};

const bodies: readonly NamedBody[] = readSizes(sizeRange(), 'mm').bodies;
const nested = (style: Style, count = 12, every = 1): NestedInput & WithFace => ({
  sizes: bodies.filter((_, i) => i % every === 0 && i < count).map((body) => draftSize(body, style)),
  leftOut: [],
  savedDraft: { name: 'Class bodice', style },
  unit: 'cm',
  date: '26 November 2026',
  ...WITH_FACE,
});
const single = ({ name, measurements, draft }: SizedDraft, style: Style): PlanInput & WithFace => ({
  draft,
  client: { name, unit: 'cm', measurements, estimated: [] },
  savedDraft: { name: 'Class bodice', style, acknowledgedReduction: null },
  date: '26 November 2026',
  ...WITH_FACE,
});

const MOST_MM = 0.05;
const LAYERS = ['cut-line', 'fold-line', 'sew-line', 'marks'] as const;

/** The paths of each layer of a piece in an SVG, by `piece.layer`; `prefix` stands before the piece. */
function pathsIn(svg: string, prefix: string, piece: string, layer: string): ReadPoint[][] {
  const [, group = ''] =
    new RegExp(`<g id="${prefix}${piece}\\.${layer}"[^>]*>(.*?)</g>`, 's').exec(svg) ?? [];
  return [...group.matchAll(/<path d="([^"]*)"/g)].map(([, d = '']) => {
    const points = [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({
      x: Number(x),
      y: Number(y),
    }));
    return d.endsWith('Z') && points[0] ? [...points, points[0]] : points;
  });
}

/** Lines moved so that the top left corner of a box round `home` lies at 0, 0. */
function athome(lines: readonly ReadPoint[][], home: readonly ReadPoint[][]): ReadPoint[][] {
  const [x, y] = [
    Math.min(...home.flat().map((point) => point.x)),
    Math.min(...home.flat().map((point) => point.y)),
  ];
  return lines.map((line) => line.map((point) => ({ x: point.x - x, y: point.y - y })));
}

const apart = (ones: readonly ReadPoint[][], others: readonly ReadPoint[][]): number =>
  Math.max(
    ...[
      [ones, others],
      [others, ones],
    ].flatMap(([from = [], to = []]) =>
      from.flatMap((line) => sampled(line, 3)).map((point) => toLines(point, to)),
    ),
  );

describe.each([
  ['a default style', DEFAULT_STYLE],
  ['a front on the fold', FOLDED],
] as const)('twelve sizes of %s one over another', (_, style) => {
  const input = nested(style);
  const svg = nestedSvg(input);

  it('are in the SVG what the single prints are, line for line, and aligned at the waist and the grain or fold', () => {
    const places = new Map<string, { x: number; y: number }>();
    for (const [i, size] of input.sizes.entries()) {
      const alone = patternSvg(single(size, style));
      const waist = size.draft.levels.find(({ name }) => name === 'waist')?.y ?? Number.NaN;
      for (const piece of size.draft.pieces) {
        const prefix = `size-${i + 1}\\.`;
        const [cut, wanted] = [
          pathsIn(svg, prefix, piece.id, 'cut-line'),
          pathsIn(alone, '', piece.id, 'cut-line'),
        ];
        expect(cut).toHaveLength(wanted.length);
        for (const layer of LAYERS) {
          const [drawn, known] = [pathsIn(svg, prefix, piece.id, layer), pathsIn(alone, '', piece.id, layer)];
          expect([layer, drawn.length]).toEqual([layer, known.length]);
          if (known.length > 0)
            expect(apart(athome(drawn, cut), athome(known, wanted))).toBeLessThan(MOST_MM);
        }
        // Where the waist meets the grain, or the fold, of this size on the drawing.
        const corner = {
          x: Math.min(...cut.flat().map(({ x }) => x)),
          y: Math.min(...cut.flat().map(({ y }) => y)),
        };
        const own = {
          x: Math.min(...piece.cutLine.map(({ x }) => x)),
          y: Math.min(...piece.cutLine.map(({ y }) => y)),
        };
        const upright = piece.cut.onFold ? Math.min(...piece.cutLine.map(({ x }) => x)) : piece.grain[0].x;
        const place = { x: corner.x + upright - own.x, y: corner.y + waist - own.y };
        const first = places.get(piece.id) ?? place;
        places.set(piece.id, first);
        expect(Math.abs(place.x - first.x)).toBeLessThan(MOST_MM);
        expect(Math.abs(place.y - first.y)).toBeLessThan(MOST_MM);
      }
    }
  });

  it('are in the DXF the very blocks of the single files, one a piece and size', () => {
    const read = (text: string) => new DxfParser().parseSync(text);
    const file = read(nestedDxf(input));
    const pieces = input.sizes.reduce((sum, { draft }) => sum + draft.pieces.length, 0);
    expect(Object.keys(file?.blocks ?? {})).toHaveLength(pieces);
    expect(file?.entities.filter(({ type }) => type === 'INSERT')).toHaveLength(pieces);
    const lines = (block: object | undefined) =>
      (
        (block as { entities?: { type: string; layer: string; handle?: string }[] } | undefined)?.entities ??
        []
      )
        .filter(({ type }) => type !== 'TEXT')
        .map(({ handle: _handle, ...entity }) => entity);
    for (const size of [input.sizes[0], input.sizes.at(-1)]) {
      const alone = read(patternDxf(single(size as SizedDraft, style)));
      for (const { id } of size?.draft.pieces ?? [])
        expect(lines(file?.blocks[`${id.toUpperCase()}_${size?.name}`])).toEqual(
          lines(alone?.blocks[id.toUpperCase()]),
        );
    }
    expect(nestedDxf(input)).toMatch(/^[\r\n -~]*$/);
  });

  it('are in the PDF of a roll what the single prints are', async () => {
    const made = await nestedPagePdf(nested(style, 12, 4), { widthMm: 914.4, heightMm: null, marginMm: 10 });
    if (!made.ok) throw new Error(made.fault.code);
    const cutLines = async (bytes: Uint8Array): Promise<ReadPoint[][]> => {
      const { pages } = await readPattern(bytes);
      return (pages[0]?.lines ?? [])
        .filter(({ widthMm }) => Math.abs(widthMm - 0.5) < 0.03)
        .map(({ points }) => [...points]);
    };
    const drawn = await cutLines(made.bytes);
    for (const size of nested(style, 12, 4).sizes)
      for (const line of await cutLines(
        await onePagePdf(single(size, style), { widthMm: 914.4, heightMm: null, marginMm: 10 }),
      )) {
        const home = athome([line], [line]);
        const nearest = Math.min(
          ...drawn
            .filter(({ length }) => length === line.length)
            .map((each) => apart(athome([each], [each]), home)),
        );
        expect(nearest).toBeLessThan(MOST_MM);
      }
  });
});

describe('the nested print', () => {
  it('tells the sizes apart without colour: by a dash for each of twelve, and by a number on every cut line', async () => {
    const dashes = Array.from({ length: 12 }, (_, i) => JSON.stringify(dashOfSize(i)));
    expect(new Set(dashes).size).toBe(12);
    expect(numbersOfSizes(['34', '36', 'XXL'])).toEqual(['34', '36', 'XXL']);
    expect(numbersOfSizes(['Small', 'Medium'])).toEqual(['1', '2']);
    const input = nested(DEFAULT_STYLE);
    const svg = nestedSvg(input);
    for (const { id } of input.sizes[0]?.draft.pieces ?? []) {
      const [, shared = ''] = new RegExp(`<g id="shared\\.${id}">(.*?)\\n</g>`, 's').exec(svg) ?? [];
      for (const { name } of input.sizes) expect(shared).toContain(`>${name}</text>`);
    }
  });

  it('has a key of the sizes, both squares and what is left out on its first page, and sheets behind it', async () => {
    const input = { ...nested(DEFAULT_STYLE, 3), leftOut: ['60'] };
    const { pages, title } = await readPattern(await nestedPdf(input, paperChoice('A4')));
    expect(title).toBe('Class bodice, Sizes 34 to 38');
    expect(pages.length).toBeGreaterThan(5);
    const said = pages[0]?.texts.map(({ text }) => text).join(' ') ?? '';
    expect(said).toContain('80, 62, 88 cm');
    expect(said).toContain('Not in this print, as it must not be cut: 60.');
    expect(said).toContain('100 mm');
    expect(
      pages.slice(1).every(({ texts }) => texts.some(({ text }) => text.includes('Sizes 34 to 38'))),
    ).toBe(true);
  });

  it('carries the cautions where a size is laced in far, on sheets and on one page, and nowhere else', async () => {
    const laced: Style = { ...DEFAULT_STYLE, ease: { ...DEFAULT_STYLE.ease, waist: -130 } };
    const saidIn = async (style: Style): Promise<string[]> => {
      const input = nested(style, 2);
      const page = await nestedPagePdf(input, { widthMm: 914.4, heightMm: null, marginMm: 10 });
      if (!page.ok) throw new Error(page.fault.code);
      const prints = [await nestedPdf(input, paperChoice('A4')), page.bytes];
      return Promise.all(
        prints.map(async (bytes) => {
          const { pages } = await readPattern(bytes);
          return pages[0]?.texts.map(({ text }) => text).join(' ') ?? '';
        }),
      );
    };
    for (const said of await saidIn(laced)) {
      expect(said).toContain('Tight lacing');
      expect(said).toContain('Sizes 34 and 36 are laced in farther than usual.');
      expect(said).toContain(SAFETY_STANDING);
    }
    for (const said of await saidIn(DEFAULT_STYLE)) expect(said).not.toContain(SAFETY_STANDING);
  });

  it('comes on one large sheet, for a projector, and the same each time', async () => {
    const input = nested(DEFAULT_STYLE, 4);
    const [one, again] = [
      await nestedPdf(input, paperChoice('A0')),
      await nestedPdf(input, paperChoice('A0')),
    ];
    expect((await readPattern(one)).pages).toHaveLength(1);
    expect(one).toEqual(again);
    const picture = await nestedProjectorPdf(input, { widthMm: 914.4, lineMm: 1.5 });
    expect(picture && (await readPattern(picture)).pages).toHaveLength(1);
    expect(nestedSvg(input)).toBe(nestedSvg(input));
  });

  it.runIf(PYTHON_WITH_EZDXF)('is audited as DXF by ezdxf without an error', () => {
    expect(auditDxf(nestedDxf(nested(DEFAULT_STYLE, 3)))).toEqual({ found: '[]', stderr: '' });
  });

  it('keeps names of sizes from breaking out of a file', () => {
    const input = nested(DEFAULT_STYLE, 2);
    const name = '</title><script>"&\r\n  0\r\nENDSEC';
    const sizes = input.sizes.map((size, i) => (i === 0 ? { ...size, name } : size));
    expect(nestedSvg({ ...input, sizes })).not.toContain('<script>');
    expect(new DxfParser().parseSync(nestedDxf({ ...input, sizes }))?.entities.length).toBeGreaterThan(0);
  });
});
