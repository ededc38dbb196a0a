// The form that is open under the list of fittings.

import { changeFittings, type Fitting, setAlteration, type Unit } from '../../../../document';
import type { Alteration, AlteredSide, Draft, SeamName, Style } from '../../../../engine';
import { today } from '../../../components/files/formatDay';
import { AlterationForm } from './AlterationForm';
import { GapForm } from './GapForm';
import { SeenForm } from './SeenForm';
import { alterationSeen } from './startAlteration';
import { withAlterations } from './withAlterations';

export type Open =
  | { readonly kind: 'new'; readonly start: Alteration }
  | {
      readonly kind: 'change';
      readonly fitting: number;
      readonly alteration: number;
      readonly start: Alteration;
    }
  | { readonly kind: 'gaps' | 'seen' };

interface OpenFormProps {
  readonly open: Open;
  /** The draft as it is kept. */
  readonly draft: Draft;
  /** The draft without its alterations. */
  readonly unaltered: Draft;
  readonly fittings: readonly Fitting[];
  readonly style: Style;
  readonly unit: Unit;
  readonly onMake: (alterations: readonly Alteration[]) => void;
  readonly onSet: (fitting: number, alteration: number, next: Alteration) => void;
  readonly onSeam: (seam: SeamName | null, side: AlteredSide) => void;
  /** Opens another form in its place, or none. */
  readonly onBegin: (next: Open | null) => void;
}

export function OpenForm(props: OpenFormProps) {
  const { open, draft, unaltered, fittings, style, unit, onMake, onSet, onSeam, onBegin } = props;
  const fields = { draft, unaltered, style, unit, onCancel: () => onBegin(null) };
  switch (open.kind) {
    case 'new':
      return (
        <AlterationForm
          {...fields}
          start={open.start}
          onSeam={onSeam}
          isKept={false}
          place={{
            fitting: Math.max(0, fittings.length - 1),
            alteration: fittings.at(-1)?.alterations.length ?? 0,
          }}
          withIt={(book, alteration) =>
            changeFittings(book, (all) => withAlterations(all, [alteration], today()))
          }
          onMake={(alteration) => onMake([alteration])}
        />
      );
    case 'change':
      return (
        <AlterationForm
          {...fields}
          start={open.start}
          onSeam={onSeam}
          isKept={true}
          place={open}
          withIt={(book, alteration) =>
            changeFittings(book, (all) => setAlteration(all, open.fitting, open.alteration, alteration))
          }
          onMake={(alteration) => onSet(open.fitting, open.alteration, alteration)}
        />
      );
    case 'gaps':
      return <GapForm {...fields} draft={unaltered} onMake={onMake} />;
    case 'seen':
      return (
        <SeenForm
          unit={unit}
          onTake={(seen, mm) =>
            onBegin(
              seen === 'gapUneven'
                ? { kind: 'gaps' }
                : { kind: 'new', start: alterationSeen(seen, mm, { draft, unaltered, style }) },
            )
          }
          onCancel={fields.onCancel}
        />
      );
  }
}
