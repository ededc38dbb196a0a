import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PiecesFile } from '../../src/cli/output/piecesFile';
import { DEMO_CLIENT, writeStyle } from '../../src/document';
import { readPattern } from '../paper/readPattern';
import { TALL_CINCHER } from '../support/styles/tallCincher';
import { runDraft } from './runDraft';

let place: string;
beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'staywright-'));
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

const file = (name: string, content: unknown): string => {
  const path = join(place, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
};
const piecesIn = (out: string): PiecesFile => JSON.parse(readFileSync(join(out, 'pieces.json'), 'utf8'));

/** An invented client in mm. */
const CLIENT = {
  name: 'Isla Quince',
  unit: 'mm',
  measurements: {
    bust: 940,
    underBust: 806,
    waist: 749,
    hip: 1016,
    overBust: 902,
    neckToBust: 273,
    neckToUnderBust: 343,
    neckToWaist: 406,
    neckToHip: 610,
    bustPointWidth: 184,
    underarmToWaist: 197,
    waistToLap: 140,
  },
};
const withTape = (lengths: object): object => ({
  ...CLIENT,
  measurements: { ...CLIENT.measurements, ...lengths },
});
/** A style whose two front wedges leave no panel between them. */
const CROWDED = {
  wedges: [
    { id: 'one', block: 'front', station: 0.5, intake: { waist: 60 } },
    { id: 'two', block: 'front', station: 0.6, intake: { waist: 60 } },
  ],
};

describe('the command', () => {
  it('drafts the demo client into pieces and a pattern', async () => {
    const out = join(place, 'demo', 'deep');
    const ran = await runDraft(['--out', out]);
    expect(ran).toMatchObject({ code: 0, err: '' });
    const files = ['pieces.json', 'pattern.pdf', 'pattern.svg', 'pattern.dxf', 'sheet.html'];
    expect(ran.out.split('\n')).toEqual([...files.map((name) => join(out, name)), '']);
    expect(readFileSync(join(out, 'pattern.svg'), 'utf8')).toMatch(
      /^<svg [\s\S]*<g id="front-1">[\s\S]*<\/svg>\n$/,
    );
    expect(readFileSync(join(out, 'sheet.html'), 'utf8')).toMatch(
      /^<!doctype html>[\s\S]*Wren Abernathy[\s\S]*Front: bust wedge[\s\S]*<\/html>\n$/,
    );
    expect(readFileSync(join(out, 'pattern.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
    const drafted = piecesIn(out);
    expect(drafted.unit).toBe('mm');
    expect(drafted.lacingGap).toBe(50.8);
    expect(drafted.levels.map(({ name }) => name)).toEqual(['bust', 'underBust', 'waist']);
    expect(drafted.pieces.map(({ id, label }) => [id, label])).toEqual([
      ['front-1', 'Front 1'],
      ['front-2', 'Front 2'],
      ['front-3', 'Front 3'],
      ['back-1', 'Back 1'],
      ['back-2', 'Back 2'],
      ['back-3', 'Back 3'],
    ]);
    for (const { bodyGirth, ease, targetGirth, sewnGirth } of drafted.levels) {
      expect(targetGirth).toBeCloseTo(bodyGirth + ease - drafted.lacingGap, 5);
      expect(Math.abs(sewnGirth - targetGirth)).toBeLessThanOrEqual(0.1);
    }
    expect(drafted.levels.find(({ name }) => name === 'waist')?.y).toBeCloseTo(
      DEMO_CLIENT.measurements.neckToWaist ?? 0,
      5,
    );
    const edgeNames = (id: string) =>
      drafted.pieces.find((piece) => piece.id === id)?.edges.map(({ name }) => name);
    expect(edgeNames('front-1')).toEqual(['centre front', 'hem', 'seam', 'top edge']);
    expect(edgeNames('front-3')).toEqual(['seam', 'hem', 'side seam', 'top edge']);
    expect(edgeNames('back-1')).toEqual(['centre back', 'hem', 'seam', 'top edge']);
  });

  it('writes edges that close to the digit, mates that answer each other, and finite numbers only', async () => {
    const out = join(place, 'rounded');
    await runDraft(['--client', file('isla.json', CLIENT), '--paper', 'roll', '--out', out]);
    const drafted = piecesIn(out);
    const mates = new Map<string, string | null>(
      drafted.pieces.flatMap(({ id, edges }) => edges.map(({ mate }, i) => [`${id}/${i}`, mate] as const)),
    );
    expect([...mates.values()].filter((mate) => mate !== null).length).toBe(10);
    for (const [own, mate] of mates) if (mate !== null) expect(mates.get(mate)).toBe(own);
    for (const { edges, cutLine, grain, marks } of drafted.pieces) {
      edges.forEach(({ points }, i) => {
        expect(points.at(-1)).toEqual(edges[(i + 1) % edges.length]?.points[0]);
      });
      expect(grain).toHaveLength(2);
      for (const { kind, at } of marks) expect([kind, at.length]).toEqual(['balance', 2]);
      for (const place of [...edges.flatMap(({ points }) => points), ...cutLine, ...grain])
        for (const value of place) expect(value).toBe(Math.round(value * 1e6) / 1e6);
    }
    for (const { a, b, lengthA, lengthB } of drafted.seams) {
      expect(mates.get(a)).toBe(b);
      expect(Math.abs(lengthA - lengthB)).toBeLessThanOrEqual(0.05);
    }
  });

  it('takes inches with fractions, another paper and a style file', async () => {
    const lengths = { bust: 37, underBust: '31 3/4', waist: '29½', hip: '40', neckToBust: '10-3/4"' };
    const rest = { neckToUnderBust: 13.5, neckToWaist: 16, neckToHip: 24, bustPointWidth: '7 1/4' };
    const client = file('in.json', { name: 'Inés', unit: 'in', measurements: { ...lengths, ...rest } });
    const style = file('long.json', { unit: 'in', hemBelow: 9, ease: { waist: -5 } });
    const out = join(place, 'in');
    const ran = await runDraft(['--client', client, '--style', style, '--paper', 'LETTER', '--out', out]);
    expect(ran.code).toBe(0);
    expect(ran.err).toMatch(/^warn waist: The waist is drawn in by 5 in/m);
    const drafted = piecesIn(out);
    expect(drafted.levels.map(({ name }) => name)).toContain('hip');
    expect(drafted.levels.find(({ name }) => name === 'waist')).toMatchObject({
      bodyGirth: 749.3,
      ease: -127,
    });
    const estimated = drafted.issues.find(({ code }) => code === 'overBustEstimated');
    expect(estimated).toMatchObject({ severity: 'note', at: { level: 'overBust' } });
    expect(estimated?.message).toMatch(/ in ± \S+ in, as nineteen/);
  });

  it.each([
    ['500x707', 500, 707],
    ['ROLL', 914.4, null],
    ['roll-1067', 1067, null],
    ['projector', null, null],
  ])('prints on %s', async (paper, width, height) => {
    const out = join(place, `on-${paper}`);
    const ran = await runDraft(['--paper', paper, '--out', out]);
    expect(ran).toMatchObject({ code: 0, err: '' });
    const { pages } = await readPattern(new Uint8Array(readFileSync(join(out, 'pattern.pdf'))));
    if (width !== null) expect(pages[0]?.widthMm).toBeCloseTo(width, 1);
    if (height !== null) expect(pages[0]?.heightMm).toBeCloseTo(height, 1);
    else expect(pages).toHaveLength(1);
  });

  it('says of what nobody measured that it is estimated', async () => {
    const out = join(place, 'estimated');
    const client = file('estimated.json', { ...CLIENT, estimated: ['underarmToWaist'] });
    const ran = await runDraft(['--client', client, '--out', out]);
    expect(ran.code).toBe(0);
    expect(ran.err).toMatch(/^warn measurements: Underarm to waist: estimated, 19\.7 cm ± [\d.]+ cm\n$/);
    for (const name of ['pattern.svg', 'pattern.dxf', 'sheet.html'])
      expect(readFileSync(join(out, name), 'utf8')).toMatch(/estimated/i);
    const { pages } = await readPattern(new Uint8Array(readFileSync(join(out, 'pattern.pdf'))));
    expect(pages[0]?.texts.map(({ text }) => text).join(' ')).toContain('Underarm to waist: estimated');
  });

  it('turns no panel on cloth with a nap', async () => {
    // Its panels lie closer where every second one may be turned.
    const style = file('tall.json', writeStyle('Tall', TALL_CINCHER));
    const sheets = async (name: string, more: readonly string[]): Promise<number> => {
      const out = join(place, name);
      await runDraft(['--style', style, '--paper', 'legal', '--out', out, ...more]);
      return (await readPattern(new Uint8Array(readFileSync(join(out, 'pattern.pdf'))))).pages.length;
    };
    expect(await sheets('nap', ['--nap'])).toBeGreaterThan(await sheets('no-nap', []));
  });

  it('prints a name of any script', async () => {
    const out = join(place, 'script');
    const client = file('script.json', { ...CLIENT, name: 'Ольга 王芳' });
    expect(await runDraft(['--client', client, '--paper', 'roll', '--out', out])).toMatchObject({
      code: 0,
      err: '',
    });
    const [first] = (await readPattern(new Uint8Array(readFileSync(join(out, 'pattern.pdf'))))).pages;
    expect(first?.texts.map(({ text }) => text).join(' ')).not.toMatch(/\?|could not be loaded|empty boxes/);
  });

  it('ends with 1 on a draft that must not be cut, says why, and still writes what it made', async () => {
    const out = join(place, 'crowded');
    const ran = await runDraft(['--style', file('crowded.json', CROWDED), '--out', out]);
    expect(ran.code).toBe(1);
    expect(ran.err).toMatch(/^block front-2 .*(meet or cross|is only)/m);
    expect(existsSync(join(out, 'pattern.pdf'))).toBe(true);
    expect(piecesIn(out).issues.some(({ severity }) => severity === 'block')).toBe(true);
  });

  it('writes pieces without a piece, and takes an older pattern away, where nothing can be drafted', async () => {
    const out = join(place, 'nothing');
    await runDraft(['--paper', 'roll', '--out', out]);
    expect(existsSync(join(out, 'pattern.pdf'))).toBe(true);
    const client = file('upside.json', withTape({ neckToWaist: 280, neckToUnderBust: 270 }));
    const ran = await runDraft(['--client', client, '--out', out]);
    expect(ran.code).toBe(1);
    expect(ran.err).toMatch(/^block waist: The waist line is not far enough below/m);
    expect(ran.out).toBe(`${join(out, 'pieces.json')}\n`);
    for (const name of ['pattern.pdf', 'pattern.svg', 'pattern.dxf', 'sheet.html'])
      expect(existsSync(join(out, name))).toBe(false);
    expect(piecesIn(out)).toMatchObject({ levels: [], pieces: [], seams: [] });
  });

  it.each([
    [
      'a file that is not there',
      () => ['--client', join(place, 'gone.json')],
      /^--client: The file .*ENOENT/,
    ],
    ['a directory', () => ['--client', place], /^--client: .*EISDIR/],
    ['no JSON', () => ['--client', file('half.json', '{"name":\n')], /half\.json: This is not JSON/],
    [
      'a fault in a field',
      () => ['--client', file('word.json', withTape({ bust: 'wide' }))],
      /^measurements\.bust: /,
    ],
    [
      'a measurement missing',
      () => ['--client', file('null.json', withTape({ bust: null }))],
      /^measurements\.bust: Bust girth is not filled in/,
    ],
    [
      'a slip of the keyboard',
      () => ['--client', file('slip.json', withTape({ hip: 10160 }))],
      /^measurements\.hip: Hip girth must be between 300 mm and 2500 mm/,
    ],
    ['an unknown style', () => ['--style', 'regency'], /^--style: There is no style “regency”/],
    ['a fault in the style', () => ['--style', file('bad.json', { hemBelow: 'x' })], /^hemBelow: /],
    [
      'an unknown paper',
      () => ['--paper', 'vellum'],
      /^--paper: There is no paper “vellum”; there are: a4, /,
    ],
    ['a paper too small', () => ['--paper', '100x150'], /^--paper: The paper is too small/],
    ['a roll too narrow for the panels', () => ['--paper', 'roll-90'], /^--paper: The page is too narrow/],
    ['an unknown flag', () => ['--quick'], /^--quick: This is not understood/],
  ])('ends with 2 on %s, one line a fault', async (_, words, message) => {
    const out = join(place, 'never');
    const given = words();
    const ran = await runDraft(given.includes('--quick') ? given : [...given, '--out', out]);
    expect(ran.code).toBe(2);
    expect(ran.out).toBe('');
    expect(ran.err).toMatch(message);
    expect(ran.err.trimEnd().split('\n')).toHaveLength(1);
    expect(existsSync(out)).toBe(false);
  });

  it('ends with 2 where it cannot write', async () => {
    const taken = file('taken', 'a file, not a directory');
    const ran = await runDraft(['--out', join(taken, 'out')]);
    expect(ran.code).toBe(2);
    expect(ran.err).toMatch(/^--out: The files could not be written into .*ENOTDIR/);
  });

  it.runIf(existsSync('/proc'))('ends with 2 where the system makes no directories', async () => {
    const ran = await runDraft(['--out', '/proc/staywright/deep']);
    expect(ran).toMatchObject({ code: 2, out: '' });
    expect(ran.err).toMatch(
      /^--out: The files could not be written into \/proc\/staywright\/deep \(E[A-Z]+\)\.\n$/,
    );
  });

  it('helps', async () => {
    const ran = await runDraft(['--help']);
    expect(ran).toMatchObject({ code: 0, err: '' });
    expect(ran.out).toMatch(/--stdin/);
    expect(ran.out).toMatch(/only those that the garment reaches all round/);
    expect(ran.out).toMatch(/sheet\.html +the drafting sheet/);
  });
});

describe('the command with --stdin', () => {
  it('answers each line in order and never stops at a bad one', async () => {
    const input = [
      JSON.stringify(CLIENT),
      '',
      'not JSON',
      JSON.stringify({ ...withTape({ bust: null, hip: 1 }), name: 'Bad' }),
      '{"name":"Nobody"}\r',
      '7',
      'x'.repeat(1_100_000),
      '\ufeff{}',
      JSON.stringify({ ...CLIENT, name: 'Zoë ½' }),
    ].join('\n');
    const ran = await runDraft(['--stdin'], input);
    expect(ran).toMatchObject({ code: 0, err: '' });
    const lines = ran.out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(lines.map(({ name }) => name)).toEqual([
      CLIENT.name,
      null,
      'Bad',
      'Nobody',
      null,
      null,
      null,
      'Zoë ½',
    ]);
    expect(lines.map(({ error }) => error?.map(({ path }: { path: string }) => path))).toEqual([
      undefined,
      [''],
      ['measurements.bust', 'measurements.hip'],
      ['measurements'],
      [''],
      [''],
      ['name', 'measurements'],
      undefined,
    ]);
    // Blank lines count, as they do in an editor.
    expect(lines[1].error[0].message).toMatch(/^Line 3: This is not JSON/);
    expect(lines[4].error[0].message).toMatch(/^Line 6: A client must be an object, not a number/);
    expect(lines[5].error[0].message).toMatch(/^Line 7: This line is longer than/);
    expect(lines[0].pieces).toHaveLength(6);
    expect({ ...lines[7], name: CLIENT.name }).toEqual(lines[0]);
  });

  it('gives the object of pieces.json, in the style asked for', async () => {
    const [client, style] = [file('same.json', CLIENT), file('same-style.json', { hemBelow: 60 })];
    const out = join(place, 'same');
    await runDraft(['--client', client, '--style', style, '--paper', 'roll', '--out', out]);
    const ran = await runDraft(['--stdin', '--style', style], `${JSON.stringify(CLIENT)}\n`);
    expect(JSON.parse(ran.out)).toEqual({ name: CLIENT.name, ...piecesIn(out) });
  });

  it('answers nothing with nothing', async () => {
    expect(await runDraft(['--stdin'], '\n\n')).toEqual({ code: 0, out: '', err: '' });
  });

  it('refuses a style that cannot be drafted before it reads', async () => {
    const ran = await runDraft(
      ['--stdin', '--style', file('wild.json', { hemBelow: 1e9 })],
      JSON.stringify(CLIENT),
    );
    expect(ran).toMatchObject({ code: 2, out: '' });
    expect(ran.err).toMatch(/^hemBelow: /);
  });
});
