// Pieces beside the panels: modesty panel, facings, sleeves and straps, each asked for by a tick and given its measures.

import { changeStyle, DRAFT, type ExtraLengthPath, setExtra } from '../../document';
import { type Extras, styleSpan, USUAL_EXTRAS } from '../../engine';
import { Checkbox } from '../components/fields/Checkbox';
import { LengthField } from '../components/fields/LengthField';
import { useStyleNumber } from '../components/fields/useNumberEdit';
import { useDraft, useOpen, useStore } from '../store/storeContext';

const TEXTS = DRAFT.extras;

interface Part {
  readonly name: keyof Extras;
  readonly label: string;
  /** Made only where a centre is laced. */
  readonly laced: boolean;
  readonly fields: readonly {
    readonly field: string;
    readonly path: ExtraLengthPath;
    readonly label: string;
    readonly hint: string;
  }[];
}

const MODESTY: Part = {
  name: 'modesty',
  label: TEXTS.modesty,
  laced: true,
  fields: [
    {
      field: 'overlap',
      path: 'extras.modesty.overlap',
      label: TEXTS.modestyOverlap,
      hint: TEXTS.modestyOverlapHint,
    },
  ],
};
const FACING: Part = {
  name: 'facing',
  label: TEXTS.facing,
  laced: true,
  fields: [
    {
      field: 'width',
      path: 'extras.facing.width',
      label: TEXTS.facingWidth,
      hint: TEXTS.facingWidthHint,
    },
  ],
};
const SLEEVE: Part = {
  name: 'sleeve',
  label: TEXTS.sleeve,
  laced: false,
  fields: [
    { field: 'depth', path: 'extras.sleeve.depth', label: TEXTS.sleeveDepth, hint: TEXTS.sleeveDepthHint },
    { field: 'ease', path: 'extras.sleeve.ease', label: TEXTS.sleeveEase, hint: TEXTS.sleeveEaseHint },
    {
      field: 'gathered',
      path: 'extras.sleeve.gathered',
      label: TEXTS.sleeveGathered,
      hint: TEXTS.sleeveGatheredHint,
    },
    {
      field: 'joined',
      path: 'extras.sleeve.joined',
      label: TEXTS.sleeveJoined,
      hint: TEXTS.sleeveJoinedHint,
    },
  ],
};
const STRAPS: Part = {
  name: 'straps',
  label: TEXTS.straps,
  laced: false,
  fields: [
    { field: 'length', path: 'extras.straps.length', label: TEXTS.strapLength, hint: TEXTS.strapLengthHint },
    { field: 'width', path: 'extras.straps.width', label: TEXTS.strapWidth, hint: TEXTS.strapWidthHint },
  ],
};

export function ExtrasCard() {
  return (
    <section className="garment-card extras-card" aria-label={TEXTS.title}>
      <h3>{TEXTS.title}</h3>
      <ExtraFields part={MODESTY} />
      <ExtraFields part={FACING} />
      <ExtraFields part={SLEEVE} />
      <ExtraFields part={STRAPS} />
    </section>
  );
}

function ExtraFields({ part }: { part: Part }) {
  const { client, savedDraft } = useOpen();
  const { issues } = useDraft();
  const edit = useStyleNumber();
  const change = useStore((state) => state.change);
  const { name, label, laced, fields } = part;
  const usual = USUAL_EXTRAS[name];
  const { closure, extras } = savedDraft.style;
  const asked: Readonly<Record<string, number>> | undefined = extras?.[name];
  const unlaced = laced && closure.front !== 'lacing' && closure.back !== 'lacing';
  return (
    <div className="extra">
      <Checkbox
        small={true}
        on={asked !== undefined}
        onSet={(isOn) =>
          change({ code: 'extraSet', extra: name }, (book) =>
            changeStyle(book, (style) => setExtra(style, name, isOn ? usual : null)),
          )
        }
      >
        {label}
      </Checkbox>
      {asked && unlaced ? <p className="hint">{TEXTS.unlaced}</p> : null}
      {asked
        ? fields.map(({ field, path, label: title, hint }) => (
            <LengthField
              key={field}
              label={title}
              hint={hint}
              span={styleSpan(path)}
              value={asked[field] ?? null}
              unit={client.unit}
              refused={issues.some(({ at }) => at.field === path)}
              {...edit({ code: 'extraLengthSet', path }, (style, mm) =>
                setExtra(style, name, { ...usual, ...asked, [field]: mm }),
              )}
            />
          ))
        : null}
    </div>
  );
}
