// How the body differs left to right, for those it does: the left half of each girth, and levels that sit lower on the right.

import {
  type Change,
  type Client,
  LEVEL_WORDS,
  MEASURE,
  measurementIssueSentence,
  openClient,
  setSide,
} from '../../../document';
import { type BodySides, LEVEL_NAMES, type LevelName, SIDE_LEVELS, SIDES_SPANS } from '../../../engine';
import { LengthField } from '../../components/fields/LengthField';
import { useClientNumber } from '../../components/fields/useNumberEdit';
import { useLaterIssues } from '../../store/laterIssues';
import { seen } from '../../store/store';
import { useOpen, useStore } from '../../store/storeContext';
import type { FieldShown } from './fieldShown';

interface SidesFieldsProps {
  /** Path of the field that was last gone into. */
  readonly inHand: string | null;
  readonly onFocus: (shown: FieldShown) => void;
}

export function SidesFields({ inHand, onFocus }: SidesFieldsProps) {
  const { client } = useOpen();
  // What is ticked and typed is always the latest; all that is said about it may come a moment later.
  const sides = useStore((state) => openClient(seen(state)).sides);
  if (!sides) return null;
  return (
    <fieldset className="sides">
      <legend>
        <h2>{MEASURE.sides.title}</h2> <span className="intro">{MEASURE.sides.intro}</span>
      </legend>
      {LEVEL_NAMES.filter((level) => client.measurements[level] !== null).map((level) => (
        <LeftHalf key={`${client.id} ${level}`} {...{ level, sides, inHand, onFocus }} />
      ))}
      {SIDE_LEVELS.map((level) => (
        <RightLower key={`${client.id} ${level}`} {...{ level, sides, inHand, onFocus }} />
      ))}
    </fieldset>
  );
}

interface FieldProps<Level> {
  readonly level: Level;
  readonly sides: BodySides;
  readonly inHand: string | null;
  readonly onFocus: (shown: FieldShown) => void;
}

function LeftHalf({ level, sides, inHand, onFocus }: FieldProps<keyof BodySides['leftShare']>) {
  const { client } = useOpen();
  const girth = client.measurements[level] ?? 0;
  const share = sides.leftShare[level];
  const [least, most] = SIDES_SPANS.leftShare;
  return (
    <SideField
      label={MEASURE.sides.leftHalf({ level: LEVEL_WORDS[level] })}
      path={`leftShare.${level}`}
      change={{ code: 'leftHalfSet', level }}
      value={share === undefined ? null : share * girth}
      span={[least * girth, most * girth]}
      measurement={level}
      how={MEASURE.sides.leftHalfHow({ level: LEVEL_WORDS[level] })}
      inHand={inHand}
      onFocus={onFocus}
      onSet={(open, mm) => setSide(open, 'leftShare', level, mm === null || girth === 0 ? null : mm / girth)}
    />
  );
}

function RightLower({ level, sides, inHand, onFocus }: FieldProps<(typeof SIDE_LEVELS)[number]>) {
  return (
    <SideField
      label={MEASURE.sides.rightLower({ level: LEVEL_WORDS[level] })}
      path={`rightLower.${level}`}
      change={{ code: 'rightLowerSet', level }}
      value={sides.rightLower[level] ?? null}
      span={SIDES_SPANS.rightLower}
      signed={true}
      measurement={level}
      how={MEASURE.sides.rightLowerHow({ level: LEVEL_WORDS[level] })}
      inHand={inHand}
      onFocus={onFocus}
      onSet={(open, mm) => setSide(open, 'rightLower', level, mm)}
    />
  );
}

interface SideFieldProps {
  readonly label: string;
  /** Of the engine's issues. */
  readonly path: string;
  readonly change: Change;
  readonly value: number | null;
  readonly span: readonly [number, number];
  readonly signed?: boolean;
  /** The level whose tape is drawn. */
  readonly measurement: LevelName;
  readonly how: string;
  readonly inHand: string | null;
  readonly onFocus: (shown: FieldShown) => void;
  readonly onSet: (client: Client, mm: number | null) => Client;
}

function SideField(props: SideFieldProps) {
  const {
    label,
    path,
    change,
    value,
    span,
    signed = false,
    measurement,
    how,
    inHand,
    onFocus,
    onSet,
  } = props;
  const { client } = useOpen();
  const issues = useLaterIssues();
  const edit = useClientNumber();
  const own = issues.filter(({ at }) => at.field === path);
  return (
    <div
      className="tape-row measurement"
      data-field={path}
      data-in-hand={inHand === path || undefined}
      data-filled={value !== null || undefined}
    >
      <LengthField
        label={label}
        value={value}
        unit={client.unit}
        span={span}
        signed={signed}
        optional={true}
        hasFractionKeys={true}
        remember={`${client.id} ${path}`}
        hint={how}
        remarks={own.flatMap((issue) => measurementIssueSentence(issue, client.unit) ?? [])}
        onFocus={() => onFocus({ field: path, measurement, label, how })}
        refused={own.some(({ severity }) => severity === 'error')}
        {...edit(change, onSet)}
      />
    </div>
  );
}
