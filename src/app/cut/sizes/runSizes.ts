// Does the work on many bodies, in the worker or on the page.

import { draftSize, proveSize, type SizedDraft, sizeTable } from '../../../document';
import type { SizesJob, SizesResult, SizesWatch } from './sizesJob';

/** Proves the bodies, or prints them; what prints is fetched only then. */
export async function runSizes(job: SizesJob, watch: SizesWatch): Promise<SizesResult> {
  if (job.kind === 'zip') return (await import('./printBodies')).zipped(job, watch);
  const sizes: SizedDraft[] = [];
  for (const [i, body] of job.bodies.entries()) {
    const size = draftSize(body, job.savedDraft.style);
    if (job.kind === 'nested' || job.withTable) sizes.push(size);
    await watch(i + 1, job.bodies.length, job.kind === 'prove' ? proveSize(size) : undefined);
  }
  if (job.kind === 'prove') return { kind: 'proved', table: sizeTable(sizes) };
  const content = await (await import('./printBodies')).nestedOn(job, sizes);
  return content === null ? { kind: 'tooLarge' } : { kind: 'file', content };
}
