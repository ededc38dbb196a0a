// The cutting table with the girth ledger on its level lines, and what part of it is in view.

import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import {
  addWedge,
  CANVAS,
  type Change,
  changeStyle,
  formatLength,
  ISSUES,
  LEVEL_WORDS,
  openClient,
  openDraftOf,
  pieceLabel,
  type Unit,
  wedgesOf,
} from '../../../document';
import { inches, MOST_WEDGES, type Style } from '../../../engine';
import {
  DraftCanvas,
  type Handle,
  type HandleActions,
  layOut,
  type NewWedge,
  type StepSizes,
  useCanvasView,
} from '../../../table';
import { useSize } from '../../components/useSize';
import { useSide } from '../../store/sideContext';
import {
  draftOfSide,
  useCommittedDraft,
  useDraft,
  useKeptStyle,
  useOpen,
  useStore,
} from '../../store/storeContext';
import { CanvasTools } from './CanvasTools';
import { handleChange, handleLabel, handleValue } from './handleLabel';
import { Ledger } from './Ledger';
import { useWarmUpDrag } from './useWarmUpDrag';

const STEPS: Readonly<Record<Unit, StepSizes>> = {
  in: { grid: inches(1 / 8), small: inches(1 / 16), large: inches(1 / 4) },
  cm: { grid: 2, small: 1, large: 5 },
};

/** Room the ledger takes beside the table, px; on a narrow screen it stands below. */
const LEDGER_PX = 300;
const NARROW_PX = 760;
/**
 * Least scale at which legs can be told apart, px for a mm; a smaller screen shows a part of the table. Beside the ledger
 * there is room to see a shouldered block whole, a little smaller.
 */
const LEAST_PX_PER_MM = { narrow: 1.05, beside: 0.75 } as const;
/** What header, tools and margins leave of the window's height, and the least a table is worked on. px */
const KEPT_PX = 340;
const LEAST_HEIGHT_PX = { fine: 400, coarse: 500 } as const;
/** The part of a narrow window's height that the table takes at most, so that the page can be scrolled past it. */
const NARROW_SHARE = 0.7;

interface CanvasPaneProps {
  readonly selected: string | null;
  readonly onSelect: (wedge: string | null) => void;
  /** A handle is being pulled or moved by keys, or was let go. */
  readonly onPull: (pulling: boolean) => void;
}

export function CanvasPane({ selected, onSelect, onPull }: CanvasPaneProps) {
  const { client, savedDraft } = useOpen();
  const draft = useDraft();
  const committed = useCommittedDraft();
  // Places follow what was kept, so that the table stands still under a pull.
  const layout = useMemo(() => layOut(committed), [committed]);
  const frame = useRef<HTMLDivElement>(null);
  const { width } = useSize(frame);
  const narrow = width < NARROW_PX;
  const [coarse] = useState(() => window.matchMedia('(any-pointer: coarse)').matches);
  const size = {
    width: Math.max(0, (narrow ? width : width - LEDGER_PX) - 2),
    height: narrow
      ? Math.min((layout?.height ?? 0) * LEAST_PX_PER_MM.narrow, window.innerHeight * NARROW_SHARE)
      : Math.max(coarse ? LEAST_HEIGHT_PX.coarse : LEAST_HEIGHT_PX.fine, window.innerHeight - KEPT_PX),
  };
  const shown = useCanvasView(layout, size, LEAST_PX_PER_MM[narrow ? 'narrow' : 'beside']);
  const [adding, setAdding] = useState(false);
  const [comparing, setComparing] = useState(false);
  const [bending, setBending] = useState(false);
  const side = useSide();
  const redraft = useCallback((style: Style) => draftOfSide(client, style, side), [client, side]);
  useEscape(adding, () => setAdding(false));
  const { comparison: saved } = savedDraft;
  const earlier = useMemo(
    () => (comparing && saved ? draftOfSide(saved, saved.style, side) : null),
    [comparing, saved, side],
  );
  const change = useStore((state) => state.change);
  const keptStyle = useKeptStyle();
  const label = (handle: Handle): string => handleLabel(handle, keptStyle);
  const actions = useHandleActions(
    (handle) => handleChange(handle, keptStyle),
    (handle, value) => handleValue({ ...handle, value }, client.unit),
    onPull,
  );
  useWarmUpDrag(layout !== null && width > 0, onPull);
  const add = ({ block, station }: NewWedge): void => {
    setAdding(false);
    const { style } = savedDraft;
    if (wedgesOf(style, side).filter((wedge) => wedge.block === block).length >= MOST_WEDGES) return;
    const next = addWedge(style, side, block, station);
    change({ code: 'wedgeAdded', block }, (book) => changeStyle(book, () => next));
    onSelect(wedgesOf(next, side).at(-1)?.id ?? null);
  };
  return (
    <>
      {draft.blocks && layout ? (
        <CanvasTools
          shown={shown}
          adding={adding}
          onAdding={setAdding}
          comparing={comparing && saved !== null}
          onComparing={setComparing}
          bending={bending}
          onBending={setBending}
        />
      ) : null}
      <div className={`table-and-ledger${narrow ? ' narrow' : ''}`} ref={frame}>
        {!draft.blocks || !layout ? (
          <div className="empty">
            <p>{CANVAS.empty}</p>
            {/* What is not measured yet is told below, with the way there. */}
            {draft.issues.some(({ code }) => code === 'measurementMissing') ? null : (
              <p>
                <a href="#measure">{ISSUES.goToMeasurements}</a>
              </p>
            )}
          </div>
        ) : width > 0 ? (
          <>
            <div className="table-frame">
              <DraftCanvas
                draft={draft}
                style={savedDraft.style}
                layout={layout}
                shown={shown}
                coarse={coarse}
                selected={selected}
                onSelect={onSelect}
                actions={actions}
                steps={STEPS[client.unit]}
                dotsMm={client.unit === 'in' ? inches(0.5) : 10}
                earlier={earlier}
                onAdd={adding ? add : null}
                bending={bending ? redraft : null}
                messages={{
                  level: (name) => LEVEL_WORDS[name],
                  piece: pieceLabel,
                  // Both legs are the same number: told apart by where they are.
                  handle: (handle) =>
                    handle.kind === 'leg' && (handle.which === 'inner' || handle.which === 'outer')
                      ? CANVAS.handles.leg[handle.which]({ intake: label(handle) })
                      : label(handle),
                  length: (mm) => formatLength(mm, client.unit, { withUnit: true }),
                  value: (handle) => handleValue(handle, client.unit),
                  joinedSide: CANVAS.joinedSide,
                  place: (place) => CANVAS.places[place],
                }}
              />
            </div>
            <Ledger view={shown.view} heightPx={size.height} stacked={narrow} coarse={coarse} />
          </>
        ) : null}
      </div>
    </>
  );
}

/** Escape leaves what was begun, wherever the focus is. */
function useEscape(begun: boolean, leave: () => void): void {
  useEffect(() => {
    if (!begun) return;
    const press = ({ key }: KeyboardEvent): void => {
      if (key === 'Escape') leave();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [begun, leave]);
}

function useHandleActions(
  changeOf: (handle: Handle) => Change,
  readingOf: (handle: Handle, value: number) => string,
  onPull: (pulling: boolean) => void,
): HandleActions {
  const show = useStore((state) => state.show);
  const keep = useStore((state) => state.keep);
  const drop = useStore((state) => state.drop);
  const kept = useStore((state) => state.history.present);
  const side = useSide();
  return {
    prepare: (handle, value) => {
      const book = changeStyle(kept, (style) => handle.set(style, value));
      const client = openClient(book);
      const { style } = openDraftOf(client);
      return {
        // Drafted now, it is remembered when it is drawn.
        draft: draftOfSide(client, style, side),
        style,
        show: () => {
          onPull(true);
          show(() => book);
        },
      };
    },
    commit: (handle, value, by) => {
      onPull(false);
      keep(changeOf(handle), { value: value === null ? '' : readingOf(handle, value), by });
    },
    restore: () => {
      onPull(false);
      drop();
    },
  };
}
