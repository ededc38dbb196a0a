// Whether the draft holds, in one line.

import { PROOFS, type Unit } from '../../document';
import { differencePhrase } from '../components/differenceWritten';
import type { Proof } from './proofs';

interface HeadlineProps {
  readonly seams: Proof;
  readonly crossings: Proof;
  readonly girths: Proof;
  readonly unit: Unit;
}

export function Headline({ seams, crossings, girths, unit }: HeadlineProps) {
  const { headline: words } = PROOFS;
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
    </div>
  );
}
