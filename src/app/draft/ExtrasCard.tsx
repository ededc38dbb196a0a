// Pieces beside the panels: modesty panel, facings and straps, each asked for by a tick and given its measures.

import { changeStyle, type ExtraLengthPath, setExtra } from '../../document';
import { type Extras, styleSpan, USUAL_EXTRAS } from '../../engine';
import { Checkbox } from '../components/Checkbox';
import { LengthField } from '../components/LengthField';
import { useIssueSentence } from '../components/useIssueSentence';
import { useDraft, useOpen, useStore } from '../store/storeContext';

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
  label: 'Modesty panel',
  laced: true,
  fields: [
    {
      field: 'overlap',
      path: 'extras.modesty.overlap',
      label: 'Overlap',
      hint: 'under each laced edge; its ends follow top edge and hem',
    },
  ],
};
const FACING: Part = {
  name: 'facing',
  label: 'Facings',
  laced: true,
  fields: [
    {
      field: 'width',
      path: 'extras.facing.width',
      label: 'Facing width',
      hint: 'behind each laced edge, cut to its run',
    },
  ],
};
const STRAPS: Part = {
  name: 'straps',
  label: 'Straps',
  laced: false,
  fields: [
    { field: 'length', path: 'extras.straps.length', label: 'Strap length', hint: 'between the seams' },
    {
      field: 'width',
      path: 'extras.straps.width',
      label: 'Strap width',
      hint: 'finished; it is cut doubled',
    },
  ],
};

export function ExtrasCard() {
  return (
    <section className="card garment-card extras-card" aria-label="Beside the panels">
      <h3>Beside the panels</h3>
      <ExtraFields part={MODESTY} />
      <ExtraFields part={FACING} />
      <ExtraFields part={STRAPS} />
    </section>
  );
}

function ExtraFields({ part }: { part: Part }) {
  const { client, savedDraft } = useOpen();
  const { issues } = useDraft();
  const sentence = useIssueSentence();
  const show = useStore((state) => state.show);
  const keep = useStore((state) => state.keep);
  const drop = useStore((state) => state.drop);
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
      {asked && unlaced ? <p className="hint">Cut where a centre is laced; neither is now.</p> : null}
      {asked
        ? fields.map(({ field, path, label: title, hint }) => (
            <LengthField
              key={field}
              label={title}
              hint={hint}
              span={styleSpan(path)}
              value={asked[field] ?? null}
              unit={client.unit}
              remarks={issues.filter(({ at }) => at.field === path).map(sentence)}
              onShow={(mm) =>
                show((book) =>
                  changeStyle(book, (style) =>
                    setExtra(style, name, { ...usual, ...asked, [field]: mm ?? 0 }),
                  ),
                )
              }
              onKeep={() => keep({ code: 'extraLengthSet', path })}
              onDrop={drop}
            />
          ))
        : null}
    </div>
  );
}
