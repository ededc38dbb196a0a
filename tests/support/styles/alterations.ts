// Alterations drawn at random on a draft, and short ways to write one in a test.

import {
  type Alteration,
  type AlteredPlace,
  type AlteredSide,
  type Draft,
  type LevelName,
  type PieceIdentity,
  SEAM_ENDS,
  type SeamAlteration,
  type SeamHeight,
  type SeamName,
} from '../../../src/engine';
import { chance, pick, type Random, uniform } from '../random';

type PanelName = Extract<SeamName, { kind: 'seam' }>['pieces'][number];

export const panelNamed = ({
  kind,
  block,
  number,
}: Pick<PieceIdentity, 'kind' | 'block' | 'number'>): PanelName =>
  kind === 'sidePanel' ? { kind } : { kind: 'panel', block, number };

const panelOf = (id: string): PanelName => {
  const [block, number] = id.split('-');
  return id === 'side'
    ? { kind: 'sidePanel' }
    : { kind: 'panel', block: block as 'front', number: Number(number) };
};

/** "front-2" and "front-3". */
export const seamOf = (a: string, b: string): SeamName => ({
  kind: 'seam',
  pieces: [panelOf(a), panelOf(b)],
});

export const at = (level: LevelName, a: number, b = a): SeamAlteration['at'][number] => ({
  height: { kind: 'level', level },
  a,
  b,
});

export const taken = (
  seam: SeamName,
  amounts: SeamAlteration['at'],
  side: AlteredSide = 'both',
): SeamAlteration => ({ kind: 'seam', seam, side, at: amounts });

export const landmark = (name: 'centreFront' | 'bustLine' | 'side' | 'centreBack'): AlteredPlace => ({
  kind: 'landmark',
  name,
});

/** The seams that join two panels of a draft, and its darts. */
function seamsOf(made: Draft): SeamName[] {
  const joining = made.proof.seams.flatMap(({ seam, a, b }): SeamName[] =>
    seam.kind === 'wedge' || seam.kind === 'sideSeam'
      ? [{ kind: 'seam', pieces: [panelNamed(a.piece), panelNamed(b.piece)] }]
      : [],
  );
  const darts = made.pieces.flatMap(({ darts: own }) =>
    own.map(({ wedge }): SeamName => ({ kind: 'dart', wedge })),
  );
  return [...joining, ...darts];
}

/** One alteration of one kind on one place of a draft, on `side` of it; null where the draft has none. */
export function randomAlteration(random: Random, made: Draft, side: AlteredSide = 'both'): Alteration | null {
  const seams = seamsOf(made);
  if (seams.length === 0) return null;
  const seam = pick(random, seams);
  const kind = pick(random, ['seam', 'seam', 'seam', 'length', 'edge', 'bustPoint'] as const);
  const levels = made.levels.map(({ name }) => name);
  const place = (): AlteredPlace =>
    chance(random, 0.5) ? landmark(pick(random, ['centreFront', 'side', 'centreBack'])) : pick(random, seams);
  switch (kind) {
    case 'seam': {
      const height = (): SeamHeight =>
        chance(random, 0.7)
          ? { kind: 'level', level: pick(random, levels) }
          : chance(random, 0.6)
            ? { kind: 'belowWaist', mm: uniform(random, -60, 60) }
            : { kind: 'end', end: pick(random, SEAM_ENDS) };
      const amount = (): number => uniform(random, -8, 8);
      const heights = chance(random, 0.6) ? [height()] : [height(), height()];
      const said = heights.map((each) => ({ height: each, a: amount(), b: amount() }));
      return { kind, seam, side, at: said };
    }
    case 'length': {
      const i = Math.floor(random() * (levels.length - 1));
      const between = [levels[i] as LevelName, levels[i + 1] as LevelName] as const;
      return {
        kind,
        between,
        side,
        at: [
          { place: place(), by: uniform(random, -12, 12) },
          { place: place(), by: uniform(random, -12, 12) },
        ],
      };
    }
    case 'edge': {
      const isShouldered = made.blocks?.front.upper != null;
      const edge = pick(
        random,
        isShouldered ? (['hem', 'neckline', 'armhole'] as const) : (['top', 'hem'] as const),
      );
      return { kind, edge, side, at: [{ place: place(), by: uniform(random, -10, 10) }] };
    }
    case 'bustPoint':
      return { kind, side, out: uniform(random, -12, 12), down: uniform(random, -12, 12) };
  }
}

/** The alteration that takes one back. */
export function inverseOf(alteration: Alteration): Alteration {
  switch (alteration.kind) {
    case 'seam':
      return { ...alteration, at: alteration.at.map(({ height, a, b }) => ({ height, a: -a, b: -b })) };
    case 'bustPoint':
      return { ...alteration, out: -alteration.out, down: -alteration.down };
    default:
      return { ...alteration, at: alteration.at.map(({ place, by }) => ({ place, by: -by })) };
  }
}
