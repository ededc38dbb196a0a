// How the body differs left to right, for those it does: the left half of each girth, and levels that sit lower on the right.

import {
  type Change,
  changeClient,
  LEVEL_WORDS,
  MEASURE,
  measurementIssueSentence,
  openClient,
  setDiffering,
  setSide,
} from '../../document';
import { type BodySides, LEVEL_NAMES, SIDE_LEVELS, SIDES_SPANS } from '../../engine';
import { Checkbox } from '../components/fields/Checkbox';
import { LengthField } from '../components/fields/LengthField';
import { useClientNumber } from '../components/fields/useNumberEdit';
import { seen } from '../store/store';
import { useDraft, useOpen, useStore } from '../store/storeContext';
import { FigureHere, type TapeShown } from './FigureHere';

export function SidesFields({ onFocus }: { onFocus: (shown: TapeShown) => void }) {
  const { client } = useOpen();
  const change = useStore((state) => state.change);
  // What is ticked and typed is always the latest; all that is said about it may come a moment later.
  const sides = useStore((state) => openClient(seen(state)).sides);
  return (
    <fieldset className="sides">
      <legend>
        <h2>{MEASURE.sides.title}</h2>
      </legend>
      <Checkbox
        on={sides !== undefined}
        onSet={(differing) =>
          change({ code: 'sidesSet', differing }, (book) =>
            changeClient(book, (open) => setDiffering(open, differing)),
          )
        }
      >
        {MEASURE.sides.differ}
      </Checkbox>
      {sides ? (
        <>
          <p className="intro">{MEASURE.sides.intro}</p>
          <div className="sides-fields">
            {LEVEL_NAMES.filter((level) => client.measurements[level] !== null).map((level) => (
              <LeftHalf key={`${client.id} ${level}`} level={level} sides={sides} onFocus={onFocus} />
            ))}
            {SIDE_LEVELS.map((level) => (
              <RightLower key={`${client.id} ${level}`} level={level} sides={sides} onFocus={onFocus} />
            ))}
          </div>
        </>
      ) : null}
    </fieldset>
  );
}

interface FieldProps<Level> {
  readonly level: Level;
  readonly sides: BodySides;
  readonly onFocus: (shown: TapeShown) => void;
}

function LeftHalf({ level, sides, onFocus }: FieldProps<keyof BodySides['leftShare']>) {
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
      hint={MEASURE.sides.leftHalfHint}
      onFocus={(field) =>
        onFocus({
          field,
          measurement: level,
          how: MEASURE.sides.leftHalfHow({ level: LEVEL_WORDS[level] }),
        })
      }
      onSet={(open, mm) => setSide(open, 'leftShare', level, mm === null || girth === 0 ? null : mm / girth)}
    />
  );
}

function RightLower({ level, sides, onFocus }: FieldProps<(typeof SIDE_LEVELS)[number]>) {
  return (
    <SideField
      label={MEASURE.sides.rightLower({ level: LEVEL_WORDS[level] })}
      path={`rightLower.${level}`}
      change={{ code: 'rightLowerSet', level }}
      value={sides.rightLower[level] ?? null}
      span={SIDES_SPANS.rightLower}
      signed={true}
      hint={MEASURE.sides.rightLowerHint}
      onFocus={(field) =>
        onFocus({
          field,
          measurement: level,
          how: MEASURE.sides.rightLowerHow({ level: LEVEL_WORDS[level] }),
        })
      }
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
  readonly hint: string;
  readonly onFocus: (field: string) => void;
  readonly onSet: (
    client: Parameters<typeof setDiffering>[0],
    mm: number | null,
  ) => ReturnType<typeof setDiffering>;
}

function SideField(props: SideFieldProps) {
  const { label, path, change, value, span, signed = false, hint, onFocus, onSet } = props;
  const { client } = useOpen();
  const { issues } = useDraft();
  const edit = useClientNumber();
  const own = issues.filter(({ at }) => at.field === path);
  return (
    <div className="measurement">
      <LengthField
        label={label}
        value={value}
        unit={client.unit}
        span={span}
        signed={signed}
        optional={true}
        remember={`${client.id} ${path}`}
        hint={hint}
        remarks={own.flatMap((issue) => measurementIssueSentence(issue, client.unit) ?? [])}
        onFocus={() => onFocus(path)}
        refused={own.some(({ severity }) => severity === 'error')}
        {...edit(change, onSet)}
      />
      <FigureHere field={path} />
    </div>
  );
}
