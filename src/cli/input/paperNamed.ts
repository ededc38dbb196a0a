// Finds the paper of pattern.pdf by the word after --paper.

import { CLI, type Read, refuse } from '../../document';
import type { OnePageChoice, PaperChoice, ProjectorChoice } from '../../paper';

export type Print =
  | { readonly kind: 'sheets'; readonly paper: PaperChoice }
  | { readonly kind: 'page'; readonly choice: OnePageChoice }
  | { readonly kind: 'projector'; readonly choice: ProjectorChoice };

type Paper = typeof import('../../paper');

/** The words --paper takes, as help and faults list them. */
export const paperWords = ({ PAPERS }: Paper): string[] => [
  ...PAPERS.map(({ name }) => name.toLowerCase()),
  ...CLI.papers,
];

/** Reads the name of a paper, a size of sheets in mm, a roll or a projector, in upper or lower case. */
export function paperNamed(word: string, paper: Paper): Read<Print> {
  const lower = word.toLowerCase();
  const named = paper.PAPERS.find(({ name }) => name.toLowerCase() === lower);
  if (named) return { ok: true, value: { kind: 'sheets', paper: paper.paperChoice(named.name) } };
  if (lower === 'projector')
    return { ok: true, value: { kind: 'projector', choice: paper.DEFAULT_PROJECTOR } };
  const [, roll] = /^roll(?:-(\d+(?:\.\d+)?))?$/.exec(lower) ?? [];
  if (roll !== undefined || lower === 'roll') {
    const widthMm = roll === undefined ? paper.ONE_PAGES[0].widthMm : Number(roll);
    const choice = { widthMm, heightMm: null, marginMm: paper.ONE_PAGE_MARGIN_MM };
    return { ok: true, value: { kind: 'page', choice } };
  }
  const [, width, height] = /^(\d+(?:\.\d+)?)x(\d+(?:\.\d+)?)$/.exec(lower) ?? [];
  if (width === undefined || height === undefined)
    return refuse('--paper', CLI.paperUnknown({ name: word, papers: paperWords(paper) }));
  const own = {
    ...paper.DEFAULT_PAPER_CHOICE,
    name: `${width} × ${height} mm`,
    widthMm: Number(width),
    heightMm: Number(height),
  };
  const checked = paper.checkPaper(own);
  return checked.ok
    ? { ok: true, value: { kind: 'sheets', paper: own } }
    : refuse('--paper', paper.paperSentence(checked.fault, 'mm'));
}
