// The pattern as files for other programs and machines.

import { type PlanInput, patternDxf, patternSvg } from '../../paper';
import { download } from '../parts/download';
import { fileName } from '../parts/fileName';
import { refusalOf } from './usePlanInput';

interface FileKind {
  readonly ending: string;
  readonly type: string;
  readonly label: string;
  readonly hint: string;
  readonly make: (input: PlanInput) => string;
}

const KINDS: readonly FileKind[] = [
  {
    ending: 'svg',
    type: 'image/svg+xml',
    label: 'SVG drawing',
    hint: 'In millimetres, at full size; each panel a group, in it a group for each kind of line.',
    make: patternSvg,
  },
  {
    ending: 'dxf',
    type: 'image/vnd.dxf',
    label: 'DXF drawing',
    hint: 'For cutters and plotters, release 12, in millimetres; each panel a block, on the layers of the trade’s standard (ASTM D6673).',
    make: patternDxf,
  },
];

export function FilesCard({ input }: { input: PlanInput }) {
  const refused = refusalOf(input) !== null;
  return (
    <section className="card files-card" aria-label="For other programs">
      <h2>For other programs</h2>
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
              onClick={() =>
                download(
                  kind.make(input),
                  kind.type,
                  `${fileName(input.client.name, input.sheet.name)}.${kind.ending}`,
                )
              }
            >
              Download
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
