// The garment as worn in a corner of the table. It follows a pull on a coarse mesh when the pull rests, and is sewn on the usual one
// when the handle is let go.

import { useMemo, useRef, useState } from 'react';
import { notJudgedSentence, openClient, openDraftOf, WORN } from '../../document';
import { draftOfSide, usePullAtRest, useStore } from '../store/storeContext';
import '../styles/worn.css';
import '../styles/smallWorn.css';
import { useWorn } from './useWorn';
import { type Camera, FRONT } from './view/camera';
import { type DrawNow, WornView } from './view/WornView';
import { WornLegend } from './WornLegend';

interface SmallWornProps {
  /** A handle is being pulled. */
  readonly pulling: boolean;
  readonly onClose: () => void;
}

export default function SmallWorn({ pulling, onClose }: SmallWornProps) {
  const kept = useStore((state) => state.history.present);
  const pulled = usePullAtRest(pulling);
  const book = pulled ?? kept;
  const client = openClient(book);
  const savedDraft = openDraftOf(client);
  const { result, state } = useWorn({
    draft: draftOfSide(client, savedDraft, null),
    wearer: client,
    style: savedDraft.style,
    ...(pulled ? { width: PULLED_MM } : {}),
  });
  const pictures = useMemo(() => (result?.picture ? [result.picture] : []), [result]);
  const [camera, setCamera] = useState<Camera>(FRONT);
  const drawNow = useRef<DrawNow>(null);
  const isFresh = state === 'sewn' || (state === 'busy' && pulled !== null);
  const says = isFresh ? '' : state === 'busy' && result ? WORN.small.old : WORN[state];
  const worst = result?.halves.flatMap((half) => half.worst)[0];
  return (
    <section className="worn-small" aria-label={WORN.title}>
      <header>
        <h2>{WORN.title}</h2>
        <button type="button" className="quiet" onClick={onClose}>
          {WORN.small.close}
        </button>
      </header>
      {result?.picture && (
        <>
          <WornView
            picture={result.picture}
            beside={pictures}
            shading="standOff"
            unit={client.unit}
            camera={camera}
            onCamera={setCamera}
            caption={null}
            drawNow={drawNow}
          />
          <WornLegend shading="standOff" unit={client.unit} brief={true} />
        </>
      )}
      <p role="status">{says}</p>
      {result && result.notJudged !== null && <p>{notJudgedSentence(result.notJudged)}</p>}
      {worst && <p>{WORN.worst.seen(worst, client.unit)}</p>}
      {result && result.leftOut.length > 0 && (
        <p className="hint">{WORN.leftOut({ pieces: result.leftOut })}</p>
      )}
    </section>
  );
}

/** Width of the mesh while a handle is pulled, mm. */
const PULLED_MM = 24;
