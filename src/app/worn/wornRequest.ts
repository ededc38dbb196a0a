// What the page asks of the worker, and what that answers.

import type { Block, BodySides, Draft, Measurements, Style } from '../../engine';
import type { WornResult } from './view/wornPicture';

export interface WornRequest {
  /** Counted up; an answer has its request's number. */
  readonly number: number;
  readonly draft: Draft;
  readonly measurements: Measurements;
  readonly style: Style;
  readonly sides: BodySides | null;
  /** Width of the mesh, mm; left out for that of figures. */
  readonly width?: number;
}

export type WornAnswer = { readonly number: number } & (
  | { readonly kind: 'sewn'; readonly result: WornResult }
  | { readonly kind: 'failed' }
);

/** The draft without what sewing does not read, so that little is copied: of the blocks it reads where the bust point is. */
export const toBeSewn = ({ turnedDart: _, ...draft }: Draft): Draft => ({
  ...draft,
  blocks: draft.blocks && { front: bare(draft.blocks.front), back: bare(draft.blocks.back) },
  nodes: [],
  proof: { ledger: draft.proof.ledger, seams: [], closedDarts: [], edges: [] },
  ...(draft.halves
    ? { halves: { left: toBeSewn(draft.halves.left), right: toBeSewn(draft.halves.right) } }
    : {}),
});

const bare = (block: Block): Block => ({ ...block, wedges: [], upper: null });
