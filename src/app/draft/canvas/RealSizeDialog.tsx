// Measuring the screen once: a card or a ruler held to it tells how large it draws a mm.

import { useState, useSyncExternalStore } from 'react';
import { MM_PER, REAL_SIZE } from '../../../document';
import { Dialog } from '../../components/Dialog';
import { keepScreenScale, screenScale, USUAL_PX_PER_MM } from '../../storage/device/screenScale';
import { useOpen } from '../../store/storeContext';

/** A bank card, a driving licence: 85.60 × 53.98 mm, the ID-1 size of ISO/IEC 7810. */
const CARD = { width: 85.6, height: 53.98, round: 3.18 } as const;
/** The ruler along its longer edge: how long a part is, mm, and how many there are. */
const RULERS = { in: { part: MM_PER.in, parts: 3 }, cm: { part: MM_PER.cm, parts: 8 } } as const;
/** Round the card, so that its line is not cut. mm */
const MARGIN = 1;
/** A window this narrow has no room for the card lying. */
const NARROW = '(max-width: 560px)';

interface RealSizeDialogProps {
  readonly onClose: () => void;
  /** Called with the px per mm that were found right. */
  readonly onMeasured: (pxPerMm: number) => void;
}

export default function RealSizeDialog({ onClose, onMeasured }: RealSizeDialogProps) {
  const [pxPerMm, setPxPerMm] = useState(() => screenScale(window) ?? USUAL_PX_PER_MM);
  const { unit } = useOpen().client;
  const upright = useNarrow();
  const { part, parts } = RULERS[unit];
  const ticks = Array.from({ length: parts }, (_, i) => i + 1);
  const [across, down] = upright ? [CARD.height, CARD.width] : [CARD.width, CARD.height];
  const [width, height] = [across + 2 * MARGIN, down + 2 * MARGIN];
  return (
    <Dialog wide={true} title={REAL_SIZE.title} onClose={onClose}>
      <p>{REAL_SIZE.how}</p>
      <div className="measure-screen">
        <svg
          role="img"
          aria-label={REAL_SIZE.drawing({ parts, unit })}
          width={width * pxPerMm}
          height={height * pxPerMm}
          viewBox={`${-MARGIN} ${-MARGIN} ${width} ${height}`}
        >
          <rect className="card-outline" width={across} height={down} rx={CARD.round} />
          <path
            className="ruler"
            d={ticks.map((tick) => (upright ? `M0 ${tick * part}h4` : `M${tick * part} 0v4`)).join('')}
          />
          {ticks.map((tick) => (
            <text key={tick} x={upright ? 8 : tick * part} y={upright ? tick * part + 1.2 : 8}>
              {tick === parts ? `${tick} ${unit}` : tick}
            </text>
          ))}
          <text x={across / 2} y={down / 2 + 1.2}>
            {REAL_SIZE.card}
          </text>
        </svg>
      </div>
      <div className="measure-foot">
        <label className="slide">
          <span>{REAL_SIZE.size}</span>
          <input
            type="range"
            min={2}
            max={10}
            step={0.01}
            value={pxPerMm}
            aria-valuetext={REAL_SIZE.sizeNow({ px: (part * parts * pxPerMm).toFixed(0), parts, unit })}
            onChange={(event) => setPxPerMm(Number(event.target.value))}
          />
        </label>
        <p className="dialog-actions">
          <button
            type="button"
            className="primary"
            onClick={() => {
              keepScreenScale(window, pxPerMm);
              onMeasured(pxPerMm);
            }}
          >
            {REAL_SIZE.fits}
          </button>
        </p>
      </div>
    </Dialog>
  );
}

/** Whether the window is narrow now; a page without a screen is not. */
function useNarrow(): boolean {
  return useSyncExternalStore(
    (refreshScale) => {
      const query = window.matchMedia?.(NARROW);
      query?.addEventListener('change', refreshScale);
      return () => query?.removeEventListener('change', refreshScale);
    },
    () => window.matchMedia?.(NARROW).matches ?? false,
  );
}
