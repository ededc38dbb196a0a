// A plan of a cloth at full size for a projector over the cutting table.

import { LAY_PLAN, PATTERN } from '../../document';
import type { Glyphs } from '../glyphs/glyphs';
import type { WithFace } from '../glyphs/pageFace';
import { isProjectorChoice, type ProjectorChoice, projectedPdf, projectedReading } from '../pdf/projectorPdf';
import { settable } from '../text/writable';
import { planOfCloth } from './layPanels';
import type { LayHead } from './layPdf';
import { clothSentence, isShrunk } from './layTexts';
import type { LayPlan } from './plan';

/**
 * The bytes of a PDF of one dark page, as wide as the cloth; null where a side would be over 5080 mm.
 *
 * @throws RangeError on a choice that isProjectorChoice refuses
 */
export async function layProjectorPdf(
  plan: LayPlan,
  { client, draft, date, unit }: LayHead,
  choice: ProjectorChoice,
  faces: WithFace & { readonly glyphs?: Glyphs | null },
): Promise<Uint8Array | null> {
  if (!isProjectorChoice(choice)) throw new RangeError('projector choice not checked');
  const names = [client, draft, date].map((name) => settable(name)).filter((name) => name !== '');
  const shown = unit === 'in' ? 'in' : 'cm';
  return projectedPdf(
    planOfCloth(plan, projectedReading(choice.lineMm).textScale),
    choice,
    {
      title: [LAY_PLAN.title, ...names.slice(0, 2)].join(', '),
      head: [PATTERN.grid[shown], ...names].join(' · '),
      remark: isShrunk(plan.cloth) ? LAY_PLAN.shrunk : clothSentence(plan, unit),
      unit: shown,
      seed: JSON.stringify([names, choice, plan.cloth, plan.placed.map(({ outline }) => outline)]),
    },
    faces,
  );
}
