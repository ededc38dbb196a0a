// Lays the pieces of a draft on a cloth and writes the plan.

import { performance } from 'node:perf_hooks';
import { type Read, refuse } from '../../document';
import type { PlanInput, WithFace } from '../../paper';
import type { LayOptions } from '../input/options';

type Paper = typeof import('../../paper');

/** The names of the files that a plan is written to. */
export const LAY_FILES = ['lay.json', 'lay.svg', 'lay.pdf'] as const;

type LayContents = readonly (readonly [name: (typeof LAY_FILES)[number], content: string | Uint8Array])[];

/** The contents of the files, or a fault for each piece that cannot lie on the cloth. */
export async function layFiles(
  input: PlanInput & WithFace,
  asked: LayOptions,
  { startLay, cutOnce, layFaultSentence, layFile, layPdf, laySvg, OPEN_CLOTH }: Paper,
): Promise<Read<LayContents>> {
  const start = performance.now();
  const { draft, client, savedDraft, date, nap = false } = input;
  const cloth = { ...OPEN_CLOTH, widthMm: asked.width, folded: asked.fold, gapMm: asked.gap, nap };
  const laid = startLay([...draft.pieces, ...draft.extras].map(cutOnce), cloth, asked.seed);
  if (!laid.ok)
    return {
      ok: false,
      faults: laid.faults.flatMap((fault) => {
        const refused = refuse('--lay', layFaultSentence(fault, cloth, client.unit));
        return refused.ok ? [] : refused.faults;
      }),
    };
  while (performance.now() - start < asked.seconds * 1000) laid.work.step();
  const plan = laid.work.best();
  const head = { client: client.name, draft: savedDraft.name, date, unit: client.unit };
  return {
    ok: true,
    value: [
      ['lay.json', `${JSON.stringify(layFile(plan))}\n`],
      ['lay.svg', laySvg(plan, [client.name, savedDraft.name].join(', '), client.unit)],
      ['lay.pdf', await layPdf(plan, head, input)],
    ],
  };
}
