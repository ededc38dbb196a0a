// Measuring the screen once: a card or a ruler held to it tells how large it draws a mm.

import { useState } from 'react';
import { MM_PER } from '../../document';
import { Dialog } from '../parts/Dialog';
import { keepScreenScale, screenScale, USUAL_PX_PER_MM } from '../storage/screenScale';
import { useOpen } from '../tableContext';

/** A bank card, a driving licence: 85.60 × 53.98 mm, the ID-1 size of ISO/IEC 7810. */
const CARD = { width: 85.6, height: 53.98, round: 3.18 } as const;
/** A ruler of each tape: how long a part is, mm, and how many there are. */
const RULERS = { in: { part: MM_PER.in, parts: 4 }, cm: { part: MM_PER.cm, parts: 10 } } as const;

interface RealSizeDialogProps {
  readonly onClose: () => void;
  /** Called with the px per mm that were found right. */
  readonly onMeasured: (pxPerMm: number) => void;
}

export default function RealSizeDialog({ onClose, onMeasured }: RealSizeDialogProps) {
  const [pxPerMm, setPxPerMm] = useState(() => screenScale(window) ?? USUAL_PX_PER_MM);
  const { unit } = useOpen().client;
  const { part, parts } = RULERS[unit];
  const ruler = part * parts;
  const marks = Array.from({ length: parts + 1 }, (_, i) => i);
  return (
    <Dialog title="Real size on this screen" onClose={onClose}>
      <p>
        Hold a bank card or a ruler against the screen and move the slider until the drawing is as large. This
        is kept for this screen; a paper pattern is never printed by it.
      </p>
      <label className="slide">
        <span>Size</span>
        <input
          type="range"
          min={2}
          max={10}
          step={0.01}
          value={pxPerMm}
          aria-valuetext={`${(ruler * pxPerMm).toFixed(0)} px for ${parts} ${unit}`}
          onChange={(event) => setPxPerMm(Number(event.target.value))}
        />
      </label>
      <div className="measure-screen">
        <svg
          role="img"
          aria-label={`A bank card and a ruler of ${parts} ${unit}`}
          width={(ruler + 14) * pxPerMm}
          height={(CARD.height + 20) * pxPerMm}
          viewBox={`-6 -2 ${ruler + 14} ${CARD.height + 20}`}
        >
          <rect className="card-outline" width={CARD.width} height={CARD.height} rx={CARD.round} />
          <text x={CARD.width / 2} y={CARD.height / 2 + 1.5}>
            bank card
          </text>
          <path
            className="ruler"
            d={`M0 ${CARD.height + 8}H${ruler}${marks.map((mark) => `M${mark * part} ${CARD.height + 5}v3`).join('')}`}
          />
          {marks.map((mark) => (
            <text key={mark} x={mark * part} y={CARD.height + 13}>
              {mark === parts ? `${mark} ${unit}` : mark}
            </text>
          ))}
        </svg>
      </div>
      <p className="dialog-actions">
        <button
          type="button"
          className="primary"
          onClick={() => {
            keepScreenScale(window, pxPerMm);
            onMeasured(pxPerMm);
          }}
        >
          It fits: show real size
        </button>
      </p>
    </Dialog>
  );
}
