// The drafting sheet as one HTML file that includes figures and style, fetches nothing and has no script.

import { DRAFTING_SHEET } from '../../document';
import type { PlanInput } from '../layout/planInput';
import { escaped, mm } from '../text/markup';
import { isolatedParts } from '../text/readingOrder';
import { cleaned } from '../text/writable';
import { draftingSheet } from './draftingSheet';
import type { DraftingFigure, DraftingStep, FigureLineKind, StepTable } from './elements/draftingStep';
import { labelsApart } from './labelsApart';

/** The text of the file. Names are escaped. Same input, same text. */
export function draftingSheetHtml(input: PlanInput): string {
  const { client, draft, date, warning, remarks, steps } = draftingSheet(input);
  const [who, what, when] = [client, draft, date].map(cleaned) as [string, string, string];
  const title = isolatedParts(
    [DRAFTING_SHEET.title, who, what].filter((part) => part !== ''),
    ', ',
  );
  return [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escaped(title)}</title>`,
    `<style>${STYLE}</style>`,
    '</head>',
    '<body>',
    '<header>',
    `<p>${escaped(DRAFTING_SHEET.title)}</p>`,
    `<h1><bdi>${escaped(who)}</bdi></h1>`,
    `<p>${[what, when]
      .filter((part) => part !== '')
      .map((part) => `<bdi>${escaped(part)}</bdi>`)
      .join(' · ')}</p>`,
    ...(warning === null ? [] : [`<p class="warning">${escaped(warning)}</p>`]),
    ...remarks.map((remark) => `<p class="remark">${escaped(remark)}</p>`),
    '</header>',
    '<main>',
    ...(steps.length === 0 ? [`<p>${escaped(DRAFTING_SHEET.nothing)}</p>`] : steps.map(stepSection)),
    '</main>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

function stepSection({ heading, sentences, tables, figure }: DraftingStep, i: number): string {
  return [
    `<section${figure ? '' : ' class="plain"'}>`,
    `<div><h2>${i + 1}. ${escaped(heading)}</h2>`,
    ...sentences.map((sentence) => `<p>${escaped(sentence)}</p>`),
    ...tables.map(tableMarkup),
    '</div>',
    ...(figure ? [figureMarkup(figure, heading)] : []),
    '</section>',
  ].join('\n');
}

function tableMarkup({ columns, rows }: StepTable): string {
  const cell = (text: string, i: number): string =>
    i === 0 ? `<th scope="row">${escaped(text)}</th>` : `<td>${escaped(text)}</td>`;
  return [
    '<table>',
    `<thead><tr>${columns.map((column) => `<th scope="col">${escaped(column)}</th>`).join('')}</tr></thead>`,
    '<tbody>',
    ...rows.map((cells) => `<tr>${cells.map(cell).join('')}</tr>`),
    '</tbody>',
    '</table>',
  ].join('\n');
}

/** Greatest width and height of a figure, and size of its labels, CSS pixels. */
const FIGURE_PX = 300;
const FIGURE_HIGH_PX = 310;
const LETTER_PX = 11;

const KINDS: readonly FigureLineKind[] = ['guide', 'done', 'drawn'];

function figureMarkup({ widthMm, heightMm, lines, spots, labels }: DraftingFigure, heading: string): string {
  const widthPx = Math.round(Math.min(FIGURE_PX, (FIGURE_HIGH_PX * widthMm) / heightMm));
  const perPx = widthMm / widthPx;
  const path = (kind: FigureLineKind): string => {
    const d = lines
      .filter((line) => line.kind === kind)
      .map(({ points }) => `M${points.map(({ x, y }) => `${mm(x)} ${mm(y)}`).join('L')}`)
      .join('');
    return d === '' ? '' : `<path class="${kind}" d="${d}"/>`;
  };
  return [
    `<svg viewBox="0 0 ${mm(widthMm)} ${mm(heightMm)}" width="${widthPx}" role="img" aria-label="${escaped(DRAFTING_SHEET.figure({ heading }))}">`,
    ...KINDS.map(path).filter((each) => each !== ''),
    ...spots.map(({ x, y }) => `<circle cx="${mm(x)}" cy="${mm(y)}" r="${mm(2.2 * perPx)}"/>`),
    ...labelsApart(labels, LETTER_PX * 1.25 * perPx, LETTER_PX * 3 * perPx).map(
      ({ text, at, anchor }) =>
        `<text x="${mm(at.x)}" y="${mm(at.y)}" font-size="${mm(LETTER_PX * perPx)}" text-anchor="${anchor}">${escaped(text)}</text>`,
    ),
    '</svg>',
  ].join('\n');
}

const STYLE = `
:root{color-scheme:light}
*{box-sizing:border-box}
body{max-width:60rem;margin:0 auto;padding:1.5rem;background:#fff;color:#1b1b1b;font:15px/1.45 ui-sans-serif,system-ui,'Segoe UI',Roboto,'Noto Sans','Liberation Sans',sans-serif;font-variant-numeric:tabular-nums}
header{border-bottom:1px solid #888;margin-bottom:1rem;padding-bottom:.75rem}
h1,h2,p{margin:0 0 .4rem;overflow-wrap:anywhere}
h1{font-size:1.7rem;line-height:1.2}
h2{font-size:1.1rem}
.remark{color:#444;font-size:.9rem}
.warning{font-weight:700;border:2px solid;padding:.4rem .6rem}
section{display:grid;grid-template-columns:minmax(0,1fr) ${FIGURE_PX}px;gap:1.5rem;padding:1rem 0;border-bottom:1px solid #ccc;break-inside:avoid}
section.plain{grid-template-columns:minmax(0,1fr)}
table{border-collapse:collapse;margin:.5rem 0;font-size:.92rem}
th,td{padding:.15rem .8rem .15rem 0;text-align:left;vertical-align:top;border-bottom:1px solid #e2e2e2}
thead th{font-size:.8rem;font-weight:600;color:#444;vertical-align:bottom}
tbody th{font-weight:400}
svg{display:block;justify-self:center;max-width:100%;height:auto;overflow:visible}
path{fill:none;vector-effect:non-scaling-stroke}
.guide{stroke:#999;stroke-width:.7;stroke-dasharray:3 3}
.done{stroke:#777;stroke-width:1}
.drawn{stroke:#000;stroke-width:2}
circle{fill:#fff;stroke:#000;stroke-width:1;vector-effect:non-scaling-stroke}
text{fill:#000;font-family:inherit;paint-order:stroke;stroke:#fff;stroke-width:3px;stroke-linejoin:round;vector-effect:non-scaling-stroke}
@media(max-width:46rem){section{grid-template-columns:minmax(0,1fr)}table{display:block;overflow-x:auto}}
@media print{body{max-width:none;padding:0;font-size:9.5pt;line-height:1.35}section{grid-template-columns:minmax(0,1fr) 74mm;gap:6mm;padding:.5rem 0}table{font-size:9pt}.remark{font-size:8.5pt}th,td{padding-top:.05rem;padding-bottom:.05rem}svg{max-width:74mm;max-height:70mm;width:auto}h2{break-after:avoid}@page{margin:14mm}}
`;
