// An alteration stays on the seam that was fitted when wedges are added, taken off, moved past each other or made darts.

import { describe, expect, it } from 'vitest';
import {
  addAlterations,
  addFitting,
  addWedge,
  changeFittings,
  changeStyle,
  DEMO_BOOK,
  openClient,
  openDraftOf,
  removeWedge,
  setEnds,
  setStation,
} from '../../../../src/document';
import { type Alteration, draftWhole, inches, type Style } from '../../../../src/engine';
import { at, seamOf, taken } from '../../../support/styles/alterations';

const book = (alteration: Alteration) =>
  changeFittings(DEMO_BOOK, (fittings) =>
    addAlterations(addFitting(fittings, '2026-11-26'), 0, [alteration]),
  );

const WEDGES = openDraftOf(openClient(DEMO_BOOK)).style.wedges;
/** The wedge between the panels `number` and `number + 1` of the front. */
const parting = (number: number) =>
  WEDGES.filter(({ block, station }) => block === 'front' && station > -1).sort(
    (a, b) => a.station - b.station,
  )[number - 1]?.id ?? '';

const changed = (alteration: Alteration, ...changes: ((style: Style) => Style)[]) => {
  const savedDraft = openDraftOf(openClient(changes.reduce(changeStyle, book(alteration))));
  const [kept] = savedDraft.fittings[0]?.alterations ?? [];
  if (!kept) throw new Error('the alteration is kept');
  const { measurements } = openClient(DEMO_BOOK);
  const drafted = draftWhole(measurements, savedDraft.style, null, [kept]);
  return { kept, outcome: drafted.alterations[0] };
};

const ON_SECOND = taken(seamOf('front-2', 'front-3'), [at('waist', inches(0.25), inches(0.5))]);

describe('an alteration of a seam', () => {
  it('counts on with its panels when a wedge is added before it', () => {
    const { kept, outcome } = changed(ON_SECOND, (style) => addWedge(style, 'left', 'front', -0.5));
    expect(kept).toMatchObject({ ...ON_SECOND, seam: seamOf('front-3', 'front-4') });
    expect(outcome?.applied).toBe(true);
  });

  it('counts back when the wedge before it is taken off, named either way round', () => {
    const turned = taken(seamOf('front-3', 'front-2'), [at('waist', 1, 2)]);
    expect(changed(ON_SECOND, (style) => removeWedge(style, parting(1))).kept).toMatchObject({
      seam: seamOf('front-1', 'front-2'),
    });
    expect(changed(turned, (style) => removeWedge(style, parting(1))).kept).toMatchObject({
      seam: seamOf('front-2', 'front-1'),
      at: turned.at,
    });
  });

  it('goes with its wedge past another', () => {
    const { kept } = changed(ON_SECOND, (style) => setStation(style, parting(1), 0.95));
    expect(kept).toMatchObject({ seam: seamOf('front-1', 'front-2') });
  });

  it('is kept and made nowhere else where its own wedge is taken off', () => {
    const { kept, outcome } = changed(ON_SECOND, (style) =>
      addWedge(removeWedge(style, parting(2)), 'left', 'front', 0.2),
    );
    expect(kept).toMatchObject({ seam: { kind: 'dart', wedge: parting(2) }, on: true });
    expect(outcome).toEqual({ applied: false, code: 'seamGone' });
  });

  it('is a dart’s, leg by leg, where its wedge is made a dart, and a seam’s again', () => {
    const space = { top: 200, bust: 270, waist: 400, hem: 500 };
    const close = (style: Style): Style => setEnds(style, parting(2), 'closed', space);
    const dart = { kind: 'dart', wedge: parting(2) };
    expect(changed(ON_SECOND, close).kept).toMatchObject({ ...ON_SECOND, seam: dart });
    const turned = taken(seamOf('front-3', 'front-2'), [at('waist', 1, 2)]);
    expect(changed(turned, close).kept).toMatchObject({ seam: dart, at: [at('waist', 2, 1)] });
    const opened = changed(ON_SECOND, close, (style) => setEnds(style, parting(2), 'through', space));
    expect(opened.kept).toMatchObject(ON_SECOND);
  });

  it('of the side stays there', () => {
    const side = taken(seamOf('front-3', 'back-3'), [at('waist', 1)]);
    const { kept, outcome } = changed(side, (style) => addWedge(style, 'left', 'front', -0.5));
    expect(kept).toMatchObject({ seam: seamOf('front-4', 'back-3') });
    expect(outcome?.applied).toBe(true);
  });

  it('is not touched by a change that counts no panel anew', () => {
    const before = book(ON_SECOND);
    const [was, is] = [before, changeStyle(before, (style) => ({ ...style, lacingGap: 60 }))].map(
      (each) => openDraftOf(openClient(each)).fittings,
    );
    expect(is).toBe(was);
  });
});
