// Measuring the screen once: a card or a ruler held to it tells how large it draws a mm.

import { useState } from 'react';
import { Dialog } from '../parts/Dialog';
import { keepScreenScale, screenScale, USUAL_PX_PER_MM } from '../storage/screenScale';

/** A bank card, a driving licence: 85.60 × 53.98 mm, the ID-1 size of ISO/IEC 7810. */
const CARD = { width: 85.6, height: 53.98, round: 3.18 } as const;
const RULER_MM = 100;

interface RealSizeDialogProps {
  readonly onClose: () => void;
  /** Called with the px per mm that were found right. */
  readonly onMeasured: (pxPerMm: number) => void;
}

export default function RealSizeDialog({ onClose, onMeasured }: RealSizeDialogProps) {
  const [pxPerMm, setPxPerMm] = useState(() => screenScale(window) ?? USUAL_PX_PER_MM);
  const centimetres = Array.from({ length: RULER_MM / 10 + 1 }, (_, i) => i);
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
          aria-valuetext={`${(RULER_MM * pxPerMm).toFixed(0)} px for 100 mm`}
          onChange={(event) => setPxPerMm(Number(event.target.value))}
        />
      </label>
      <div className="measure-screen">
        <svg
          role="img"
          aria-label="A card and a ruler of 100 mm"
          width={(RULER_MM + 12) * pxPerMm}
          height={(CARD.height + 20) * pxPerMm}
          viewBox={`-6 -2 ${RULER_MM + 12} ${CARD.height + 20}`}
        >
          <rect className="card-outline" width={CARD.width} height={CARD.height} rx={CARD.round} />
          <text x={CARD.width / 2} y={CARD.height / 2 + 1.5}>
            bank card
          </text>
          <path
            className="ruler"
            d={`M0 ${CARD.height + 8}H${RULER_MM}${centimetres.map((cm) => `M${cm * 10} ${CARD.height + 5}v3`).join('')}`}
          />
          {centimetres.map((cm) => (
            <text key={cm} x={cm * 10} y={CARD.height + 13}>
              {cm}
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
