// The widths of the panels at the level in hand as a bar to scale; a width that is pressed becomes a field to type it in.

import { useCallback, useRef, useState } from 'react';
import { formatLength, LEVEL_TITLES, MM_PER, pieceLabel, setPanelWidth, WIDTHS } from '../../../document';
import type { Draft, LevelName, Piece, Style } from '../../../engine';
import { LengthField } from '../../components/fields/LengthField';
import { useStyleNumber } from '../../components/fields/useNumberEdit';
import { Toolbar } from '../../components/Toolbar';
import { useSide } from '../../store/sideContext';
import { draftOfSide, useDraft, useOpen } from '../../store/storeContext';

interface PanelWidthsProps {
  readonly level: LevelName;
  readonly onLevel: (level: LevelName) => void;
}

/** What a width may be typed as, mm; the draft says what cannot be cut. */
const WIDTH_SPAN = [10, 500] as const;

interface PanelWidth {
  readonly piece: Piece;
  readonly width: number;
}

export function PanelWidths({ level, onLevel }: PanelWidthsProps) {
  const { client } = useOpen();
  const draft = useDraft();
  const [typing, setTyping] = useState<string | null>(null);
  /** The panel whose press takes the focus back when its field is left by a key. */
  const left = useRef<string | null>(null);
  const reached = draft.proof.ledger.filter(({ widths }) => Object.keys(widths).length > 0);
  const row = reached.find((each) => each.level === level);
  const panels = panelsAcross(draft, row?.widths ?? {});
  const half = panels.reduce((sum, { width }) => sum + width, 0);
  const write = (mm: number): string => formatLength(mm, client.unit);
  return (
    <section className="panel-widths" aria-label={WIDTHS.title}>
      <div className="widths-head">
        <h3>{WIDTHS.title}</h3>
        <span className="hint">
          {panels.length > 0 ? WIDTHS.at({ level, half: write(half) }) : WIDTHS.outside({ level })}
        </span>
        <Toolbar className="level-chips" label={WIDTHS.levels}>
          {reached.map(({ level: each }) => (
            <button
              key={each}
              type="button"
              className="chip"
              aria-pressed={each === level}
              aria-label={WIDTHS.levelChip({ level: each })}
              onClick={() => onLevel(each)}
            >
              {LEVEL_TITLES[each]}
            </button>
          ))}
        </Toolbar>
      </div>
      {panels.length > 0 ? (
        <>
          <Toolbar className="width-bar" label={WIDTHS.panels}>
            {panels.map(({ piece, width }) => (
              <div
                key={piece.id}
                className={`width block-${piece.block}${piece.kind === 'sidePanel' ? ' both' : ''}`}
                style={{ flexGrow: width }}
              >
                <span className="hint" aria-hidden="true">
                  {pieceLabel(piece)}
                </span>
                {typing === piece.id ? (
                  <WidthField
                    piece={piece}
                    level={level}
                    width={width}
                    onDone={(byKey) => {
                      left.current = byKey ? piece.id : null;
                      setTyping(null);
                    }}
                  />
                ) : (
                  <button
                    ref={(button) => {
                      if (left.current !== piece.id || !button) return;
                      left.current = null;
                      button.focus();
                    }}
                    type="button"
                    aria-label={WIDTHS.panel({ piece: pieceLabel(piece), level, width: write(width) })}
                    onClick={() => setTyping(piece.id)}
                  >
                    {write(width)}
                  </button>
                )}
              </div>
            ))}
          </Toolbar>
          <Scale mm={half} part={MM_PER[client.unit] / (client.unit === 'in' ? 4 : 2)} />
          <p className="hint widths-hint">{WIDTHS.hint}</p>
        </>
      ) : null}
    </section>
  );
}

/** The panels in the order in which they lie round the half body, from centre front to centre back. */
function panelsAcross({ pieces }: Draft, widths: Readonly<Record<string, number>>): PanelWidth[] {
  const place = ({ kind, block, number }: Piece): number =>
    kind === 'sidePanel' ? 500 : block === 'front' ? number : 1000 - number;
  return pieces
    .flatMap((piece) => {
      const width = widths[piece.id];
      return width === undefined ? [] : [{ piece, width }];
    })
    .sort((a, b) => place(a.piece) - place(b.piece));
}

interface WidthFieldProps extends PanelWidth {
  readonly level: LevelName;
  /** The field is left, by Enter or Escape or otherwise. */
  readonly onDone: (byKey: boolean) => void;
}

function WidthField({ piece, level, width, onDone }: WidthFieldProps) {
  const { client, savedDraft } = useOpen();
  const side = useSide();
  const edit = useStyleNumber();
  // What is typed is the field's own: the width that comes of it may differ by less than the tape tells.
  const [typed, setTyped] = useState<number | null>(null);
  const [before] = useState(width);
  const isRead = useRef(true);
  const take = useCallback((entry: HTMLSpanElement | null) => {
    const field = entry?.querySelector('input');
    field?.focus();
    field?.select();
  }, []);
  const redraft = (style: Style): Draft => draftOfSide(client, { ...savedDraft, style }, side);
  const { onShow, onKeep, onDrop } = edit({ code: 'panelWidthSet', level }, (style, mm) =>
    setPanelWidth(style, { piece: piece.id, level, width: mm }, redraft),
  );
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: hears when the field in it is left
    <span
      ref={take}
      onBlur={() => {
        if (isRead.current) onDone(false);
      }}
      onKeyDown={(event) => {
        const { key } = event;
        if (key !== 'Escape' && !(key === 'Enter' && isRead.current)) return;
        // The key is not to press the button that has the focus next.
        event.preventDefault();
        onDone(true);
      }}
    >
      <LengthField
        compact={true}
        label={WIDTHS.field({ piece: pieceLabel(piece), level })}
        span={WIDTH_SPAN}
        value={typed ?? before}
        unit={client.unit}
        onShow={(mm) => {
          isRead.current = true;
          setTyped(mm);
          onShow(mm);
        }}
        onKeep={onKeep}
        onDrop={() => {
          isRead.current = false;
          onDrop();
        }}
      />
    </span>
  );
}

/** A tape along the bar: a tick for each part of the unit, longer at whole ones. */
function Scale({ mm, part }: { mm: number; part: number }) {
  const ticks = Array.from({ length: Math.floor(mm / part) + 1 }, (_, i) => i);
  const whole = part > 6 ? 2 : 4;
  return (
    <svg className="width-scale" viewBox={`0 0 ${mm} 8`} preserveAspectRatio="none" aria-hidden="true">
      <path
        d={ticks.map((tick) => `M${(tick * part).toFixed(2)} 0v${tick % whole === 0 ? 8 : 4}`).join('')}
      />
    </svg>
  );
}
