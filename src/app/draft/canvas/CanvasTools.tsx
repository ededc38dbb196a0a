// What can be done with the table itself: zoom, all of it, real size, a new wedge, an earlier draft under it.

import { useState } from 'react';
import { CANVAS, type ComparisonDraft, changeDraft } from '../../../document';
import type { CanvasView } from '../../../table';
import { formatDay, today } from '../../components/formatDay';
import { LaterDialog } from '../../components/LaterDialog';
import { lazyPart } from '../../components/later';
import { screenScale } from '../../storage/screenScale';
import { useOpen, useStore } from '../../store/storeContext';

const TEXTS = CANVAS.tools;

const RealSizeDialog = lazyPart(async () => (await import('./RealSizeDialog')).default);

interface CanvasToolsProps {
  readonly shown: CanvasView;
  readonly adding: boolean;
  readonly onAdding: (adding: boolean) => void;
  readonly comparing: boolean;
  readonly onComparing: (comparing: boolean) => void;
  /** The axis of the wedge in hand is bent by its handles, instead of its intake being pulled. */
  readonly bending: boolean;
  readonly onBending: (bending: boolean) => void;
}

export function CanvasTools(props: CanvasToolsProps) {
  const { shown, adding, onAdding, comparing, onComparing, bending, onBending } = props;
  const { client, savedDraft } = useOpen();
  const change = useStore((state) => state.change);
  const [measuring, setMeasuring] = useState(false);
  const realSize = (): void => {
    const kept = screenScale(window);
    if (kept === null) setMeasuring(true);
    else shown.zoomTo(kept);
  };
  const save = (): void => {
    const saved: ComparisonDraft = {
      on: today(),
      measurements: client.measurements,
      ...(client.sides ? { sides: client.sides } : {}),
      style: savedDraft.style,
    };
    change({ code: 'comparisonSaved' }, (book) =>
      changeDraft(book, (open) => ({ ...open, comparison: saved })),
    );
  };
  const { comparison: saved } = savedDraft;
  const differs =
    saved !== null &&
    (saved.style !== savedDraft.style ||
      saved.measurements !== client.measurements ||
      saved.sides !== client.sides);
  return (
    <div className="table-tools" role="toolbar" aria-label={TEXTS.label}>
      <button type="button" onClick={() => shown.zoomBy(1 / 1.25)}>
        {TEXTS.zoomOut}
      </button>
      <button type="button" onClick={() => shown.zoomBy(1.25)}>
        {TEXTS.zoomIn}
      </button>
      <button type="button" disabled={shown.isFitted} onClick={shown.fit}>
        {TEXTS.fit}
      </button>
      <button type="button" onClick={realSize}>
        {TEXTS.realSize}
      </button>
      {screenScale(window) === null ? null : (
        <button type="button" className="quiet" onClick={() => setMeasuring(true)}>
          {TEXTS.measureScreen}
        </button>
      )}
      <p className="apart hint" role="status">
        {adding ? TEXTS.adding : bending ? TEXTS.bending : ''}
      </p>
      <button type="button" aria-pressed={adding} onClick={() => onAdding(!adding)}>
        {TEXTS.addWedge}
      </button>
      <button type="button" aria-pressed={bending} onClick={() => onBending(!bending)}>
        {TEXTS.bend}
      </button>
      <button type="button" disabled={saved !== null && !differs} onClick={save}>
        {TEXTS.save}
      </button>
      {saved ? (
        <button type="button" aria-pressed={comparing} onClick={() => onComparing(!comparing)}>
          {TEXTS.compare({ day: formatDay(saved.on) })}
        </button>
      ) : null}
      {measuring ? (
        <LaterDialog onClose={() => setMeasuring(false)}>
          <RealSizeDialog
            onClose={() => setMeasuring(false)}
            onMeasured={(pxPerMm) => {
              setMeasuring(false);
              shown.zoomTo(pxPerMm);
            }}
          />
        </LaterDialog>
      ) : null}
    </div>
  );
}
