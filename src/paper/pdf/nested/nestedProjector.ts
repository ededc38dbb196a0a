// Sizes one over another for a projector.

import { PATTERN } from '../../../document';
import type { WithFace } from '../../glyphs/pageFace';
import type { NestedInput } from '../../nested/nestedInput';
import { drawnNests, planNested } from '../../nested/nestedPanels';
import { settable } from '../../text/writable';
import {
  isProjectorChoice,
  type ProjectorChoice,
  planWidth,
  projectedPdf,
  projectedReading,
} from '../projectorPdf';
import { nestedTitle, rangeOf, seedOf } from './nestedParagraphs';

/**
 * The bytes of a PDF of one dark page with the sizes; null where a side would be over 5080 mm. Same input, same bytes.
 *
 * @throws RangeError on a choice that isProjectorChoice refuses
 */
export async function nestedProjectorPdf(
  input: NestedInput & WithFace,
  choice: ProjectorChoice,
): Promise<Uint8Array | null> {
  if (!isProjectorChoice(choice)) throw new RangeError('projector choice not checked');
  const plan = planNested(drawnNests(input, projectedReading(choice.lineMm)), planWidth(choice.widthMm));
  const names = [input.savedDraft.name, rangeOf(input), input.date].map((name) => settable(name));
  return projectedPdf(
    plan,
    choice,
    {
      title: nestedTitle(input),
      head: [PATTERN.grid[input.unit], ...names].join(' · '),
      remark: null,
      unit: input.unit,
      seed: seedOf(input, choice),
    },
    input,
  );
}
