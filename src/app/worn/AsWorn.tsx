// The garment as worn: a large view with what is seen in it, in the Fit step.

import { useState } from 'react';
import { notJudgedSentence, WORN } from '../../document';
import { useDraft, useOpen } from '../store/storeContext';
import '../styles/worn.css';
import { useWorn } from './useWorn';
import { SHADINGS, type Shading } from './view/shades';
import { WornView } from './view/WornView';
import { WornPlaces, WornTable } from './WornFigures';
import { WornLegend } from './WornLegend';

export default function AsWorn() {
  const draft = useDraft();
  const { client, savedDraft } = useOpen();
  const { result, state } = useWorn(draft, client, savedDraft.style);
  const [shading, setShading] = useState<Shading>('standOff');
  const says =
    state === 'busy' ? (result === null ? WORN.busy : WORN.old) : state === 'sewn' ? '' : WORN[state];
  return (
    <section className="worn" aria-label={WORN.title}>
      <header>
        <h2>{WORN.title}</h2>
        <p className="hint">{WORN.intro}</p>
        <p role="status">{says}</p>
        {result && result.notJudged !== null && <p>{notJudgedSentence(result.notJudged)}</p>}
      </header>
      {result?.picture && (
        <div className="worn-seen-part">
          <fieldset className="held">
            <legend>{WORN.shading.label}</legend>
            {SHADINGS.map((each) => (
              <label key={each}>
                <input
                  type="radio"
                  name="shading"
                  checked={shading === each}
                  onChange={() => setShading(each)}
                />
                <span>{WORN.shading[each]}</span>
              </label>
            ))}
          </fieldset>
          <WornView picture={result.picture} shading={shading} />
          <WornLegend shading={shading} />
        </div>
      )}
      {result && result.halves.length > 0 && (
        <div className="worn-said">
          <WornPlaces halves={result.halves} />
          {result.halves.map((half) => (
            <WornTable key={half.side} half={half} />
          ))}
        </div>
      )}
      {result?.picture && (
        <aside className="worn-assumed">
          <h3>{WORN.assumed.title}</h3>
          <ul>
            {WORN.assumed.lines({ hollow: result.hollow }).map((line) => (
              <li key={line}>{line}</li>
            ))}
            {result.leftOut.length > 0 && <li>{WORN.leftOut({ pieces: result.leftOut })}</li>}
          </ul>
        </aside>
      )}
    </section>
  );
}
