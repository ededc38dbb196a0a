// A length of an alteration, typed; what cannot be read is no number until it is mended.

import type { Unit } from '../../../../document';
import { LengthField } from '../../../components/fields/LengthField';

interface AmountFieldProps {
  readonly label: string;
  readonly hint?: string;
  /** mm; NaN where the text cannot be read. */
  readonly value: number;
  readonly unit: Unit;
  /** The most it can be, either way, mm. */
  readonly most: number;
  readonly onSet: (mm: number) => void;
}

export const AmountField = ({ label, hint, value, unit, most, onSet }: AmountFieldProps) => (
  <LengthField
    label={label}
    hint={hint}
    signed={true}
    hasFractionKeys={false}
    span={[-most, most]}
    value={Number.isNaN(value) ? null : value}
    unit={unit}
    onShow={(mm) => onSet(mm ?? Number.NaN)}
    onKeep={() => undefined}
    onDrop={() => onSet(Number.NaN)}
  />
);
