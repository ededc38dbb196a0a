// The print of the sizes or people that are chosen: one over another in every form, or a PDF for each in one ZIP.

import { useState } from 'react';
import {
  acknowledge,
  CUT,
  isRead,
  type NamedBody,
  PROGRAM,
  SAFETY_CAUTIONS,
  SAFETY_STANDING,
  SIZING,
  type SizeProof,
  wantsReading,
} from '../../../document';
import { checkPaper, isProjectorChoice, paperChoice } from '../../../paper';
import { fileName } from '../../components/files/fileName';
import { useOpen } from '../../store/storeContext';
import { correctionOf, paperFor, useCutChoices } from '../choices/cutChoices';
import { makingFor, useMakingChoices } from '../choices/makingChoices';
import type { NestedOn, SizesJob } from './sizesJob';
import { chooseSizing, type Form, useSizingChoices } from './sizingChoices';
import { useSizesPrint } from './useSizes';

const TEXTS = SIZING.print;

const FORMS: readonly Form[] = ['sheets', 'page', 'projector', 'svg', 'dxf', 'zip'];

const TYPES: Readonly<Record<Form, { readonly type: string; readonly ending: string }>> = {
  sheets: { type: 'application/pdf', ending: 'pdf' },
  page: { type: 'application/pdf', ending: 'pdf' },
  projector: { type: 'application/pdf', ending: 'pdf' },
  svg: { type: 'image/svg+xml', ending: 'svg' },
  dxf: { type: 'image/vnd.dxf', ending: 'dxf' },
  zip: { type: 'application/zip', ending: 'zip' },
};

interface SizesPrintProps {
  readonly bodies: readonly NamedBody[];
  readonly proofs: readonly SizeProof[];
  /** All bodies are proved. */
  readonly isReady: boolean;
}

export function SizesPrint({ bodies, proofs, isReady }: SizesPrintProps) {
  const { client, savedDraft } = useOpen();
  const { whom, off, form: chosenForm, withSheets } = useSizingChoices();
  const cut = useCutChoices();
  const { settings, printed } = useMakingChoices();
  const [hasRead, setRead] = useState(false);
  const { progress, outcome, print, cancel } = useSizesPrint();
  const { unit } = client;
  const isCast = whom === 'cast';
  const form = isCast ? 'zip' : chosenForm;
  const chosen = proofs.filter(({ canBeCut, name }) => canBeCut && !off.includes(name));
  const uncut = proofs.filter(({ canBeCut }) => !canBeCut).map(({ name }) => name);
  const wantsCautions = chosen.some(({ warnings }) =>
    warnings.some((issue) => wantsReading(issue) && !isRead(issue, savedDraft)),
  );
  const asked = paperFor(cut, unit);
  const paper = checkPaper(asked).ok ? asked : paperChoice(unit === 'in' ? 'Letter' : 'A4');
  const page = CUT.page.papers[cut.pageName as keyof typeof CUT.page.papers] ?? CUT.page.anotherWidth;

  const job = (): SizesJob => {
    const names = new Set(chosen.map(({ name }) => name));
    const common = {
      bodies: bodies.filter(({ name }) => names.has(name)),
      savedDraft: wantsCautions && hasRead ? acknowledge(savedDraft, true) : savedDraft,
      unit,
      date: new Date().toLocaleDateString(undefined, { dateStyle: 'medium' }),
      program: PROGRAM,
    };
    const correction = correctionOf(cut);
    if (form === 'zip') {
      const making = printed ? makingFor({ settings }, unit) : undefined;
      return { kind: 'zip', ...common, paper, correction, making, withSheets };
    }
    const on: NestedOn =
      form === 'sheets'
        ? { form, paper, correction }
        : form === 'page'
          ? { form, choice: cut.page, correction }
          : form === 'projector'
            ? { form, choice: cut.projector }
            : { form };
    return { kind: 'nested', ...common, on, leftOut: uncut };
  };

  if (bodies.length === 0) return null;
  const isRefused =
    chosen.length === 0 ||
    !isReady ||
    (wantsCautions && !hasRead) ||
    (form === 'projector' && !isProjectorChoice(cut.projector));
  return (
    <section className="sizes-print" aria-label={TEXTS.title}>
      <h3>{TEXTS.title}</h3>
      {isCast ? (
        <p>{TEXTS.formsOfCast}</p>
      ) : (
        <label className="choice">
          <span>{TEXTS.form}</span>
          <select value={form} onChange={(event) => chooseSizing({ form: event.target.value as Form })}>
            {FORMS.map((each) => (
              <option key={each} value={each}>
                {TEXTS.forms[each]}
              </option>
            ))}
          </select>
        </label>
      )}
      {form === 'sheets' || form === 'zip' ? (
        <p className="hint">{TEXTS.paper({ paper: paper.name })}</p>
      ) : null}
      {form === 'page' ? <p className="hint">{TEXTS.page({ page })}</p> : null}
      {form === 'zip' ? (
        <label className="tick">
          <input
            type="checkbox"
            checked={withSheets}
            onChange={(event) => chooseSizing({ withSheets: event.target.checked })}
          />
          <span>{TEXTS.withSheets}</span>
        </label>
      ) : null}
      {uncut.length > 0 ? <p className="said">{TEXTS.leftOut({ count: uncut.length })}</p> : null}
      {wantsCautions ? (
        <section className="safety" aria-label={TEXTS.cautions}>
          <h4>{TEXTS.cautions}</h4>
          <p>{SAFETY_STANDING}</p>
          <ul>
            {SAFETY_CAUTIONS.map(({ text }) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
          <label className="tick">
            <input type="checkbox" checked={hasRead} onChange={(event) => setRead(event.target.checked)} />
            <span>{TEXTS.read}</span>
          </label>
        </section>
      ) : null}
      <div className="actions">
        {progress ? (
          <>
            <progress aria-label={TEXTS.title} value={progress.done} max={Math.max(1, progress.of)} />
            <span>{TEXTS.progress(progress)}</span>
            <button type="button" onClick={cancel}>
              {TEXTS.cancel}
            </button>
          </>
        ) : (
          <button
            type="button"
            className="primary"
            disabled={isRefused}
            onClick={() => {
              const { type, ending } = TYPES[form];
              print(job(), `${fileName(savedDraft.name, SIZING.whom[whom])}.${ending}`, type);
            }}
          >
            {TEXTS.make({ count: chosen.length, isCast })}
          </button>
        )}
      </div>
      <p className="said" aria-live="polite">
        {chosen.length === 0 && isReady ? TEXTS.none : outcome === null ? '' : TEXTS[outcome]}
      </p>
    </section>
  );
}
