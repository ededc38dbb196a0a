// The card of the pattern's files: drawings for other programs and machines, and a picture to send.

import { useState } from 'react';
import { CUT } from '../../document';
import { type PlanInput, patternDxf, patternSvg } from '../../paper';
import { download } from '../components/files/download';
import { fileName } from '../components/files/fileName';
import { refusalOf } from './choices/usePlanInput';
import { Fold } from './Fold';
import { picture } from './print/picture';
import { useKeepPrint } from './print/useKeepPrint';

interface FileKind {
  readonly ending: 'svg' | 'dxf' | 'png';
  /** Media type. */
  readonly type: string;
  /** Null where the browser cannot make it. */
  readonly make: (input: PlanInput) => Promise<string | Uint8Array | null>;
}

const KINDS: readonly FileKind[] = [
  { ending: 'svg', type: 'image/svg+xml', make: async (input) => patternSvg(input) },
  { ending: 'dxf', type: 'image/vnd.dxf', make: async (input) => patternDxf(input) },
  { ending: 'png', type: 'image/png', make: (input) => picture(patternSvg(input)) },
];

export function FilesCard({ input }: { input: PlanInput }) {
  const [failed, setFailed] = useState<FileKind['ending'] | null>(null);
  const keepPrint = useKeepPrint();
  const refused = refusalOf(input) !== null;
  const save = async ({ ending, type, make }: FileKind): Promise<void> => {
    const content = await make(input);
    setFailed(content === null ? ending : null);
    if (content === null) return;
    download(content, type, `${fileName(input.client.name, input.savedDraft.name)}.${ending}`);
    // A picture is not cut from.
    if (ending !== 'png') keepPrint(ending);
  };
  return (
    <Fold title={CUT.files.title} className="files-card">
      <ul>
        {KINDS.map((kind) => {
          const texts = CUT.files[kind.ending];
          return (
            <li key={kind.ending}>
              <span>
                <b>{texts.name}</b>
                <span className="hint">{texts.hint}</span>
              </span>
              <button
                type="button"
                disabled={refused}
                aria-label={texts.download}
                onClick={() => void save(kind)}
              >
                {CUT.files.download}
              </button>
            </li>
          );
        })}
      </ul>
      <p className="said" aria-live="polite">
        {failed === null ? '' : CUT.files[failed].failed}
      </p>
    </Fold>
  );
}
