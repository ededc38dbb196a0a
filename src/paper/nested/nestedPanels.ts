// Nests with their lines and texts, and where they lie on a plan, a roll or sheets.

import { NESTED } from '../../document';
import type { Piece, Point } from '../../engine';
import { moved } from '../geometry/box';
import { simplified } from '../geometry/simplified';
import { type Layout, onSheets } from '../layout/layOut';
import { movedPanel, type PlacedPanel, type Reading } from '../layout/placePanels';
import type { Plan } from '../layout/planPanels';
import { GAP_MM } from '../packing/arrange';
import { fewestSheets } from '../packing/fewestSheets';
import { onRoll } from '../packing/onRoll';
import type { OutlineWays } from '../packing/placements';
import { panelLines } from '../panel/panelLines';
import { panelTexts } from '../panel/panelTexts';
import type { PlacedText, Stroke } from '../panel/strokes';
import { boxOfText } from '../panel/textBlock';
import { type Correction, NO_CORRECTION } from '../sheets/correction';
import type { PaperChoice } from '../sheets/papers';
import { uprightPage } from '../sheets/uprightPage';
import type { NestedInput } from './nestedInput';
import { type Nest, type NestPart, nestsOf } from './nests';
import { numbersOnLines } from './numbersOnLines';
import { dashOfSize, numbersOfSizes } from './sizeLines';

/** A nest with what is drawn for each size and for all of them. */
export interface DrawnNest {
  readonly nest: Nest;
  /** The lines of each part, in the order of the nest's parts. */
  readonly linesOf: readonly (readonly Stroke[])[];
  /** Grain line, bracket and leaders, which stand once. */
  readonly shared: readonly Stroke[];
  readonly texts: readonly PlacedText[];
  /** The numbers on the cut lines. */
  readonly numbers: readonly PlacedText[];
}

/** A drawn nest at its place. */
export interface PlacedNest extends DrawnNest {
  /** Added to the coordinates of the nest, and to the lines and texts here already. mm */
  readonly offset: Point;
}

const PAPER_READING: Reading = { textScale: 1, heavierMm: 0 };

/** Texts keep clear of lines that are simplified by so little that it is not seen. mm */
const SIMPLER_MM = 0.15;

/** All nests of the sizes, with cut and sew lines in the dash of each. */
export function drawnNests(input: NestedInput, reading: Reading = PAPER_READING): DrawnNest[] {
  const numbers = numbersOfSizes(input.sizes.map(({ name }) => name));
  return nestsOf(input).map((nest) => {
    const linesOf = nest.parts.map(linesOfPart);
    const grain = panelLines(nest.base.piece).filter(isShared);
    const { texts, leaders } = textsOf(nest, [...linesOf.flat(), ...grain], input, reading);
    return {
      nest,
      linesOf,
      shared: [...grain, ...leaders],
      texts,
      numbers: numbersOnLines(
        nest.parts.map(({ size, piece, by }) => ({
          ring: moved(piece.cutLine, by),
          number: numbers[size] ?? '',
        })),
        texts.map(boxOfText),
      ),
    };
  });
}

const isShared = ({ kind }: Stroke): boolean => kind === 'grain';

/** Cut, sew and fold lines, notches and drill marks of one size. */
function linesOfPart({ size, piece, by }: NestPart): Stroke[] {
  const dash = dashOfSize(size);
  return panelLines(piece)
    .filter((line) => !isShared(line))
    .map(({ kind, points }) => ({
      kind,
      points: moved(points, by),
      ...(kind === 'cut' ? { dash } : kind === 'sew' ? { dash: dash.map((part) => part / 2) } : {}),
    }));
}

/** What is written on a panel, once for all sizes and inside the smallest of them. */
function textsOf(
  { base }: Nest,
  lines: readonly Stroke[],
  { sizes, savedDraft, unit }: NestedInput,
  { textScale, heavierMm }: Reading,
): ReturnType<typeof panelTexts> {
  const lighter = lines.map((line) => ({ ...line, points: simplified(line.points, SIMPLER_MM) }));
  const [first, last] = [sizes[0], sizes.at(-1)];
  return panelTexts(
    base.piece,
    lighter,
    [],
    {
      client: NESTED.range({ first: first?.name ?? '', last: last?.name ?? '' }),
      draft: savedDraft.name,
      unit,
      style: savedDraft.style,
      layers: null,
      mockupOf: null,
      textScale,
      heavierMm,
    },
    [],
  );
}

/** What the packing needs to know of a nest; nests are never turned, as they are laid by one grain. */
const outlineOf = ({ nest, shared, linesOf }: DrawnNest): OutlineWays => [
  {
    turns: 0,
    ring: nest.ring,
    spanLines: [...shared, ...linesOf.flat()]
      .filter(({ kind }) => kind === 'cut' || kind === 'fold' || kind === 'grain')
      .map(({ points }) => points),
  },
];

/** The nests on a plan no wider than `mostWidthMm` where that can be, with a rim around them. */
export function nestsOnRoll(
  drawn: readonly DrawnNest[],
  mostWidthMm: number,
): { readonly nests: readonly PlacedNest[]; readonly widthMm: number; readonly heightMm: number } {
  if (drawn.length === 0) return { nests: [], widthMm: 0, heightMm: 0 };
  const { placements, widthMm, heightMm } = onRoll(drawn.map(outlineOf), mostWidthMm - 2 * GAP_MM);
  return {
    nests: drawn.map((each, i) => {
      const { x, y } = placements[i]?.offset ?? { x: 0, y: 0 };
      return placedNest(each, { x: x + GAP_MM, y: y + GAP_MM });
    }),
    widthMm: widthMm + 2 * GAP_MM,
    heightMm: heightMm + 2 * GAP_MM,
  };
}

function placedNest(drawn: DrawnNest, offset: Point): PlacedNest {
  const line = (each: Stroke): Stroke => ({ ...each, points: moved(each.points, offset) });
  const text = (each: PlacedText): PlacedText => ({
    ...each,
    start: { x: each.start.x + offset.x, y: each.start.y + offset.y },
  });
  return {
    ...drawn,
    offset,
    linesOf: drawn.linesOf.map((lines) => lines.map(line)),
    shared: drawn.shared.map(line),
    texts: drawn.texts.map(text),
    numbers: drawn.numbers.map(text),
  };
}

/** The nest as one panel with all its lines, which pages are drawn from. Its piece is the base with the outline of all sizes. */
function panelOf({ nest, linesOf, shared, texts, numbers }: DrawnNest, offset: Point): PlacedPanel {
  const piece: Piece = { ...nest.base.piece, cutLine: nest.ring };
  const lines = [...linesOf.flat(), ...shared];
  const whole = { piece, turns: 0 as const, offset: { x: 0, y: 0 }, lines, texts: [...texts, ...numbers] };
  return movedPanel(whole, offset);
}

/** The nests as panels of a plan. */
export function planNested(drawn: readonly DrawnNest[], mostWidthMm: number): Plan {
  const { nests, widthMm, heightMm } = nestsOnRoll(drawn, mostWidthMm);
  return { panels: drawn.map((each, i) => panelOf(each, nests[i]?.offset ?? ORIGIN)), widthMm, heightMm };
}

const ORIGIN: Point = { x: 0, y: 0 };

/** The nests on sheets of paper. */
export function layOutNested(
  drawn: readonly DrawnNest[],
  paper: PaperChoice,
  correction: Correction = NO_CORRECTION,
): Layout {
  const page = uprightPage(paper, correction);
  const { grid, placements } = fewestSheets(drawn.map(outlineOf), page, paper.orientation);
  const panels = drawn.map((each, i) => panelOf(each, placements[i]?.offset ?? ORIGIN));
  return onSheets(page, grid, panels);
}
