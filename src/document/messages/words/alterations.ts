// An alteration of a fitting in words: "Front 2 / Front 3, waist: taken in ¼ in on each edge, both sides".

import type {
  Alteration,
  AlteredPlace,
  LengthBound,
  PanelName,
  SeamHeight,
  SeamName,
  Style,
} from '../../../engine';
import { formatLength } from '../../units/formatLength';
import { type LengthUnit, MM_PER } from '../../units/lengthUnit';
import { catalogue } from '../catalogue';
import { inSentence } from './inSentence';
import { LEVEL_TITLES, LEVEL_WORDS } from './levels';
import { pieceLabel } from './pieces';
import { wedgeNameOf } from './wedges';

interface AlterationContext {
  readonly unit: LengthUnit;
  /** Its wedges give darts their names. */
  readonly style: Pick<Style, 'wedges' | 'rightWedges'>;
}

/** A whole alteration as one line without a full stop. */
export function alterationWords(alteration: Alteration, context: AlterationContext): string {
  const side = ALTERATIONS.sides[alteration.side];
  const written = (mm: number): string => amountWritten(Math.abs(mm), context.unit);
  const placed = (at: readonly { place: AlteredPlace; by: number }[], words: ByWords): string[] =>
    at.map(({ place, by }) =>
      words({ by: Math.sign(by), length: written(by), place: placeWords(place, context.style) }),
    );
  switch (alteration.kind) {
    case 'seam': {
      const seam = seamTitle(alteration.seam, context.style);
      const heights = alteration.at.map(({ height, a, b }) => ({
        height: heightWords(height, context.unit),
        amounts: amountWords(alteration.seam, a, b, written),
      }));
      return ALTERATIONS.seam({ seam, heights, side });
    }
    case 'length': {
      const [upper, lower] = alteration.between.map((bound) => BOUND_TITLES[bound]);
      return ALTERATIONS.length({
        between: ALTERATIONS.between({ upper: upper ?? '', lower: inSentence(lower ?? '') }),
        amounts: isAllRound(alteration.at)
          ? alteration.at
              .slice(0, 1)
              .map(({ by }) => ALTERATIONS.allRound({ by: Math.sign(by), length: written(by) }))
          : placed(alteration.at, ALTERATIONS.shortened),
        side,
      });
    }
    case 'edge':
      return ALTERATIONS.length({
        between: ALTERED_EDGES[alteration.edge],
        amounts: placed(alteration.at, ALTERATIONS.raised),
        side,
      });
    case 'bustPoint':
      return ALTERATIONS.length({
        between: ALTERATIONS.bustPoint,
        amounts: [
          ...(alteration.out === 0
            ? []
            : [ALTERATIONS.out({ by: Math.sign(alteration.out), length: written(alteration.out) })]),
          ...(alteration.down === 0
            ? []
            : [ALTERATIONS.down({ by: Math.sign(alteration.down), length: written(alteration.down) })]),
        ],
        side,
      });
  }
}

/** Whether a length changes by the same at centre front and centre back, and so all round. */
export const isAllRound = (at: readonly { readonly place: AlteredPlace; readonly by: number }[]): boolean =>
  at.length === 2 &&
  at.every(({ by }) => Object.is(by, at[0]?.by)) &&
  (['centreFront', 'centreBack'] as const).every((name) =>
    at.some(({ place }) => place.kind === 'landmark' && place.name === name),
  );

/** The finest amount that is written, mm. */
const FINEST_MM: Readonly<Record<LengthUnit, number>> = { in: MM_PER.in / 32, cm: 1, mm: 1 };

/** An amount with its unit; one under an eighth of an inch in thirty-seconds, because a share of a gap may be no more. */
function amountWritten(mm: number, unit: LengthUnit): string {
  const write = (size: number): string =>
    formatLength(size, unit, { withUnit: true, parts: size < MM_PER.in / 8 ? 32 : 16 });
  const finest = FINEST_MM[unit];
  return mm > 0 && mm < finest / 2 ? ALTERATIONS.under({ length: write(finest) }) : write(mm);
}

/** A seam or dart to begin a line: "Front 2 / Front 3", "Side seam", "Centre back", "Bust dart". */
export function seamTitle(seam: SeamName, style: AlterationContext['style']): string {
  if (seam.kind === 'dart') return wedgeNameOf(seam.wedge, style);
  const [a, b] = seam.pieces;
  if (a.kind === 'panel' && b.kind === 'panel') {
    if (a.block !== b.block) return ALTERATIONS.sideSeam;
    if (a.number === b.number) return ALTERATIONS.centre[a.block];
  }
  return ALTERATIONS.pair({ first: panelTitle(a), second: panelTitle(b) });
}

/** What each edge of a seam is called: of a centre seam the halves, of a dart its legs. */
export function seamEdgeTitles(seam: SeamName): readonly [string, string] {
  if (seam.kind === 'dart') return ALTERATIONS.legs;
  const [a, b] = seam.pieces;
  return seamIsCentre(seam) ? ALTERATIONS.halves : [panelTitle(a), panelTitle(b)];
}

const seamIsCentre = ({ pieces: [a, b] }: Extract<SeamName, { kind: 'seam' }>): boolean =>
  a.kind === 'panel' && b.kind === 'panel' && a.block === b.block && a.number === b.number;

const panelTitle = (panel: PanelName): string =>
  pieceLabel(
    panel.kind === 'sidePanel'
      ? { kind: 'sidePanel', block: 'front', number: 1, id: '', side: null }
      : { ...panel, id: '', side: null },
  );

/** A place within a sentence: "centre back", "the side", "Front 2 / Front 3". */
export const placeWords = (place: AlteredPlace, style: AlterationContext['style']): string =>
  place.kind === 'landmark' ? ALTERATIONS.places[place.name] : seamTitle(place, style);

/** A height on a seam: "waist", "1½ in below the waist", "top edge". */
export function heightWords(height: SeamHeight, unit: LengthUnit): string {
  if (height.kind === 'end') return inSentence(BOUND_TITLES[height.end]);
  if (height.kind === 'level') return LEVEL_WORDS[height.level];
  const length = formatLength(Math.abs(height.mm), unit, { withUnit: true });
  return height.mm < 0 ? ALTERATIONS.aboveWaist({ length }) : ALTERATIONS.belowWaist({ length });
}

function amountWords(seam: SeamName, a: number, b: number, written: (mm: number) => string): string {
  const each = (mm: number): string => ALTERATIONS.taken({ by: Math.sign(mm), length: written(mm) });
  const [first, second] = seamEdgeTitles(seam);
  if (a === b) return a === 0 ? each(0) : ALTERATIONS.onEach({ taken: each(a) });
  const on = (mm: number, edge: string): string[] =>
    mm === 0 ? [] : [ALTERATIONS.onEdge({ taken: each(mm), edge })];
  const told = [...on(a, first), ...on(b, second)];
  const taken = ALTERATIONS.amounts({ told });
  return a === 0 || b === 0 ? ALTERATIONS.alone({ taken }) : taken;
}

/** Between what a garment is shortened, to begin a line. */
export const BOUND_TITLES: Readonly<Record<LengthBound, string>> = catalogue({
  top: 'Top edge',
  ...LEVEL_TITLES,
  hem: 'Hem',
});

interface Amount {
  /** Its sign. */
  readonly by: number;
  readonly length: string;
}

type ByWords = (amount: Amount & { readonly place: string }) => string;

interface Heights {
  readonly heights: readonly { readonly height: string; readonly amounts: string }[];
}

const ALTERATIONS = catalogue({
  sides: { both: 'both sides', left: 'left only', right: 'right only' },
  seam: ({ seam, heights, side }: Heights & { seam: string; side: string }) =>
    `${seam}, ${heights.map(({ height, amounts }) => `${height}: ${amounts}`).join('; ')}, ${side}`,
  length: ({ between, amounts, side }: { between: string; amounts: readonly string[]; side: string }) =>
    `${between}: ${amounts.length > 0 ? amounts.join(', ') : 'unchanged'}, ${side}`,
  between: ({ upper, lower }: { upper: string; lower: string }) => `${upper} to ${lower}`,
  pair: ({ first, second }: { first: string; second: string }) => `${first} / ${second}`,
  sideSeam: 'Side seam',
  centre: { front: 'Centre front', back: 'Centre back' },
  legs: ['the leg nearer the centre', 'the leg nearer the side'] as const,
  halves: ['the left half', 'the right half'] as const,
  places: {
    centreFront: 'centre front',
    bustLine: 'the bust-point line',
    side: 'the side',
    centreBack: 'centre back',
  },
  bustPoint: 'Bust point',
  belowWaist: ({ length }: { length: string }) => `${length} below the waist`,
  aboveWaist: ({ length }: { length: string }) => `${length} above the waist`,
  taken: ({ by, length }: Amount) =>
    by === 0 ? 'unchanged' : by > 0 ? `taken in ${length}` : `let out ${length}`,
  onEach: ({ taken }: { taken: string }) => `${taken} on each edge`,
  onEdge: ({ taken, edge }: { taken: string; edge: string }) => `${taken} on ${edge}`,
  amounts: ({ told }: { told: readonly string[] }) => told.join(', '),
  alone: ({ taken }: { taken: string }) => `${taken} alone`,
  allRound: ({ by, length }: Amount) =>
    by > 0 ? `shorter by ${length} all round` : `longer by ${length} all round`,
  shortened: ({ by, length, place }: Amount & { place: string }) =>
    by === 0
      ? `nothing at ${place}`
      : by > 0
        ? `shorter by ${length} at ${place}`
        : `longer by ${length} at ${place}`,
  raised: ({ by, length, place }: Amount & { place: string }) =>
    by === 0
      ? `nothing at ${place}`
      : by > 0
        ? `raised ${length} at ${place}`
        : `lowered ${length} at ${place}`,
  under: ({ length }: { length: string }) => `under ${length}`,
  out: ({ by, length }: Amount) => (by > 0 ? `${length} farther out` : `${length} farther in`),
  down: ({ by, length }: Amount) => (by > 0 ? `${length} lower` : `${length} higher`),
});

/** Edges that are raised, to begin a line. */
export const ALTERED_EDGES = catalogue({
  top: 'Top edge',
  hem: 'Hem',
  neckline: 'Neckline',
  armhole: 'Armhole',
});
