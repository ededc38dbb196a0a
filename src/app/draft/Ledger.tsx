// The girth ledger, a row on each level line: body, ease (typed here), sewn, and what took the difference.

import { changeStyle, formatLength, issueSentence, LEVEL_WORDS } from '../../document';
import { type Draft, type LedgerRow, openWidth } from '../../engine';
import type { Viewport } from '../../table';
import { LengthField } from '../parts/LengthField';
import { useOpen, useTable } from '../tableContext';

interface LedgerProps {
  readonly draft: Draft;
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

export function Ledger({ draft, view, heightPx, stacked, coarse }: LedgerProps) {
  const rows = draft.proof.ledger.length > 0 ? draft.proof.ledger : [];
  const lines = rows.map((row) => (row.y - view.top) * view.pxPerMm);
  const places = spread(lines, heightPx, coarse ? ROW_PX.coarse : ROW_PX.fine);
  return (
    <section className="ledger" aria-label="Girth ledger" style={stacked ? undefined : { height: heightPx }}>
      <h2 className="unseen">Girth ledger</h2>
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
        <LedgerEntry key={row.level} row={row} draft={draft} top={stacked ? null : (places[i] ?? 0)} />
      ))}
    </section>
  );
}

function LedgerEntry({ row, draft, top }: { row: LedgerRow; draft: Draft; top: number | null }) {
  const { client, sheet } = useOpen();
  const show = useTable((table) => table.show);
  const keep = useTable((table) => table.keep);
  const drop = useTable((table) => table.drop);
  const { unit } = client;
  const name = LEVEL_WORDS[row.level];
  const write = (mm: number): string => formatLength(mm, unit);
  const remarks = draft.issues
    .filter((issue) => issue.at.field === `ease.${row.level}`)
    .map((issue) => issueSentence(issue, { unit, style: sheet.style }));
  return (
    <div
      className={`row level-${row.level}`}
      data-level={row.level}
      style={top === null ? undefined : { top }}
    >
      <h3>{name}</h3>
      <Sewn row={row} gap={openWidth(sheet.style.closure)} span={draft.span} write={write} />
      <dl>
        <dt>body</dt>
        <dd>{write(row.bodyGirth)}</dd>
        <dt>ease</dt>
        <dd>
          <LengthField
            compact={true}
            signed={true}
            label={`Ease at the ${name}`}
            value={row.ease}
            unit={unit}
            remarks={remarks}
            onShow={(mm) =>
              show((book) =>
                changeStyle(book, (style) => ({ ...style, ease: { ...style.ease, [row.level]: mm ?? 0 } })),
              )
            }
            onKeep={() => keep(`ease at the ${name}`)}
            onDrop={drop}
          />
        </dd>
      </dl>
      {row.level === 'bust' ? null : <Taken row={row} write={write} />}
    </div>
  );
}

interface SewnProps {
  readonly row: LedgerRow;
  readonly gap: number;
  readonly span: Draft['span'];
  readonly write: (mm: number) => string;
}

/** What the tape reads round the closed garment: the cloth and the lacing gap. */
function Sewn({ row, gap, span, write }: SewnProps) {
  if (row.sewnGirth === null) return <p className="sewn outside">{whereOutside(row, span)}</p>;
  const off = row.sewnGirth - row.targetGirth;
  return (
    <p className="sewn">
      sewn <strong data-sewn={row.level}>{write(row.sewnGirth + gap)}</strong>
      {Math.abs(off) < 0.1 ? (
        <span className="met">
          ✓<span className="unseen"> as asked</span>
        </span>
      ) : (
        <span className="off">{formatOff(off)} mm off</span>
      )}
    </p>
  );
}

/** Levels this near an edge are cut by it on some panels and missed on others. mm */
const AT_EDGE_MM = 12;

function whereOutside(row: LedgerRow, span: Draft['span']): string {
  if (!span) return '';
  if (row.y < span.top - AT_EDGE_MM) return 'above the top edge';
  return row.y > span.hem + AT_EDGE_MM ? 'below the hem' : 'at the edge';
}

const formatOff = (mm: number): string => `${mm > 0 ? '+' : '−'}${Math.abs(mm).toFixed(1)}`;

/** Where the half body's difference from the bust went. */
function Taken({ row, write }: { row: LedgerRow; write: (mm: number) => string }) {
  const wedges = Object.values(row.taken.wedges).reduce((sum, each) => sum + each, 0);
  const side = row.taken.side.front + row.taken.side.back;
  return (
    <p className="taken-by">
      taken in: wedges <b>{write(wedges)}</b>, side <b>{write(side)}</b>
    </p>
  );
}

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
