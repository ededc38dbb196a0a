// The garment's own numbers: where it begins and ends, and how it closes.

import { type ChangeOf, type Client, changeStyle, DRAFT, setJoinedSide, setSideZip } from '../../document';
import {
  BACK_CLOSURES,
  type BlockName,
  type Closure,
  FRONT_CLOSURES,
  type Style,
  styleSpan,
} from '../../engine';
import { Checkbox } from '../components/fields/Checkbox';
import { LengthField } from '../components/fields/LengthField';
import { useStyleNumber } from '../components/fields/useNumberEdit';
import { useDraft, useOpen, useStore } from '../store/storeContext';
import { usualTopUnder } from './canvas/handleLabel';
import { FrontShares } from './FrontShares';
import { faultId } from './strip/mendFocus';

const TEXTS = DRAFT.garment;

type GarmentLength = ChangeOf<'garmentLengthSet'>['field'];

/** A length of the garment, mm, as the card has it. */
interface LengthOfCard {
  readonly label: string;
  readonly hint: (style: Style, client: Client) => string;
  readonly signed?: boolean;
  readonly value: (style: Style) => number;
  readonly set: (style: Style, mm: number) => Style;
}

/** In the order of the card. */
const LENGTHS = Object.entries({
  topAbove: {
    label: TEXTS.topEdge,
    hint: (style, client) => TEXTS.topEdgeHint({ level: style.topFrom, under: usualTopUnder(style, client) }),
    signed: true,
    value: ({ topAbove }) => topAbove,
    set: (style, mm) => ({ ...style, topAbove: mm }),
  },
  hemBelow: {
    label: TEXTS.hem,
    hint: () => TEXTS.hemHint,
    signed: true,
    value: ({ hemBelow }) => hemBelow,
    set: (style, mm) => ({ ...style, hemBelow: mm }),
  },
  'closure.lacingGap': {
    label: TEXTS.lacingGap,
    hint: () => TEXTS.lacingGapHint,
    value: ({ closure }) => closure.lacingGap,
    set: (style, mm) => ({ ...style, closure: { ...style.closure, lacingGap: mm } }),
  },
} satisfies Record<GarmentLength, LengthOfCard>) as [GarmentLength, LengthOfCard][];

export function GarmentCard() {
  const { client, savedDraft } = useOpen();
  const { issues } = useDraft();
  const edit = useStyleNumber();
  const { style } = savedDraft;
  const isRefused = (field: string): boolean =>
    issues.some(({ severity, at }) => severity === 'error' && at.field === field);
  return (
    <section className="garment-card" aria-label={TEXTS.title}>
      <h3>{TEXTS.title}</h3>
      {LENGTHS.map(([field, { label, hint, signed = false, value, set }]) => (
        <LengthField
          key={field}
          label={label}
          value={value(style)}
          signed={signed}
          span={styleSpan(field)}
          unit={client.unit}
          hint={hint(style, client)}
          refused={isRefused(field)}
          {...edit({ code: 'garmentLengthSet', field }, set)}
        />
      ))}
      <Centre block="front" kinds={FRONT_CLOSURES} />
      <Centre block="back" kinds={BACK_CLOSURES} />
      <AtTheSide />
      <FrontShares />
    </section>
  );
}

/** Whether there is a side seam, and whether the garment opens along it. */
function AtTheSide() {
  const { savedDraft } = useOpen();
  const change = useStore((state) => state.change);
  const { style } = savedDraft;
  return (
    <>
      <Switch
        id="joinedSide"
        label={TEXTS.joinedSide}
        hint={TEXTS.joinedSideHint}
        on={style.joinedSide === true}
        onSet={(joined) =>
          change({ code: 'sidePanelSet', joined }, (book) =>
            changeStyle(book, (before) => setJoinedSide(before, joined)),
          )
        }
      />
      <Switch
        id="closure.sideZip"
        label={TEXTS.sideZip}
        hint={TEXTS.sideZipHint}
        on={style.closure.sideZip === true}
        onSet={(zipped) =>
          change({ code: 'sideZipSet', zipped }, (book) =>
            changeStyle(book, (before) => setSideZip(before, zipped)),
          )
        }
      />
    </>
  );
}

interface SwitchProps {
  /** The field of the style. */
  readonly id: string;
  readonly label: string;
  readonly hint: string;
  readonly on: boolean;
  readonly onSet: (on: boolean) => void;
}

function Switch({ id, label, hint, on, onSet }: SwitchProps) {
  return (
    <div className="switch">
      <Checkbox on={on} onSet={onSet} describedBy={`${id}-hint ${faultId(id)}`}>
        {label}
      </Checkbox>
      <p className="hint" id={`${id}-hint`}>
        {hint}
      </p>
    </div>
  );
}

interface CentreProps {
  readonly block: BlockName;
  readonly kinds: readonly Closure['front'][];
}

/** What is at one centre of the garment. */
function Centre({ block, kinds }: CentreProps) {
  const { savedDraft } = useOpen();
  const change = useStore((state) => state.change);
  return (
    <div className="centre">
      <label className="choice">
        <span>{TEXTS.centres[block]}</span>
        <select
          value={savedDraft.style.closure[block]}
          onChange={(event) => {
            const kind = kinds.find((each) => each === event.target.value);
            if (kind)
              change({ code: 'centreSet', block }, (book) =>
                changeStyle(book, (style) => ({ ...style, closure: { ...style.closure, [block]: kind } })),
              );
          }}
        >
          {kinds.map((kind) => (
            <option key={kind} value={kind}>
              {TEXTS.closures[kind]}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}
