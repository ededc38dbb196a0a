// The wedges of both blocks, and the numbers of the one in hand.

import {
  addWedge,
  balanceAll,
  type Change,
  changeStyle,
  removeWedge,
  setSizing,
  shoulderKind,
  WEDGE_CARDS,
  wedgeNameOf,
  wedgePhrase,
  wedgePlaceOf,
  wedgeShortNameOf,
  wedgesOf,
} from '../../../document';
import {
  type BlockName,
  type DraftedWedge,
  isDart,
  type LevelName,
  MOST_WEDGES,
  type Style,
  type Wedge,
} from '../../../engine';
import { intakeNow, isSideDart, SIZING_SIGNS } from '../../../table';
import { Toolbar } from '../../components/Toolbar';
import { useSide } from '../../store/sideContext';
import { useDraft, useKeptStyle, useOpen, useStore } from '../../store/storeContext';
import { CupFields } from './CupFields';
import { DartFields } from './DartFields';
import { TurnFields } from './TurnFields';
import { UpperEndFields } from './UpperEndFields';
import { WedgeNumbers } from './WedgeNumbers';
import { widestGap } from './widestGap';

interface WedgeCardProps {
  readonly selected: string | null;
  readonly onSelect: (wedge: string | null) => void;
  /** The level in hand, whose row is marked. */
  readonly level: LevelName;
  readonly onLevel: (level: LevelName) => void;
}

const TEXTS = WEDGE_CARDS.list;

const SIZING = {
  balanced: { label: WEDGE_CARDS.sizing.balanced, hint: WEDGE_CARDS.sizing.balancedHint },
  manual: { label: WEDGE_CARDS.sizing.manual, hint: WEDGE_CARDS.sizing.manualHint },
} as const;

export function WedgeCard({ selected, onSelect, level, onLevel }: WedgeCardProps) {
  const { savedDraft } = useOpen();
  const draft = useDraft();
  const { blocks } = draft;
  const kept = useKeptStyle();
  const edit = useEdit();
  const side = useSide();
  const wedges = wedgesOf(savedDraft.style, side);
  const wedge = wedges.find((each) => each.id === selected);
  const block = wedge && blocks ? blocks[wedge.block] : null;
  const drafted = block?.wedges.find((each) => each.id === selected);
  const add = (block: BlockName): void => {
    const { style } = savedDraft;
    const next = addWedge(style, side, block, widestGap(style, side, block, draft));
    edit({ code: 'wedgeAdded', block }, () => next);
    onSelect(wedgesOf(next, side).at(-1)?.id ?? null);
  };
  return (
    <section className="wedge-card" aria-label={TEXTS.title}>
      <Toolbar className="wedge-list" label={TEXTS.title}>
        {(['front', 'back'] as const).map((block) => (
          <div key={block} className="wedge-row">
            <h3>
              <span aria-hidden="true">{TEXTS.shortBlocks[block]}</span>
              <span className="unseen">{TEXTS.blocks[block]}</span>
            </h3>
            {wedgesOf(kept, side)
              .filter((each) => each.block === block)
              .sort((a, b) => a.station - b.station)
              .map((each) => (
                <button
                  type="button"
                  key={each.id}
                  className="chip"
                  aria-pressed={each.id === selected}
                  onClick={() => onSelect(each.id)}
                >
                  {wedgeShortNameOf(each.id, kept)}
                </button>
              ))}
            {wedges.filter((each) => each.block === block).length < MOST_WEDGES ? (
              <button
                type="button"
                className="chip add"
                onClick={() => add(block)}
                aria-label={TEXTS.addTo[block]}
                title={TEXTS.addTo[block]}
              >
                {TEXTS.add}
              </button>
            ) : null}
          </div>
        ))}
      </Toolbar>
      {wedge && drafted && block ? (
        <div className="wedge-numbers">
          <WedgeHead wedge={wedge} drafted={drafted} />
          <DartFields wedge={wedge} drafted={drafted} />
          {shoulderKind(savedDraft.style) === 'shoulders' && wedge.station > -1 && !wedge.upper ? (
            <UpperEndFields wedge={wedge} />
          ) : null}
          {/* A dart from the side seam lies across the levels: it has no intake at any of them. */}
          {isSideDart(wedge, savedDraft.style) ? null : (
            <>
              <WedgeNumbers wedge={wedge} drafted={drafted} block={block} level={level} onLevel={onLevel} />
              <More wedge={wedge} drafted={drafted} />
            </>
          )}
        </div>
      ) : (
        <p className="hint choose-wedge">{TEXTS.choose}</p>
      )}
    </section>
  );
}

function useEdit(): (what: Change, step: (style: Style) => Style) => void {
  const change = useStore((state) => state.change);
  return (what, step) => change(what, (book) => changeStyle(book, step));
}

interface WedgeInHand {
  readonly wedge: Wedge;
  readonly drafted: DraftedWedge;
}

/** Its name, the way to take it off, and how it is sized. */
function WedgeHead({ wedge, drafted }: WedgeInHand) {
  const kept = useKeptStyle();
  const edit = useEdit();
  return (
    <div className="wedge-head">
      <h3>
        {wedgeNameOf(wedge.id, kept)}{' '}
        {isDart(wedge) ? null : (
          <span className="gloss" aria-hidden="true">
            {TEXTS.dart}
          </span>
        )}
      </h3>
      <button
        type="button"
        className="quiet"
        aria-label={TEXTS.takeOffWedge({ wedge: wedgePhrase(wedgePlaceOf(wedge.id, kept)) })}
        onClick={() =>
          edit({ code: 'wedgeRemoved', wedge: wedgePlaceOf(wedge.id, kept) }, (style) =>
            removeWedge(style, wedge.id),
          )
        }
      >
        {TEXTS.takeOff}
      </button>
      {/* The width of a dart from the side seam is one number, set with the shoulders. */}
      {wedge.sizing === 'balanced' && isSideDart(wedge, kept) ? null : (
        <fieldset className="sizing">
          <legend className="unseen">{WEDGE_CARDS.sizing.legend}</legend>
          {(['balanced', 'manual'] as const).map((sizing) => (
            <label key={sizing} title={SIZING[sizing].hint}>
              <input
                type="radio"
                name="sizing"
                checked={wedge.sizing === sizing}
                onChange={() =>
                  edit({ code: sizing === 'manual' ? 'wedgeLocked' : 'wedgeBalanced' }, (style) =>
                    setSizing(style, wedge.id, sizing, intakeNow(drafted)),
                  )
                }
              />
              <span>
                {/* The same sign stands under the wedge on the table. */}
                <svg viewBox="-10 -8 20 16" aria-hidden="true" data-sign={sizing}>
                  <path d={SIZING_SIGNS[sizing]} />
                </svg>
                {SIZING[sizing].label}
              </span>
            </label>
          ))}
        </fieldset>
      )}
    </div>
  );
}

/** What is not needed every day: the fuller cup, turning intake, balancing all. */
function More({ wedge, drafted }: WedgeInHand) {
  const { savedDraft } = useOpen();
  const edit = useEdit();
  const wedges = wedgesOf(savedDraft.style, useSide());
  return (
    <div className="wedge-more">
      {wedge.block === 'front' ? (
        <>
          <CupFields wedge={wedge} />
          <details>
            <summary>{WEDGE_CARDS.turn.fold}</summary>
            <TurnFields key={wedge.id} wedge={drafted} />
          </details>
        </>
      ) : null}
      <button
        type="button"
        className="quiet"
        disabled={wedges.every((each) => each.sizing === 'balanced')}
        onClick={() => edit({ code: 'allBalanced' }, balanceAll)}
      >
        {TEXTS.balanceAll}
      </button>
    </div>
  );
}
