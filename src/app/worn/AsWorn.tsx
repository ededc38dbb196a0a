// The garment as worn: a large view with what is seen in it, in the Fit step.

import { useMemo, useRef, useState } from 'react';
import { notJudgedSentence, WORN } from '../../document';
import { useDraft, useOpen } from '../store/storeContext';
import '../styles/worn.css';
import { comparisonsOf } from './comparisons';
import type { SideSeamPlace } from './curedAt';
import { useWorn } from './useWorn';
import { type Camera, FRONT } from './view/camera';
import { savePicture } from './view/savePicture';
import type { Shading } from './view/shades';
import { type DrawNow, WornView } from './view/WornView';
import { WornBar } from './WornBar';
import { WornPlaces, WornTable } from './WornFigures';
import { WornLegend } from './WornLegend';

interface AsWornProps {
  /** Begins an alteration of the side seam. */
  readonly onSideSeam: (place: SideSeamPlace) => void;
}

export default function AsWorn({ onSideSeam }: AsWornProps) {
  const draft = useDraft();
  const { client, savedDraft } = useOpen();
  const { result, state } = useWorn({ draft, wearer: client, style: savedDraft.style });
  const comparisons = comparisonsOf(client, savedDraft);
  const [chosen, setChosen] = useState<string | null>(null);
  const other = comparisons.find(({ key }) => key === chosen) ?? null;
  const { style: otherStyle = null } = other ?? {};
  const otherDraft = other?.draft() ?? null;
  const asked = useMemo(
    () => otherDraft && otherStyle && { draft: otherDraft, wearer: client, style: otherStyle },
    [otherDraft, otherStyle, client],
  );
  const compared = useWorn(asked);
  const [shading, setShading] = useState<Shading>('standOff');
  const [camera, setCamera] = useState<Camera>(FRONT);
  const draws = [useRef<DrawNow>(null), useRef<DrawNow>(null)] as const;

  const before = other && compared.state === 'sewn' ? compared.result : null;
  const pictures = useMemo(
    () => [before?.picture, result?.picture].flatMap((picture) => picture ?? []),
    [before, result],
  );
  const views = [
    ...(before?.picture && other
      ? [{ picture: before.picture, caption: other.label, drawNow: draws[1] }]
      : []),
    ...(result?.picture
      ? [
          {
            picture: result.picture,
            caption: before?.picture ? WORN.compare.now : null,
            drawNow: draws[0],
          },
        ]
      : []),
  ];
  const says =
    state === 'busy' ? (result === null ? WORN.busy : WORN.old) : state === 'sewn' ? '' : WORN[state];
  /** The first picture is on its way: its room is kept, so that nothing below it moves when it comes. */
  const isFirst = state === 'busy' && result === null;
  const save = (): void =>
    savePicture(
      views.flatMap(({ caption, drawNow }) => {
        const canvas = drawNow.current?.();
        return canvas ? [{ canvas, caption }] : [];
      }),
      WORN.file,
    );
  return (
    <section className="worn" aria-label={WORN.title}>
      <h2 className="unseen">{WORN.title}</h2>
      <div className="worn-layout">
        {isFirst && (
          <div className="worn-seen-part">
            <p className="worn-room waiting" aria-hidden="true">
              {says}
            </p>
          </div>
        )}
        {views.length > 0 && (
          <>
            <WornBar shading={shading} onShading={setShading} camera={camera} onCamera={setCamera} />
            <div className="worn-seen-part">
              <div className="worn-stage">
                {views.map((view) => (
                  <WornView
                    key={view.drawNow === draws[0] ? 'now' : 'before'}
                    {...view}
                    beside={pictures}
                    shading={shading}
                    unit={client.unit}
                    camera={camera}
                    onCamera={setCamera}
                  />
                ))}
              </div>
              {result && result.leftOut.length > 0 && (
                <p className="hint">{WORN.leftOut({ pieces: result.leftOut })}</p>
              )}
              <div className="worn-foot">
                <WornLegend shading={shading} unit={client.unit} />
                <button type="button" className="quiet" onClick={save}>
                  {WORN.save}
                </button>
              </div>
            </div>
          </>
        )}
        <div className="worn-said">
          <p role="status" className={isFirst ? 'unseen' : undefined}>
            {says}
          </p>
          {result && result.notJudged !== null && <p>{notJudgedSentence(result.notJudged)}</p>}
          {result?.other && <p>{WORN.other({ way: result.other, unit: client.unit })}</p>}
          {result && result.halves.length > 0 && (
            <>
              <WornPlaces halves={result.halves} unit={client.unit} onSideSeam={onSideSeam} />
              <p className="hint">{WORN.caution}</p>
              <CompareWith
                choices={comparisons}
                chosen={other?.key ?? null}
                onChoose={setChosen}
                says={other && compared.state !== 'sewn' ? WORN[compared.state] : ''}
              />
              {before && before.notJudged !== null && <p>{notJudgedSentence(before.notJudged)}</p>}
              {result.halves.map((half) => (
                <WornTable
                  key={half.side}
                  half={half}
                  unit={client.unit}
                  before={before?.halves.find(({ side }) => side === half.side) ?? null}
                />
              ))}
            </>
          )}
          {result?.picture && (
            <aside className="worn-assumed">
              <h3>{WORN.assumed.title}</h3>
              <ul>
                {WORN.assumed
                  .lines({
                    hollow: result.hollow,
                    isMeasured: client.measurements.hollowOfBack !== null,
                    unit: client.unit,
                  })
                  .map((line) => (
                    <li key={line}>{line}</li>
                  ))}
              </ul>
            </aside>
          )}
        </div>
      </div>
    </section>
  );
}

interface CompareWithProps {
  readonly choices: readonly { readonly key: string; readonly label: string }[];
  readonly chosen: string | null;
  readonly onChoose: (key: string | null) => void;
  readonly says: string;
}

/** What the garment is seen beside; without anything to choose, how to come by it. */
function CompareWith({ choices, chosen, onChoose, says }: CompareWithProps) {
  if (choices.length === 0) return <p className="hint">{WORN.compare.nothing}</p>;
  return (
    <div className="worn-compare">
      <label>
        {WORN.compare.label}{' '}
        <select value={chosen ?? ''} onChange={({ target }) => onChoose(target.value || null)}>
          <option value="">{WORN.compare.none}</option>
          {choices.map(({ key, label }) => (
            <option key={key} value={key}>
              {label}
            </option>
          ))}
        </select>
      </label>
      <span role="status" className="hint">
        {says}
      </span>
    </div>
  );
}
