// The cutting table with the girth ledger on its level lines, and what part of it is in view.

import { type ReactNode, useCallback, useEffect, useId, useMemo, useRef, useState } from 'react';
import {
  addWedge,
  alterationsOf,
  CANVAS,
  type Change,
  type Client,
  changeStyle,
  LEVEL_TITLES,
  LEVEL_WORDS,
  openClient,
  openDraftOf,
  pieceLabel,
  type Unit,
  wedgesOf,
} from '../../../document';
import { inches, type LevelName, MOST_WEDGES, type Style } from '../../../engine';
import {
  DraftCanvas,
  type Handle,
  type HandleActions,
  layOut,
  layoutOf,
  type NewWedge,
  type StepSizes,
  useCanvasView,
} from '../../../table';
import { MeasureLink } from '../../components/links/MeasureLink';
import { UnalteredLegend } from '../../components/UnalteredLegend';
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
import { BlocksChoice, useShownBlocks } from './BlocksChoice';
import { CanvasTools } from './CanvasTools';
import { handleChange, handleLabel, handleValue } from './handleLabel';
import { Ledger } from './Ledger';
import { useLengthWords } from './useLengthWords';
import { useWarmUpPull } from './useWarmUpPull';

const STEPS: Readonly<Record<Unit, StepSizes>> = {
  in: { grid: inches(1 / 8), small: inches(1 / 16), large: inches(1 / 4) },
  cm: { grid: 2, small: 1, large: 5 },
};

/** Room the ledger takes beside the table, px; where there is less the girths stand on the table. */
const LEDGER_PX = 184;
const BESIDE_PX = 860;
/** Rims that names of levels, tape and girths take of the table, px; at the top what a name over the first line needs. */
const RIMS = {
  beside: { left: 104, right: 34, top: 0 },
  chips: { left: 84, right: 84, top: 4 },
  small: { left: 80, right: 78, top: 10 },
} as const;
const SMALL_PX = 640;
/** Least scale at which legs can be told apart, px for a mm; a smaller table shows a part of it. */
const LEAST_PX_PER_MM = 0.6;

interface CanvasPaneProps {
  readonly selected: string | null;
  readonly onSelect: (wedge: string | null) => void;
  readonly level: LevelName;
  readonly onLevel: (level: LevelName) => void;
  /** The choice of the half that is shown, where the halves differ. */
  readonly sideChoice: ReactNode;
  /** The garment as worn beside the table, where it was asked for. */
  readonly worn: ReactNode;
  readonly onWorn: (worn: boolean) => void;
  /** A handle is being pulled or moved by keys, or was let go. */
  readonly onPull: (pulling: boolean) => void;
}

export function CanvasPane(props: CanvasPaneProps) {
  const { selected, onSelect, level, onLevel, sideChoice, worn, onWorn, onPull } = props;
  const { client, savedDraft } = useOpen();
  const draft = useDraft();
  const committed = useCommittedDraft();
  // Places follow what was kept, so that the table stands still under a pull.
  const layout = useMemo(() => layOut(committed), [committed]);
  const frame = useRef<HTMLDivElement>(null);
  const { width, height } = useSize(frame);
  const beside = width >= BESIDE_PX;
  const small = width < SMALL_PX;
  const [coarse] = useState(() => window.matchMedia('(any-pointer: coarse)').matches);
  const [blocks, setBlocks, isOneBlock] = useShownBlocks(selected, committed);
  const seenLayout = useMemo(
    () => layout && layoutOf(layout, committed, blocks),
    [layout, committed, blocks],
  );
  const size = { width: Math.max(0, beside ? width - LEDGER_PX : width), height };
  const rims = RIMS[beside ? 'beside' : small ? 'small' : 'chips'];
  const shown = useCanvasView(seenLayout, size, LEAST_PX_PER_MM, rims);
  const keysId = useId();
  const [adding, setAdding] = useState(false);
  const [comparing, setComparing] = useState(false);
  const [bending, setBending] = useState(false);
  const side = useSide();
  const { fittings } = savedDraft;
  const redraft = useCallback(
    (style: Style) => draftOfSide(client, { style, fittings }, side),
    [client, fittings, side],
  );
  useEscape(adding, () => setAdding(false));
  const { comparison: saved } = savedDraft;
  const earlier = useMemo(
    () => (comparing && saved ? draftOfSide(saved, saved, side) : null),
    [comparing, saved, side],
  );
  // Of the half that is drawn.
  const isAltered = alterationsOf(fittings).some((each) => each.side === 'both' || each.side === side);
  // Under a pull it is left out: it would be drafted anew in every frame.
  const unaltered =
    draft === committed && isAltered ? draftOfSide(client, { style: savedDraft.style }, side) : null;
  const change = useStore((state) => state.change);
  const keptStyle = useKeptStyle();
  const messages = useCanvasMessages(client, keptStyle, small);
  const actions = useHandleActions(
    (handle) => handleChange(handle, keptStyle),
    (handle, value) => handleValue({ ...handle, value }, client.unit),
    onPull,
  );
  const choices = useMemo(
    () => (
      <>
        {isOneBlock ? <BlocksChoice blocks={blocks} onBlocks={setBlocks} /> : null}
        {sideChoice}
      </>
    ),
    [isOneBlock, blocks, setBlocks, sideChoice],
  );
  useWarmUpPull(layout !== null && width > 0, onPull);
  const add = ({ block, station }: NewWedge): void => {
    setAdding(false);
    const { style } = savedDraft;
    if (wedgesOf(style, side).filter((wedge) => wedge.block === block).length >= MOST_WEDGES) return;
    const next = addWedge(style, side, block, station);
    change({ code: 'wedgeAdded', block }, (book) => changeStyle(book, () => next));
    onSelect(wedgesOf(next, side).at(-1)?.id ?? null);
  };
  return (
    <div className={worn === null ? 'draft-table' : 'draft-table with-worn'}>
      {draft.blocks && layout ? (
        <CanvasTools
          shown={shown}
          adding={adding}
          onAdding={setAdding}
          comparing={comparing && saved !== null}
          onComparing={setComparing}
          bending={bending}
          onBending={setBending}
          worn={worn !== null}
          onWorn={onWorn}
        >
          {choices}
        </CanvasTools>
      ) : (
        <div className="tools-row">{sideChoice}</div>
      )}
      <p id={keysId} className="unseen">
        {CANVAS.keys}
      </p>
      <div className="table-frame" ref={frame}>
        {!draft.blocks || !layout ? (
          <div className="empty">
            <p>{CANVAS.empty}</p>
            {/* What is not measured yet is told below, with the way there. */}
            {draft.issues.some(({ code }) => code === 'measurementMissing') ? null : (
              <p>
                <MeasureLink fields={draft.issues.flatMap(({ at }) => at.field ?? [])} />
              </p>
            )}
          </div>
        ) : width > 0 ? (
          <>
            <DraftCanvas
              draft={draft}
              style={savedDraft.style}
              layout={layout}
              shown={shown}
              coarse={coarse}
              selected={selected}
              onSelect={onSelect}
              blocks={blocks}
              level={level}
              unit={client.unit}
              small={!beside}
              describedBy={keysId}
              actions={actions}
              steps={STEPS[client.unit]}
              dotsMm={client.unit === 'in' ? inches(0.5) : 10}
              earlier={earlier}
              unaltered={unaltered}
              onAdd={adding ? add : null}
              bending={bending ? redraft : null}
              messages={messages}
            />
            <Ledger
              layout={layout}
              view={shown.view}
              heightPx={size.height}
              asChips={!beside}
              coarse={coarse}
              level={level}
              onLevel={onLevel}
            />
          </>
        ) : null}
      </div>
      {worn}
      {/* Under a pull it stays, so that the table does. */}
      {isAltered && layout ? <UnalteredLegend /> : null}
    </div>
  );
}

const CANVAS_WORDS = {
  level: (name: LevelName): string => LEVEL_WORDS[name],
  levelTitle: (name: LevelName): string => LEVEL_TITLES[name],
  piece: pieceLabel,
  joinedSide: CANVAS.joinedSide,
  place: (place: keyof typeof CANVAS.places): string => CANVAS.places[place],
};

const noNote = (): string => '';

/** The same object as long as nothing is called otherwise: a pull changes none of it. */
function useCanvasMessages({ measurements, unit }: Client, style: Style, small: boolean) {
  const lengthWords = useLengthWords(unit);
  return useMemo(() => {
    const label = (handle: Handle): string => handleLabel(handle, style, { measurements, unit });
    return {
      ...CANVAS_WORDS,
      ...lengthWords,
      levelNote: small ? noNote : lengthWords.levelNote,
      // Both legs are the same number: told apart by where they are.
      handle: (handle: Handle): string =>
        handle.kind === 'leg' && (handle.which === 'inner' || handle.which === 'outer')
          ? CANVAS.handles.leg[handle.which]({ intake: label(handle) })
          : label(handle),
      value: (handle: Handle): string => handleValue(handle, unit),
    };
  }, [lengthWords, measurements, unit, style, small]);
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
      const savedDraft = openDraftOf(client);
      return {
        // Drafted now, it is remembered when it is drawn.
        draft: draftOfSide(client, savedDraft, side),
        style: savedDraft.style,
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
