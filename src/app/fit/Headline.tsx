// Whether the draft holds, and which alterations it has, in one line each.

import { countOutcomes, outcomesOf, PROOFS, type Unit } from '../../document';
import type { Draft } from '../../engine';
import { differencePhrase } from '../components/differenceWritten';
import { useOpen } from '../store/storeContext';
import type { Proof } from './proofs';

interface HeadlineProps {
  readonly draft: Draft;
  readonly seams: Proof;
  readonly crossings: Proof;
  readonly girths: Proof;
  readonly unit: Unit;
}

export function Headline({ draft, seams, crossings, girths, unit }: HeadlineProps) {
  const { headline: words } = PROOFS;
  const { made, refused } = countOutcomes(outcomesOf(useOpen().savedDraft.fittings, draft));
  const off = (proof: Proof): number => proof.rows.filter((row) => row.off).length;
  const toMend = { seams: off(seams), crossings: off(crossings), girths: off(girths) };
  const holds = toMend.seams + toMend.crossings + toMend.girths === 0;
  return (
    <div className="headline">
      <h2 className={holds ? 'met' : 'off'}>{holds ? words.holds : words.lookAgain}</h2>
      <p>
        {holds
          ? words.allHold({
              seams: seams.count,
              crossings: crossings.count,
              girths: girths.count,
              widest: differencePhrase(seams.widest, unit),
            })
          : words.off(toMend)}
      </p>
      {made > 0 ? <p>{words.altered({ count: made })}</p> : null}
      {refused > 0 ? <p className="said off">{words.unmade({ count: refused })}</p> : null}
    </div>
  );
}
