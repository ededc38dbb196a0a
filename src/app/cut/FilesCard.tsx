// The pattern as files for other programs and machines, and as a picture to send.

import { useState } from 'react';
import { type PlanInput, patternDxf, patternSvg } from '../../paper';
import { download } from '../components/download';
import { fileName } from '../components/fileName';
import { refusalOf } from './choices/usePlanInput';
import { picture } from './print/picture';

interface FileKind {
  readonly ending: string;
  readonly type: string;
  readonly label: string;
  readonly hint: string;
  /** Null where the browser cannot make it. */
  readonly make: (input: PlanInput) => Promise<string | Uint8Array | null>;
}

const KINDS: readonly FileKind[] = [
  {
    ending: 'svg',
    type: 'image/svg+xml',
    label: 'SVG drawing',
    hint: 'Full size, in millimetres; a group for each panel, in it one for each kind of line.',
    make: async (input) => patternSvg(input),
  },
  {
    ending: 'dxf',
    type: 'image/vnd.dxf',
    label: 'DXF drawing',
    hint: 'Full size, in millimetres, release 12; a block for each panel, layers by number as in ASTM D6673.',
    make: async (input) => patternDxf(input),
  },
  {
    ending: 'png',
    type: 'image/png',
    label: 'PNG picture',
    hint: 'All panels small, to look at and to send to the client; not to cut from.',
    make: (input) => picture(patternSvg(input)),
  },
];

export function FilesCard({ input }: { input: PlanInput }) {
  const [failure, setFailure] = useState('');
  const refused = refusalOf(input) !== null;
  const save = async ({ ending, type, label, make }: FileKind): Promise<void> => {
    const content = await make(input);
    setFailure(content === null ? `This browser cannot make the ${label}.` : '');
    if (content !== null)
      download(content, type, `${fileName(input.client.name, input.savedDraft.name)}.${ending}`);
  };
  return (
    <section className="card files-card" aria-label="Drawings and pictures">
      <h2>Drawings and pictures</h2>
      <ul>
        {KINDS.map((kind) => (
          <li key={kind.ending}>
            <span>
              <b>{kind.label}</b>
              <span className="hint">{kind.hint}</span>
            </span>
            <button
              type="button"
              disabled={refused}
              aria-label={`Download the ${kind.label}`}
              onClick={() => void save(kind)}
            >
              Download
            </button>
          </li>
        ))}
      </ul>
      <p className="said" aria-live="polite">
        {failure}
      </p>
    </section>
  );
}
