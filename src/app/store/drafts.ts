// The drafts in view, each drawn once. What only needs to know what a draft says, and not at once, takes `laterIssues.ts`: the
// engine is fetched after the first step is on the screen.

import { useContext } from 'react';
import { alterationsOf, type Client, openClient, openDraftOf, type SavedDraft } from '../../document';
import { type Alteration, type Draft, draftWhole, halfOf, type Side, type Style } from '../../engine';
import { SideContext } from './sideContext';
import { useOpen, useStore } from './storeHooks';

/** The draft in view, computed once for each state of tape and style; on the Draft step, the half of it that is shown. */
export function useDraft(): Draft {
  const { client, savedDraft } = useOpen();
  const side = useContext(SideContext);
  return draftOfSide(client, savedDraft, side);
}

/** The draft of what was last kept, without the change under way. */
export function useCommittedDraft(): Draft {
  const book = useStore((state) => state.history.present);
  const side = useContext(SideContext);
  const client = openClient(book);
  return draftOfSide(client, openDraftOf(client), side);
}

/** A body drafted in a style and altered as its fittings ask: one half of it, or (null) both at once. */
export function draftOfSide(body: Body, asked: Asked, side: Side | null): Draft {
  const whole = draftOnce(body, asked);
  if (!side || !whole.halves) return whole;
  const known = halves.get(whole)?.[side];
  const half = known ?? halfOf(whole, side);
  if (!known) halves.set(whole, { ...halves.get(whole), [side]: half });
  return half;
}

const halves = new WeakMap<Draft, { readonly [side in Side]?: Draft }>();

type Body = Pick<Client, 'measurements' | 'sides'>;

/** A style and the fittings laid on it; none where they are left out. */
type Asked = Pick<SavedDraft, 'style'> & Partial<Pick<SavedDraft, 'fittings'>>;

interface Drafted {
  readonly body: Body;
  readonly style: Style;
  readonly altered: readonly Alteration[];
  readonly draft: Draft;
}

/** As kept, as seen, as seen by what lags behind, as about to be seen, and the same as before the last alteration. */
const MOST_REMEMBERED = 5;
let remembered: readonly Drafted[] = [];

/** A draft, remembered while it is one of the last that were asked for. */
export function draftOnce(body: Body, { style, fittings = [] }: Asked): Draft {
  const { measurements, sides } = body;
  const altered = alterationsOf(fittings);
  const known = remembered.find(
    (each) =>
      each.body.measurements === measurements &&
      each.body.sides === sides &&
      each.style === style &&
      sameItems(each.altered, altered),
  );
  const found = known ?? {
    body,
    style,
    altered,
    draft: draftWhole(measurements, style, sides ?? null, altered),
  };
  if (remembered[0] !== found)
    remembered = [found, ...remembered.filter((each) => each !== found)].slice(0, MOST_REMEMBERED);
  return found.draft;
}

const sameItems = (one: readonly Alteration[], other: readonly Alteration[]): boolean =>
  one.length === other.length && one.every((each, i) => each === other[i]);
