// The garment as worn in a corner of the table: sewn when it is asked for and after each change, never during a pull.

import { useEffect, useRef, useState } from 'react';
import { notJudgedSentence, openClient, openDraftOf, WORN } from '../../document';
import { draftOfSide, useStore } from '../store/storeContext';
import '../styles/worn.css';
import '../styles/smallWorn.css';
import { useWorn } from './useWorn';
import { type Camera, FRONT } from './view/camera';
import { type DrawNow, WornView } from './view/WornView';
import type { WornResult } from './view/wornPicture';
import { WornLegend } from './WornLegend';

interface SmallWornProps {
  /** A handle is being pulled: what is seen stays as it is until it is let go. */
  readonly pulling: boolean;
  readonly onClose: () => void;
}

export default function SmallWorn({ pulling, onClose }: SmallWornProps) {
  // What was kept: the change under way is not sewn.
  const client = useStore((state) => openClient(state.history.present));
  const savedDraft = openDraftOf(client);
  const asked = { draft: draftOfSide(client, savedDraft, null), wearer: client, style: savedDraft.style };
  const { result, state } = useWorn(asked);
  const shown = useHeld(result, pulling);
  const [camera, setCamera] = useState<Camera>(FRONT);
  const drawNow = useRef<DrawNow>(null);
  const says = state === 'sewn' ? '' : state === 'busy' && result ? WORN.small.old : WORN[state];
  const worst = shown?.halves.flatMap((half) => half.worst)[0];
  return (
    <section className="worn-small" aria-label={WORN.title}>
      <header>
        <h2>{WORN.title}</h2>
        <button type="button" className="quiet" onClick={onClose}>
          {WORN.small.close}
        </button>
      </header>
      {shown?.picture && (
        <>
          <WornView
            picture={shown.picture}
            beside={shown.pictures}
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
      {shown && shown.notJudged !== null && <p>{notJudgedSentence(shown.notJudged)}</p>}
      {worst && <p>{WORN.worst.seen(worst, client.unit)}</p>}
    </section>
  );
}

type Held = WornResult & { readonly pictures: readonly NonNullable<WornResult['picture']>[] };

/** The last result that came while nothing was pulled. */
function useHeld(result: WornResult | null, pulling: boolean): Held | null {
  const [held, setHeld] = useState<Held | null>(null);
  useEffect(() => {
    if (!pulling) setHeld(result && { ...result, pictures: result.picture ? [result.picture] : [] });
  }, [result, pulling]);
  return held;
}
