// Draft: the cutting table with the girth ledger on its level lines, and in front of it the numbers of the wedge in hand.

import { useRef, useState } from 'react';
import { changeStyle, formatLength, LEVEL_WORDS, pieceLabel, wedgeNameOf } from '../../document';
import { inches } from '../../engine';
import { CuttingTable, type Handle, type HandleActions, layOut, type Steps } from '../../table';
import { IssueList } from '../parts/IssueList';
import { useSize } from '../parts/useSize';
import { useCommittedDraft, useDraft, useOpen, useTable } from '../tableContext';
import { GarmentCard } from './GarmentCard';
import { Ledger } from './Ledger';
import { SafetyCard } from './SafetyCard';
import { WedgeCard } from './WedgeCard';

const STEPS: Readonly<Record<'in' | 'cm', Steps>> = {
  in: { grid: inches(1 / 16), small: inches(1 / 16), large: inches(1 / 4) },
  cm: { grid: 1, small: 1, large: 5 },
};

/** Room the ledger takes beside the table, px; on a narrow screen it stands below. */
const LEDGER_PX = 300;
const NARROW_PX = 760;
/** Least scale at which legs can be told apart, px for a mm; a smaller screen scrolls the table sideways. */
const LEAST_PX_PER_MM = 1.05;
/** What header, cards and margins leave of the window's height. */
const KEPT_PX = 366;

export function DraftStep() {
  const { client, sheet } = useOpen();
  const draft = useDraft();
  // Scale and places follow what was kept, so that the table stands still under a pull.
  const layout = layOut(useCommittedDraft());
  const [chosen, setChosen] = useState<string | null>(null);
  const frame = useRef<HTMLDivElement>(null);
  const { width } = useSize(frame);
  const actions = useHandleActions((handle) => handleLabel(handle));
  const selected = sheet.style.wedges.some((wedge) => wedge.id === chosen)
    ? chosen
    : (sheet.style.wedges.find((wedge) => wedge.station === 0)?.id ?? sheet.style.wedges[0]?.id ?? null);

  const handleLabel = ({ kind, wedge, level, which }: Handle): string => {
    if (kind === 'edge')
      return which === 'top' ? 'Top edge above the over-bust line' : 'Hem below the waist line';
    const name = wedgeNameOf(wedge ?? '', sheet.style);
    return kind === 'axis'
      ? `${name}: distance from the centre line`
      : `${name}: intake at the ${LEVEL_WORDS[level ?? 'waist']}`;
  };

  const coarse = window.matchMedia('(any-pointer: coarse)').matches;
  const narrow = width < NARROW_PX;
  const room = narrow ? width : width - LEDGER_PX;
  const fitted = layout
    ? Math.min(room / layout.width, Math.max(420, window.innerHeight - KEPT_PX) / layout.height)
    : 1;
  const pxPerMm = Math.max(LEAST_PX_PER_MM, fitted);
  return (
    <div className="draft-step">
      <div className={`table-and-ledger${narrow ? ' narrow' : ''}`} ref={frame}>
        {layout && draft.blocks && width > 0 ? (
          <>
            <div className="table-scroll" style={{ maxWidth: room }}>
              <CuttingTable
                draft={draft}
                style={sheet.style}
                layout={layout}
                pxPerMm={pxPerMm}
                coarse={coarse}
                selected={selected}
                onSelect={setChosen}
                actions={actions}
                steps={STEPS[client.unit]}
                dotsMm={client.unit === 'in' ? inches(0.5) : 10}
                words={{
                  level: (name) => LEVEL_WORDS[name],
                  piece: pieceLabel,
                  handle: handleLabel,
                  length: (mm) => formatLength(mm, client.unit, { withUnit: true }),
                }}
              />
            </div>
            <Ledger draft={draft} layout={layout} pxPerMm={pxPerMm} stacked={narrow} coarse={coarse} />
          </>
        ) : (
          <p className="empty">
            {draft.blocks
              ? ''
              : 'The blocks are drawn as soon as the tape’s numbers and the garment’s allow it:'}
          </p>
        )}
      </div>
      <IssueList issues={draft.issues} />
      <h2 className="unseen">The draft’s numbers</h2>
      <div className="cards">
        <WedgeCard selected={selected} onSelect={setChosen} />
        <GarmentCard />
        <SafetyCard />
      </div>
    </div>
  );
}

function useHandleActions(labelOf: (handle: Handle) => string): HandleActions {
  const show = useTable((table) => table.show);
  const keep = useTable((table) => table.keep);
  const drop = useTable((table) => table.drop);
  return {
    preview: (handle, value) => show((book) => changeStyle(book, (style) => handle.set(style, value))),
    commit: (handle) => keep(labelOf(handle).toLowerCase()),
    restore: drop,
  };
}
