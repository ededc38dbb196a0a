// Alterations of one draft as those of another of the same body: each seam is found again by where it stands on the body.

import type { Block } from '../../block/block';
import { isThrough } from '../../block/lines/extent';

import type { Style } from '../../style/style';
import type { BlockName } from '../../terms/names';
import type { Alteration, SeamName } from '../terms/alteration';
import { withSeams } from '../terms/withSeams';
import { type BodyLine, type ClosedHalf, closedHalfOf, distancesAt, lineNamed, wholeAt } from './closedHalf';

/** A draft whose seams are looked up; `waist` is the height of its waist, mm. */
interface Draft {
  readonly blocks: Readonly<Record<BlockName, Block>>;
  readonly waist: number;
  readonly style: Pick<Style, 'joinedSide'>;
}

/**
 * The alteration with the seams of another draft: centre and side seams by what they are, the others by the nearest seam of the
 * same block at the waist, a dart by the nearest dart. What is not found keeps its name.
 */
export function carriedOver(alteration: Alteration, from: Draft, to: Draft): Alteration {
  const [was, is] = [from, to].map(
    (draft): Stood => ({ ...draft, round: closedHalfOf(draft.blocks, draft.style) }),
  );
  if (!was || !is) return alteration;
  return withSeams(alteration, (name) => carriedSeam(name, was, is));
}

interface Stood extends Draft {
  readonly round: ClosedHalf;
}

function carriedSeam(name: SeamName, from: Stood, to: Stood): SeamName {
  const found = lineNamed(from.round, name);
  if (!found) return name;
  const stands = standsAt(found.line, from, to);
  if (!stands) return name;
  const [first, second] = stands.kind === 'seam' ? stands.pieces : [null, null];
  return found.isTurned && first && second ? { kind: 'seam', pieces: [second, first] } : stands;
}

function standsAt(line: BodyLine, from: Stood, to: Stood): SeamName | null {
  const { seams } = to.round;
  switch (line.kind) {
    case 'bustLine':
      return null;
    case 'sideSeam':
    case 'centre': {
      const same = seams.find(
        (seam) =>
          seam.line.kind === line.kind && (line.kind !== 'centre' || isCentreOf(seam.line, line.block)),
      );
      return same ? { kind: 'seam', pieces: same.pieces } : null;
    }
    default: {
      const through = seams.flatMap(({ line: own, pieces }) =>
        own.kind === 'wedge' && own.block === line.block
          ? [{ line: own, name: { kind: 'seam', pieces } as SeamName }]
          : [],
      );
      const darts = to.blocks[line.block].wedges
        .filter(({ extent }) => !isThrough(extent))
        .map((wedge) => ({
          line: { kind: 'dart', block: line.block, wedge } as const,
          name: { kind: 'dart', wedge: wedge.id } as SeamName,
        }));
      const alike = line.kind === 'wedge' ? through : darts;
      const share = shareOf(line, from);
      return (
        alike
          .map((each) => ({ ...each, off: Math.abs(shareOf(each.line, to) - share) }))
          .sort((a, b) => a.off - b.off)[0]?.name ?? null
      );
    }
  }
}

const isCentreOf = (line: BodyLine, block: BlockName): boolean =>
  line.kind === 'centre' && line.block === block;

/** Where a line stands at the waist, of the way from centre front to centre back. */
function shareOf(line: BodyLine, { round, waist }: Stood): number {
  const whole = wholeAt(round, waist);
  return distancesAt(round, waist, whole)(line) / whole;
}
