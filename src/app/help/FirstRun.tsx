// The three pictures of a first visit: the tape on the body, the front panels that the engine drafts for it, and a panel on sheets.
// Of a client who cannot be drafted yet, the panels are those of the invented one.

import { type Client, DEMO_CLIENT, HELP, openDraftOf } from '../../document';
import type { Piece } from '../../engine';
import { BodyFigure } from '../measure/figure/BodyFigure';
import { draftOnce, useOpen } from '../store/storeContext';

const { firstRun: words } = HELP;

/** Between two panels, mm. */
const GAP = 16;

/** Sheets under the printed panel, columns and rows, and the size of one, mm: A4 without its margins. */
const SHEETS = { columns: 1, rows: 2, width: 190, height: 270 } as const;

export default function FirstRun() {
  const { client } = useOpen();
  const own = frontPanelsOf(client);
  const panels = (own.length > 0 ? own : frontPanelsOf(DEMO_CLIENT)).map(outlineOf);
  const [first] = panels;
  return (
    <section className="first-run" aria-label={words.title}>
      <figure>
        <BodyFigure measurement="waist" near={true} />
        <figcaption>{words.measure}</figcaption>
      </figure>
      <figure>
        <Panels panels={panels} />
        <figcaption>{words.draft}</figcaption>
      </figure>
      <figure>
        {first ? <Sheets panel={first} /> : null}
        <figcaption>{words.print}</figcaption>
      </figure>
    </section>
  );
}

const frontPanelsOf = (client: Client): Piece[] =>
  draftOnce(client, openDraftOf(client)).pieces.filter(
    ({ kind, block }) => kind === 'panel' && block === 'front',
  );

interface Outline {
  /** Path of the sew line. */
  readonly d: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function outlineOf({ edges }: Piece): Outline {
  const points = edges.flatMap((edge) => edge.points);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return {
    d: `M${points.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}Z`,
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
  };
}

/** The panels side by side, as they are cut. */
function Panels({ panels }: { panels: readonly Outline[] }) {
  const top = Math.min(...panels.map((panel) => panel.top));
  const bottom = Math.max(...panels.map((panel) => panel.bottom));
  const starts = panels.map((_, i) =>
    panels.slice(0, i).reduce((sum, { left, right }) => sum + right - left + GAP, 0),
  );
  const [last, start] = [panels.at(-1), starts.at(-1)];
  const width = last && start !== undefined ? start + last.right - last.left : 0;
  return (
    <svg viewBox={`-4 ${top - 4} ${width + 8} ${bottom - top + 8}`} aria-hidden="true">
      {panels.map(({ d, left }, i) => (
        <path key={d} className="panel" d={d} transform={`translate(${(starts[i] ?? 0) - left} 0)`} />
      ))}
    </svg>
  );
}

/** A panel over the sheets that it is printed on. */
function Sheets({ panel }: { panel: Outline }) {
  const { columns, rows, width, height } = SHEETS;
  const [left, top] = [
    (panel.left + panel.right - columns * width) / 2,
    (panel.top + panel.bottom - rows * height) / 2,
  ];
  const sheets = Array.from({ length: columns * rows }, (_, i) => ({
    x: left + (i % columns) * width,
    y: top + Math.floor(i / columns) * height,
  }));
  return (
    <svg viewBox={`${left - 4} ${top - 4} ${columns * width + 8} ${rows * height + 8}`} aria-hidden="true">
      {sheets.map(({ x, y }) => (
        <rect key={`${x} ${y}`} className="sheet" x={x} y={y} width={width} height={height} />
      ))}
      <path className="panel" d={panel.d} />
    </svg>
  );
}
