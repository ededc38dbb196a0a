// The girth ledger, a row on each level line: body, ease (typed here), sewn, and what took the difference.

import { memo, useDeferredValue } from 'react';
import {
  CANVAS,
  formatDifference,
  formatLength,
  LEVEL_WORDS,
  type Unit,
  writtenLength,
} from '../../../document';
import {
  type Draft,
  type Issue,
  type LedgerRow,
  type LevelName,
  type Style,
  styleSpan,
} from '../../../engine';
import type { Viewport } from '../../../table';
import { LengthField } from '../../components/fields/LengthField';
import { useStyleNumber } from '../../components/fields/useNumberEdit';
import { ALONG_EDGE, finishedGirth, sewnWord, whereOutside } from '../../components/girthWords';
import { useIssueSentence } from '../../components/useIssueSentence';
import { SeenContext, useDraft, useOpen } from '../../store/storeContext';

const TEXTS = CANVAS.ledger;

interface LedgerProps {
  /** What part of the table is in view: rows stand on their lines. */
  readonly view: Viewport;
  /** Height of the table on the screen. */
  readonly heightPx: number;
  /** Below the table instead of beside it: rows in a plain column. */
  readonly stacked: boolean;
  /** Its fields are as high as a finger needs them. */
  readonly coarse: boolean;
}

/** Rows stand on their lines, but never nearer than this. px */
const ROW_PX = { fine: 74, coarse: 96 } as const;

/** The ledger follows the blocks, a frame behind them where both would take longer than one. */
export function Ledger(props: LedgerProps) {
  const behind = useDeferredValue(useOpen().book);
  return (
    <SeenContext value={behind}>
      <Rows {...props} />
    </SeenContext>
  );
}

const Rows = memo(function Rows({ view, heightPx, stacked, coarse }: LedgerProps) {
  const { client, savedDraft } = useOpen();
  const draft = useDraft();
  const sentence = useIssueSentence();
  const rows = draft.proof.ledger.length > 0 ? draft.proof.ledger : [];
  const lines = rows.map((row) => (row.y - view.top) * view.pxPerMm);
  const places = spread(lines, heightPx, coarse ? ROW_PX.coarse : ROW_PX.fine);
  return (
    <section className="ledger" aria-label={TEXTS.title} style={stacked ? undefined : { height: heightPx }}>
      <h2 className="unseen">{TEXTS.title}</h2>
      {stacked ? null : (
        <svg className="leaders" aria-hidden="true" width="26" height={heightPx}>
          {rows.map((row, i) => {
            const line = lines[i] ?? 0;
            return line > 0 && line < heightPx ? (
              <path key={row.level} className={`level-${row.level}`} d={`M0 ${line}H6L18 ${places[i]}H26`} />
            ) : null;
          })}
        </svg>
      )}
      {rows.map((row, i) => (
        <LedgerEntry
          key={row.level}
          {...written(row, draft, savedDraft.style, client.unit, sentence)}
          top={stacked ? null : (places[i] ?? 0)}
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
  readonly body: string;
  /** What the tape reads round the closed garment, cloth and opening; or where the level lies outside of it. */
  readonly sewn: string | null;
  /** What that is called. */
  readonly sewnAs: string;
  /** It was measured along the edge that lies there. */
  readonly along: boolean;
  readonly outside: string;
  /** By how much it misses what was asked; empty where it does not. */
  readonly off: string;
  /** Where the half body's difference from the bust went. */
  readonly wedges: string;
  readonly side: string;
  readonly remarks: string;
}

function written(
  row: LedgerRow,
  draft: Draft,
  style: Style,
  unit: Unit,
  sentence: (issue: Issue) => string,
): Written {
  const write = (mm: number): string => formatLength(mm, unit);
  const { taken } = row;
  const finished = finishedGirth(row, style.closure);
  const off = finished?.off ?? 0;
  return {
    level: row.level,
    unit,
    ease: row.ease,
    body: write(row.bodyGirth),
    sewn: finished && write(finished.girth),
    sewnAs: sewnWord(style.closure),
    along: finished?.along === true,
    outside: finished ? '' : whereOutside(row, draft.span),
    off: off === 0 ? '' : TEXTS.off({ difference: `${off > 0 ? '+' : '−'}${formatDifference(off, unit)}` }),
    // The sum of what the wedges' own fields read.
    wedges: write(Object.values(taken.wedges).reduce((sum, each) => sum + writtenLength(each, unit), 0)),
    side: write(taken.sideSeam.front + taken.sideSeam.back),
    remarks: draft.issues
      .filter((issue) => issue.at.field === `ease.${row.level}`)
      .map(sentence)
      .join(' '),
  };
}

const LedgerEntry = memo(function LedgerEntry(props: Written & { readonly top: number | null }) {
  const { level, unit, ease, body, sewn, sewnAs, along, outside, off, wedges, side, remarks, top } = props;
  const edit = useStyleNumber();
  const name = LEVEL_WORDS[level];
  return (
    <div className={`row level-${level}`} data-level={level} style={top === null ? undefined : { top }}>
      <h3>{name}</h3>
      {sewn === null ? (
        <p className="sewn outside">{outside}</p>
      ) : (
        <p className="sewn">
          {along ? null : `${sewnAs} `}
          <strong data-sewn={level}>{sewn}</strong>
          {along ? <span className="along"> {ALONG_EDGE}</span> : null}
          {off === '' ? (
            <span className="met">
              ✓<span className="unseen"> {TEXTS.asAsked}</span>
            </span>
          ) : (
            <span className="off">{off}</span>
          )}
        </p>
      )}
      <dl>
        <dt>{TEXTS.body}</dt>
        <dd>{body}</dd>
        <dt>{TEXTS.ease}</dt>
        <dd>
          <LengthField
            compact={true}
            signed={true}
            span={styleSpan('ease')}
            label={TEXTS.easeAt({ level })}
            value={ease}
            unit={unit}
            remarks={remarks === '' ? [] : [remarks]}
            {...edit({ code: 'easeSet', level }, (style, mm) => ({
              ...style,
              ease: { ...style.ease, [level]: mm },
            }))}
          />
        </dd>
      </dl>
      {level === 'bust' ? null : (
        <p className="taken-by">
          {TEXTS.takenByWedges} <b>{wedges}</b>
          {TEXTS.andSide} <b>{side}</b>
        </p>
      )}
    </div>
  );
});

/** Places moved apart to at least `apart`, kept in order and as near to where they were as that allows. */
function spread(places: readonly number[], height: number, apart: number): number[] {
  const spaced = places.map((place) => Math.max(place, apart / 2));
  for (let i = 1; i < spaced.length; i += 1)
    spaced[i] = Math.max(spaced[i] ?? 0, (spaced[i - 1] ?? 0) + apart);
  const last = spaced.length - 1;
  if (last >= 0) spaced[last] = Math.min(spaced[last] ?? 0, height - apart / 2);
  for (let i = last - 1; i >= 0; i -= 1) spaced[i] = Math.min(spaced[i] ?? 0, (spaced[i + 1] ?? 0) - apart);
  return spaced;
}
