// Drafts sewn on bodies for tests and bench: a style drafted for one body may be worn by another.

import { type Draft, draftWhole, type LevelName, type Measurements, type Style } from '../../../src/engine';
import { checkBody } from '../../../src/engine/body/body';
import { makeWornBody, type WornBody } from '../../../src/engine/worn/body/wornBody';
import { type Construction, USUAL_CLOTH } from '../../../src/engine/worn/cloth/garmentEnergy';
import { fieldsOf } from '../../../src/engine/worn/measure/fields';
import { type FitFigures, figuresOf } from '../../../src/engine/worn/measure/figures';
import { type DrapeChoice, type Draped, draping } from '../../../src/engine/worn/solve/drape';

/** What work in steps comes to. */
export function toEnd<T>(work: Generator<void, T>): T {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
  }
}

/** The body of measurements that are known to be good. */
export function bodyFor(measurements: Measurements): WornBody {
  const { body } = checkBody(measurements);
  if (!body) throw new Error('the measurements make no body');
  return makeWornBody(body);
}

export function constructionOf(drafted: Draft, { closure }: Style): Construction {
  const open = (block: 'front' | 'back') => (closure[block] === 'lacing' ? closure.lacingGap / 2 : null);
  return {
    open: { front: open('front'), back: open('back') },
    busk: closure.front === 'busk',
    waistY: heightOf(drafted, 'waist'),
    bones: true,
    cloth: USUAL_CLOTH,
  };
}

const heightOf = (drafted: Draft, name: LevelName): number | null =>
  drafted.levels.find((level) => level.name === name)?.y ?? null;

export interface Worn {
  readonly draped: Draped;
  readonly figures: FitFigures;
}

/** A style drafted for `drawn` and worn by `body`. */
export function wear(
  drawn: Measurements,
  style: Style,
  body: WornBody,
  choice: Partial<DrapeChoice> = {},
): Worn {
  const drafted = draftWhole(drawn, style);
  const draped = toEnd(
    draping(drafted.pieces, body, constructionOf(drafted, style), { width: 12, ...choice }),
  );
  return { draped, figures: figuresOf(draped, fieldsOf(draped), body, drafted) };
}
