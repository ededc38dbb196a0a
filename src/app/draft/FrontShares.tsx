// The front's part of each girth, as the length across the front from side seam to side seam; an empty one is left to the draft.

import { DRAFT, LEVEL_WORDS, setFrontShare } from '../../document';
import { type Level, styleSpan } from '../../engine';
import { LengthField } from '../components/fields/LengthField';
import { useOptionalStyleNumber } from '../components/fields/useNumberEdit';
import { useDraft, useOpen } from '../store/storeContext';

const TEXTS = DRAFT.frontShares;

export function FrontShares() {
  const { levels } = useDraft();
  return (
    <details className="front-shares">
      <summary>{TEXTS.title}</summary>
      <p className="hint">{TEXTS.hint}</p>
      <div className="shoulder-numbers">
        {levels.map((level) => (
          <FrontShare key={level.name} level={level} />
        ))}
      </div>
    </details>
  );
}

function FrontShare({ level: { name, bodyGirth, frontShare } }: { level: Level }) {
  const { client, savedDraft } = useOpen();
  const edit = useOptionalStyleNumber();
  const share = savedDraft.style.frontShare[name];
  const span = styleSpan('frontShare');
  return (
    <div className="edge-node">
      <span className="edge-node-name">{LEVEL_WORDS[name]}</span>
      <LengthField
        compact={true}
        optional={true}
        label={TEXTS.across({ level: name })}
        span={span && [span[0] * bodyGirth, span[1] * bodyGirth]}
        value={share === undefined ? null : share * bodyGirth}
        unit={client.unit}
        {...edit({ code: 'frontShareSet', level: name }, (style, mm) =>
          setFrontShare(style, name, mm === null ? null : mm / bodyGirth),
        )}
      />
      <span className="hint">{TEXTS.drafted({ percent: Math.round(1000 * frontShare) / 10 })}</span>
    </div>
  );
}
