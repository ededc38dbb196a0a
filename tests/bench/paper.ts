// How fast a pattern is printed, and what it weighs: `npm run bench -- paper`.

import { performance } from 'node:perf_hooks';
import { type Zippable, zipSync } from 'fflate';
import { fontFiles } from '../../src/cli/output/fontFiles';
import { DEMO_CLIENT, draftSize, readSizes } from '../../src/document';
import { draft, type Measurements, type Style, type Wedge } from '../../src/engine';
import {
  layOut,
  type NestedInput,
  nestedDxf,
  nestedPdf,
  nestedSvg,
  type PaperChoice,
  type PatternInput,
  paperChoice,
  patternDxf,
  patternPdf,
  patternSvg,
  type WithFace,
  withFace,
} from '../../src/paper';
import { drawBodies } from '../support/bodies/drawBodies';
import { sizeRange } from '../support/bodies/sizeRange';
import { benchPrinting } from './printing';

const RUNS = 5;

const WITH_FACE = await withFace({}, fontFiles);

const { measurements } = DEMO_CLIENT;
const STYLE = DEMO_CLIENT.drafts[0]?.style as Style;

/** Six wedges on either block, the most there may be. */
const RICHEST: Style = {
  ...STYLE,
  balance: { ...STYLE.balance, cap: 12 },
  wedges: (['front', 'back'] as const).flatMap((block) =>
    [-0.7, -0.4, 0, 0.3, 0.55, 0.8].map((station, i) => ({
      ...(STYLE.wedges[0] as Wedge),
      id: `${block}-${i}`,
      block,
      station,
      weight: 1,
    })),
  ),
};

const inputFor = (
  lengths: Measurements,
  style: Style,
  paper: PaperChoice,
  copies = 1,
): PatternInput & WithFace => {
  const drafted = draft(lengths, style);
  const pieces = Array.from({ length: copies }, (_, copy) =>
    drafted.pieces.map((piece) => (copy === 0 ? piece : { ...piece, id: `${piece.id}-copy-${copy}` })),
  ).flat();
  return {
    draft: { ...drafted, pieces },
    client: DEMO_CLIENT,
    savedDraft: { name: 'Winter ball bodice', style, acknowledgedReduction: null },
    date: '25 November 2026',
    paper,
    ...WITH_FACE,
  };
};

const A4 = paperChoice('A4');

/** The cases by name: one pattern as it is, the richest, and more and more ink on more and more sheets. */
const CASES: readonly (readonly [string, () => PatternInput & WithFace])[] = [
  ['default style on A4', () => inputFor(measurements, STYLE, A4)],
  ['richest style on A4', () => inputFor(measurements, RICHEST, A4)],
  ['default style on A0', () => inputFor(measurements, STYLE, paperChoice('A0'))],
  ...[2, 7, 31].map(
    (copies) => [`${copies} × default style on A4`, () => inputFor(measurements, STYLE, A4, copies)] as const,
  ),
];

export async function benchPaper(say: (line: string) => unknown): Promise<void> {
  const started = performance.now();
  await patternPdf(inputFor(measurements, STYLE, A4));
  say(`first print, with everything loaded for it: ${(performance.now() - started).toFixed(0)} ms`);
  for (const [name, make] of CASES) {
    const input = make();
    const layout = layOut(input);
    const bytes = await patternPdf(input);
    const [whole, laid] = [await median(() => patternPdf(input)), await median(async () => layOut(input))];
    say(
      `${name}: ${layout.sheets.length} sheets, ${layout.panels.length} panels; ${whole.toFixed(0)} ms, of which laying out ${laid.toFixed(0)} ms; ${(bytes.length / 1000).toFixed(0)} kB`,
    );
  }
  const input = inputFor(measurements, STYLE, A4);
  const [svg, dxf] = [
    await median(async () => patternSvg(input)),
    await median(async () => patternDxf(input)),
  ];
  say(`default style: SVG ${svg.toFixed(0)} ms, DXF ${dxf.toFixed(0)} ms`);
  await benchNested(say);
  await benchCast(say);
  await benchPrinting(say);
}

/** People of a cast, each drafted and printed, and all patterns in one ZIP. */
const CAST = 200;

async function benchCast(say: (line: string) => unknown): Promise<void> {
  const [started, busy] = [performance.now(), process.cpuUsage()];
  const files: Zippable = {};
  for (const [i, lengths] of drawBodies(CAST, 1988).entries())
    files[`${i + 1}.pdf`] = [
      await patternPdf({ ...inputFor(lengths, STYLE, A4), isQuick: true }),
      { level: 0 },
    ];
  const bytes = zipSync(files);
  say(
    `${CAST} patterns of a cast in one ZIP: ${((performance.now() - started) / 1000).toFixed(1)} s, ${(process.cpuUsage(busy).user / 1e6).toFixed(1)} s of the processor, ${(bytes.length / 1e6).toFixed(1)} MB`,
  );
}

/** Twelve sizes one over another, their drafts made before. */
async function benchNested(say: (line: string) => unknown): Promise<void> {
  const sizes = readSizes(sizeRange(), 'mm').bodies.map((body) => draftSize(body, STYLE));
  const nested: NestedInput & WithFace = {
    sizes,
    leftOut: [],
    savedDraft: { name: 'Class bodice', style: STYLE },
    unit: 'cm',
    date: '26 November 2026',
    ...WITH_FACE,
  };
  const times = [
    await median(() => nestedPdf(nested, paperChoice('A0'))),
    await median(() => nestedPdf(nested, A4)),
    await median(async () => nestedSvg(nested)),
    await median(async () => nestedDxf(nested)),
  ].map((ms) => ms.toFixed(0));
  say(
    `${sizes.length} sizes nested: A0 ${times[0]} ms, A4 ${times[1]} ms, SVG ${times[2]} ms, DXF ${times[3]} ms`,
  );
}

async function median(run: () => Promise<unknown>): Promise<number> {
  const times: number[] = [];
  for (let i = 0; i < RUNS; i += 1) {
    const before = performance.now();
    await run();
    times.push(performance.now() - before);
  }
  return times.sort((a, b) => a - b)[Math.floor(RUNS / 2)] ?? 0;
}
