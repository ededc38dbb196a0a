// The girth ledger: on each level line what was sewn and whether it is as asked, and the ease, typed here; of the level in hand
// also what the body measures and where the difference went.

import { memo, useDeferredValue, useState } from 'react';
import { CANVAS, formatLength, LEVEL_WORDS, percentOf, type Unit, writtenLength } from '../../../document';
import { type Draft, type LedgerRow, type LevelName, type Style, styleSpan } from '../../../engine';
import { type CanvasLayout, lineHeight, type Viewport } from '../../../table';
import { differencePhrase } from '../../components/differenceWritten';
import { LengthField } from '../../components/fields/LengthField';
import { useStyleNumber } from '../../components/fields/useNumberEdit';
import {
  ALONG_EDGE,
  alteredWritten,
  finishedGirth,
  sewnWord,
  whereOutside,
} from '../../components/girthWords';
import { SeenContext, useDraft, useOpen } from '../../store/storeContext';
import { spread } from './spread';

const TEXTS = CANVAS.ledger;

interface LedgerProps {
  /** Where the level lines are drawn. */
  readonly layout: CanvasLayout;
  /** What part of the table is in view: rows stand on their lines. */
  readonly view: Viewport;
  /** Height of the table on the screen. */
  readonly heightPx: number;
  /** On the table, where there is no room beside it: each girth a press that opens its row. */
  readonly asChips: boolean;
  /** Its fields are as high as a finger needs them. */
  readonly coarse: boolean;
  readonly level: LevelName;
  readonly onLevel: (level: LevelName) => void;
}

/** Heights of a row, of a line more in it, of the row in hand with all it tells, and of a chip. px */
const ROW_PX = { fine: 36, coarse: 46 } as const;
const LINE_PX = 18;
const IN_HAND_PX = 110;
const CHIP_PX = { fine: 34, coarse: 46 } as const;

/** The ledger follows the blocks, a frame behind them where both would take longer than one. */
export function Ledger(props: LedgerProps) {
  const behind = useDeferredValue(useOpen().book);
  return (
    <SeenContext value={behind}>
      <Rows {...props} />
    </SeenContext>
  );
}

const Rows = memo(function Rows(props: LedgerProps) {
  const { layout, view, heightPx, asChips, coarse, level, onLevel } = props;
  const { client, savedDraft } = useOpen();
  const draft = useDraft();
  const [opened, setOpened] = useState<LevelName | null>(null);
  const rows = draft.proof.ledger;
  const lines = rows.map((row) => (lineHeight(layout, row.level, row.y) - view.top) * view.pxPerMm);
  const row = coarse ? ROW_PX.coarse : ROW_PX.fine;
  const chip = coarse ? CHIP_PX.coarse : CHIP_PX.fine;
  const { closure } = savedDraft.style;
  // What is said behind a girth stands in lines of its own.
  const linesMore = rows.map((each) => {
    const finished = finishedGirth(each, closure);
    return finished === null ? 0 : (finished.along ? 1 : 0) + (finished.off === 0 ? 0 : 1);
  });
  const heights = rows.map((each, i) =>
    asChips ? chip : (each.level === level ? IN_HAND_PX : row) + LINE_PX * (linesMore[i] ?? 0),
  );
  const tops = spread(lines, heights, (asChips ? chip : row) / 2, heightPx);
  return (
    <section
      className={asChips ? 'ledger chips' : 'ledger'}
      aria-label={TEXTS.title}
      onKeyDown={({ key }) => {
        if (key === 'Escape') setOpened(null);
      }}
    >
      <h2 className="unseen">{TEXTS.title}</h2>
      <p className="ledger-heads" aria-hidden="true">
        <span>{sewnWord(closure)}</span>
        {asChips ? null : <span>{TEXTS.heads.ease}</span>}
      </p>
      {rows.map((each, i) => (
        <LedgerEntry
          key={each.level}
          {...written(each, draft, savedDraft.style, client.unit)}
          top={tops[i] ?? 0}
          inHand={each.level === level}
          chip={asChips}
          isOpen={opened === each.level}
          onOpen={setOpened}
          onLevel={onLevel}
        />
      ))}
    </section>
  );
});

/** A row as it is read: plain texts and numbers, so that a row that reads the same is not drawn again under a pull. */
interface Written {
  readonly level: LevelName;
  readonly unit: Unit;
  readonly ease: number;
  /** Girth of the body, mm. */
  readonly bodyMm: number;
  readonly body: string;
  /** What part of the body the ease takes in, in per cent; null where it takes nothing in. */
  readonly takenIn: string | null;
  /** What the tape reads round the closed garment, cloth and opening; or where the level lies outside of it. */
  readonly sewn: string | null;
  /** What that is called. */
  readonly sewnAs: string;
  /** It was measured along the edge that lies there. */
  readonly along: boolean;
  readonly outside: string;
  /** By how much it misses what was asked; empty where it does not. */
  readonly off: string;
  /** Where the half body's difference from the bust went; empty at the bust. */
  readonly wedges: string;
  readonly side: string;
  /** What alterations after a fitting add; empty where there are none. */
  readonly altered: string;
  /** The draft cannot be cut with this ease. */
  readonly refused: boolean;
}

function written(row: LedgerRow, draft: Draft, style: Style, unit: Unit): Written {
  const write = (mm: number): string => formatLength(mm, unit);
  const { taken } = row;
  const finished = finishedGirth(row, style.closure);
  const off = finished?.off ?? 0;
  const isBust = row.level === 'bust';
  return {
    level: row.level,
    unit,
    ease: row.ease,
    bodyMm: row.bodyGirth,
    takenIn: row.ease < 0 ? percentOf(-row.ease, row.bodyGirth) : null,
    body: write(row.bodyGirth),
    sewn: finished && write(finished.girth),
    sewnAs: sewnWord(style.closure),
    along: finished?.along === true,
    outside: finished ? '' : whereOutside(row, draft.span),
    off: off === 0 ? '' : TEXTS.off({ difference: `${off > 0 ? '+' : '−'}${differencePhrase(off, unit)}` }),
    // The sum of what the wedges' own fields read.
    wedges: isBust
      ? ''
      : write(Object.values(taken.wedges).reduce((sum, each) => sum + writtenLength(each, unit), 0)),
    side: isBust ? '' : write(taken.sideSeam.front + taken.sideSeam.back),
    altered: alteredWritten(row, unit),
    refused: draft.issues.some(
      ({ severity, at }) => severity === 'error' && at.field === `ease.${row.level}`,
    ),
  };
}

interface EntryProps extends Written {
  /** From the top of the table to the row's, px. */
  readonly top: number;
  readonly inHand: boolean;
  readonly chip: boolean;
  /** Of a chip: its row is open. */
  readonly isOpen: boolean;
  readonly onOpen: (level: LevelName | null) => void;
  readonly onLevel: (level: LevelName) => void;
}

const LedgerEntry = memo(function LedgerEntry(props: EntryProps) {
  const { level, sewn, outside, top, inHand, chip, isOpen, onOpen, onLevel } = props;
  const { ease, bodyMm, unit, refused } = props;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the level of what has the focus in the row is in hand
    <div
      className={`row level-${level}${inHand ? ' in-hand' : ''}`}
      data-level={level}
      style={{ top }}
      onFocus={() => onLevel(level)}
    >
      <h3 className="unseen">{LEVEL_WORDS[level]}</h3>
      {chip ? (
        <button
          type="button"
          className="girth-chip"
          aria-expanded={isOpen}
          aria-label={TEXTS.open({ level, sewn: sewn ?? outside, remarks: remarksOf(props) })}
          onClick={() => {
            onLevel(level);
            onOpen(isOpen ? null : level);
          }}
        >
          <SewnOnChip {...props} />
        </button>
      ) : (
        <Sewn {...props} />
      )}
      {!chip || isOpen ? (
        <EaseField level={level} ease={ease} bodyMm={bodyMm} unit={unit} refused={refused} />
      ) : null}
      {(chip ? isOpen : inHand) ? <Taken {...props} remarks={chip ? remarksOf(props) : []} /> : null}
    </div>
  );
});

function Sewn({ level, sewn, sewnAs, along, outside, altered, off }: Written) {
  if (sewn === null) return <span className="sewn outside">{outside}</span>;
  return (
    <span className="sewn">
      {along ? null : <span className="unseen">{`${sewnAs} `}</span>}
      <strong data-sewn={level}>{sewn}</strong>
      {along ? <span className="along"> {ALONG_EDGE}</span> : null}
      {altered === '' ? null : <span className="altered"> {TEXTS.altered({ length: altered })}</span>}
      {off === '' ? (
        <span className="as-asked">
          {' '}
          ✓<span className="unseen"> {TEXTS.asAsked}</span>
        </span>
      ) : (
        <span className="off"> {off}</span>
      )}
    </span>
  );
}

/** What is said of a girth behind its figure. */
const remarksOf = ({ sewn, along, altered, off }: Written): readonly string[] =>
  sewn === null
    ? []
    : [
        along ? ALONG_EDGE : '',
        altered === '' ? '' : TEXTS.altered({ length: altered }),
        off === '' ? TEXTS.asAsked : off,
      ].filter((remark) => remark !== '');

/** A girth on the table itself: its figure and a sign, because words would lie over the blocks. The open row has the words. */
function SewnOnChip({ level, sewn, off }: Written) {
  if (sewn === null) return <span className="sewn outside">{TEXTS.none}</span>;
  return (
    <span className="sewn">
      <strong data-sewn={level}>{sewn}</strong>{' '}
      {off === '' ? <span className="as-asked">✓</span> : <span className="off">{TEXTS.offSign}</span>}
    </span>
  );
}

type EaseProps = Pick<Written, 'level' | 'ease' | 'bodyMm' | 'unit' | 'refused'>;

const EaseField = memo(function EaseField({ level, ease, bodyMm, unit, refused }: EaseProps) {
  const edit = useStyleNumber();
  return (
    <div className="ease">
      <span className="hint" aria-hidden="true">
        {TEXTS.ease}
      </span>
      <LengthField
        compact={true}
        signed={true}
        span={styleSpan('ease')}
        label={TEXTS.easeAt({ level })}
        value={ease}
        unit={unit}
        partOf={bodyMm}
        refused={refused}
        {...edit({ code: 'easeSet', level }, (style, mm) => ({
          ...style,
          ease: { ...style.ease, [level]: mm },
        }))}
      />
    </div>
  );
});

/** The body's girth, by what part of it the garment is smaller, and what was taken in from the bust. */
function Taken({ body, takenIn, wedges, side, remarks }: Written & { readonly remarks: readonly string[] }) {
  return (
    <p className="taken-by">
      {remarks.map((remark) => (
        <span key={remark}>{remark}</span>
      ))}
      <span>{TEXTS.body({ length: body })}</span>
      {takenIn === null ? null : <span title={TEXTS.percentToo}>{TEXTS.takenIn({ percent: takenIn })}</span>}
      {wedges === '' ? null : (
        <>
          <span>{TEXTS.wedges({ length: wedges })}</span>
          <span>{TEXTS.side({ length: side })}</span>
        </>
      )}
    </p>
  );
}
