// Sizes and casts: one style for a range of sizes or for everybody in a show. What each measures, what holds of each, and the print.

import { useMemo } from 'react';
import { type NamedBody, readCast, readSizes, SIZES, SIZING, sizeChart } from '../../../document';
import { Dialog } from '../../components/Dialog';
import { useOpen } from '../../store/storeContext';
import { ChoiceRow } from '../choices/ChoiceRow';
import { BodiesList } from './BodiesList';
import { ChartForm } from './ChartForm';
import { SizesPrint } from './SizesPrint';
import { SizesSteps } from './SizesSteps';
import { chooseSizing, useSizingChoices } from './sizingChoices';
import { TableForm } from './TableForm';
import { useProofs } from './useSizes';

const NOBODY: readonly NamedBody[] = [];

export default function SizesDialog({ onClose }: { onClose: () => void }) {
  const { client, savedDraft } = useOpen();
  const { whom, source, chart, text, uses } = useSizingChoices();
  const { unit } = client;
  const isComputed = whom === 'range' && source === 'chart';
  const sizes = useMemo(() => (isComputed ? sizeChart(chart) : []), [isComputed, chart]);
  const typed = text[whom];
  const said = uses[whom];
  const read = useMemo(() => {
    if (isComputed || typed.trim() === '') return null;
    return whom === 'range' ? readSizes(typed, unit, said) : readCast(typed, unit, nameFor, said);
  }, [isComputed, whom, typed, unit, said]);
  const bodies = isComputed ? sizes : (read?.bodies ?? NOBODY);
  const { proved, state } = useProofs(bodies, savedDraft, whom === 'range');
  const inView = bodies.length === 0 ? [] : proved.proofs;
  return (
    <Dialog title={SIZING.title} wide={true} onClose={onClose}>
      <div className="sizes">
        <p className="hint">{SIZING.styleLine({ style: savedDraft.name })}</p>
        <ChoiceRow
          legend={SIZING.whom.label}
          name="sizes-whom"
          value={whom}
          choices={(['range', 'cast'] as const).map((value) => ({ value, label: SIZING.whom[value] }))}
          onChange={(each) => chooseSizing({ whom: each, off: [], form: each === 'cast' ? 'zip' : 'sheets' })}
        />
        {whom === 'range' ? (
          <ChoiceRow
            legend={SIZING.source.label}
            name="sizes-source"
            value={source}
            choices={(['chart', 'table'] as const).map((value) => ({ value, label: SIZING.source[value] }))}
            onChange={(each) => chooseSizing({ source: each, off: [] })}
          />
        ) : null}
        {isComputed ? (
          <ChartForm sizes={sizes} unit={unit} />
        ) : (
          <TableForm key={whom} whom={whom} read={read} unit={unit} />
        )}
        <BodiesList
          proofs={inView}
          count={bodies.length}
          state={state}
          whom={whom}
          style={savedDraft.style}
          unit={unit}
        />
        {whom === 'range' && inView.length > 1 && proved.table.length > 0 ? (
          <SizesSteps proved={proved} unit={unit} style={savedDraft.name} />
        ) : null}
        <SizesPrint bodies={bodies} proofs={inView} isReady={state === 'proved'} />
      </div>
    </Dialog>
  );
}

const nameFor = ({ row, name }: { readonly row: number; readonly name: string }): string =>
  name === '' ? SIZES.nameless({ row }) : SIZES.namesake({ row, name });
