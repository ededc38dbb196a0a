// What the Cut step shows beside the choices: the panels on paper, the lay plan or the making list.

import { CUT } from '../../document';
import type { PlanInput } from '../../paper';
import { ChoiceRow } from './choices/ChoiceRow';
import { type CutView, choose, useCutChoices } from './choices/cutChoices';

const TEXTS = CUT.views;

/** The views there are for a draft, and the one that is shown: the panels where the chosen one is not there. */
export function useCutViews({ draft, mockup }: PlanInput): {
  readonly views: readonly CutView[];
  readonly view: CutView;
} {
  const { view } = useCutChoices();
  const views: readonly CutView[] =
    draft.pieces.length === 0 ? ['panels'] : mockup ? ['panels', 'making'] : ['panels', 'lay', 'making'];
  return { views, view: views.includes(view) ? view : 'panels' };
}

export function CutViews({ views, view }: ReturnType<typeof useCutViews>) {
  return views.length > 1 ? (
    <ChoiceRow
      legend={TEXTS.label}
      name="cut-view"
      choices={views.map((value) => ({ value, label: TEXTS.each[value] }))}
      value={view}
      onChange={(chosen) => choose({ view: chosen })}
    />
  ) : null;
}
