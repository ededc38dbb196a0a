// What can be done with the table itself, as a row of signs that tell their names: a new wedge, bending, an earlier draft under
// this one; and at the other end the scale.

import { memo, type ReactNode, useState } from 'react';
import { CANVAS, type ComparisonDraft, changeDraft, delta, inForce } from '../../../document';
import type { CanvasView } from '../../../table';
import { TextField } from '../../components/fields/TextField';
import { formatDay, today } from '../../components/files/formatDay';
import { LaterDialog } from '../../components/later/LaterDialog';
import { lazyPart } from '../../components/later/later';
import { Toolbar } from '../../components/Toolbar';
import { screenScale, USUAL_PX_PER_MM } from '../../storage/device/screenScale';
import { useKept, useStore } from '../../store/storeContext';
import { StyleChoice } from '../styles/StyleChoice';

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
  /** The garment as worn is seen beside the table. */
  readonly worn: boolean;
  readonly onWorn: (worn: boolean) => void;
  /** What stands before the tools. */
  readonly children?: ReactNode;
}

/** Paths of the signs, on a square of 20. */
const SIGNS = {
  addWedge: 'M5 3Q8 7 5 10Q2 14 4 17M10 3Q8 7 11 10Q13 14 11 17M14 10h5M16.500 7.500v5',
  bend: 'M5 3Q15 8 10 10Q5 12 12 17M10 10h.01M3 10h3M14 10h3',
  worn: 'M6 3Q7 7 6 10Q7 12 5 17H15Q13 12 14 10Q13 7 14 3Q10 6 6 3Z',
  save: 'M4 3h9l3 3v11H4ZM7 3v5h5V3M7 17v-5h6v5',
  compare: 'M3 3h9v9H3ZM8 8h9v9H8Z',
  zoomOut: 'M4 10h12',
  zoomIn: 'M4 10h12M10 4v12',
  fit: 'M3 7V3h4M13 3h4v4M17 13v4h-4M7 17H3v-4M7 7h6v6H7Z',
  realSize: 'M2 6h16v8H2ZM5 6v3M8 6v4M11 6v3M14 6v4',
  more: 'M4 10h.01M10 10h.01M16 10h.01',
  measureScreen: 'M3 4h14v9H3ZM7 17h6M10 13v4',
} as const;

export const CanvasTools = memo(function CanvasTools(props: CanvasToolsProps) {
  const { shown, adding, onAdding, comparing, onComparing, bending, onBending, worn, onWorn } = props;
  // As kept: the tools are not drawn again under a pull.
  const { client, savedDraft } = useKept();
  const change = useStore((state) => state.change);
  const [measuring, setMeasuring] = useState(false);
  const [unfolded, setUnfolded] = useState(false);
  const kept = screenScale(window);
  const realSize = (): void => {
    if (kept === null) setMeasuring(true);
    else shown.zoomTo(kept);
  };
  const save = (): void => {
    const saved: ComparisonDraft = {
      on: today(),
      name: savedDraft.name,
      measurements: client.measurements,
      ...(client.sides ? { sides: client.sides } : {}),
      style: savedDraft.style,
      ...(altered.length > 0 ? { fittings: altered } : {}),
    };
    change({ code: 'comparisonSaved' }, (book) =>
      changeDraft(book, (open) => ({ ...open, comparison: saved })),
    );
  };
  const { comparison: saved } = savedDraft;
  const altered = inForce(savedDraft.fittings);
  const differs =
    saved !== null &&
    (saved.style !== savedDraft.style ||
      saved.measurements !== client.measurements ||
      saved.sides !== client.sides ||
      delta(saved.fittings ?? [], altered) !== null);
  const percent = Math.round((100 * shown.view.pxPerMm) / (kept ?? USUAL_PX_PER_MM));
  return (
    <div className="tools-row">
      {props.children}
      <StyleChoice />
      <Toolbar className={unfolded ? 'table-tools unfolded' : 'table-tools'} label={TEXTS.label}>
        <Tool sign="addWedge" name={TEXTS.addWedge} pressed={adding} onPress={() => onAdding(!adding)} />
        <Tool sign="bend" name={TEXTS.bend} pressed={bending} onPress={() => onBending(!bending)} />
        <Tool sign="save" name={TEXTS.save} disabled={saved !== null && !differs} onPress={save} />
        {saved ? (
          <Tool
            sign="compare"
            name={
              saved.name === undefined
                ? TEXTS.compareUnnamed({ day: formatDay(saved.on) })
                : TEXTS.compare({ name: saved.name, day: formatDay(saved.on) })
            }
            pressed={comparing}
            onPress={() => onComparing(!comparing)}
          />
        ) : null}
        <Tool sign="worn" name={TEXTS.worn} pressed={worn} onPress={() => onWorn(!worn)} />
        <p className="hint" role="status">
          {adding ? TEXTS.adding : bending ? TEXTS.bending : ''}
        </p>
        <Tool sign="zoomOut" name={TEXTS.zoomOut} onPress={() => shown.zoomBy(1 / 1.25)} />
        <span className="scale hint" aria-hidden="true">
          {TEXTS.scale({ percent: String(percent) })}
        </span>
        <Tool sign="zoomIn" name={TEXTS.zoomIn} onPress={() => shown.zoomBy(1.25)} />
        <Tool sign="fit" name={TEXTS.fit} disabled={shown.isFitted} onPress={shown.fit} />
        <Tool sign="realSize" name={TEXTS.realSize} onPress={realSize} />
        {kept === null ? null : (
          <Tool sign="measureScreen" name={TEXTS.measureScreen} onPress={() => setMeasuring(true)} />
        )}
        <Tool sign="more" name={TEXTS.more} pressed={unfolded} onPress={() => setUnfolded(!unfolded)} />
      </Toolbar>
      {comparing && saved ? (
        <div className="compared">
          <TextField
            label={TEXTS.comparedName}
            value={saved.name ?? ''}
            onKeep={(name) =>
              change({ code: 'comparisonNamed' }, (book) =>
                changeDraft(book, (open) => ({ ...open, comparison: { ...saved, name } })),
              )
            }
          />
        </div>
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
});

interface ToolProps {
  readonly sign: keyof typeof SIGNS;
  readonly name: string;
  /** Left out of what is only pressed and does not stay so. */
  readonly pressed?: boolean;
  readonly disabled?: boolean;
  readonly onPress: () => void;
}

function Tool({ sign, name, pressed, disabled = false, onPress }: ToolProps) {
  return (
    <button
      type="button"
      className={`tool tool-${sign}`}
      aria-pressed={pressed}
      disabled={disabled}
      onClick={onPress}
    >
      <svg viewBox="0 0 20 20" aria-hidden="true">
        <path d={SIGNS[sign]} />
      </svg>
      <span className="tip">{name}</span>
    </button>
  );
}
