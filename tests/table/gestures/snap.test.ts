import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT } from '../../../src/document';
import { DEFAULT_STYLE, draft, inches, stationX } from '../../../src/engine';
import { snap, snapPointsOf } from '../../../src/table/gestures/snap';
import type { Handle } from '../../../src/table/handles/handle';
import { handlesOf } from '../../../src/table/handles/handlesOf';
import { panelsBeside } from '../../../src/table/handles/panelsBeside';
import { type CanvasLayout, layOut } from '../../../src/table/layout/layOut';

const DRAFT = draft(DEMO_CLIENT.measurements, DEFAULT_STYLE);
const HANDLES = handlesOf(DRAFT, DEFAULT_STYLE, layOut(DRAFT) as CanvasLayout);
const handleOf = (id: string): Handle => HANDLES.find((each) => each.id === id) as Handle;

describe('a pulled handle', () => {
  it('rests on the grid of the unit', () => {
    expect(snap(inches(3.05), [], 3, inches(1 / 8))).toEqual({ value: inches(3), place: 'grid' });
    expect(snap(77.1, [], 3, 2)).toEqual({ value: 78, place: 'grid' });
  });

  it('rests on the nearest mark within reach before it rests on the grid', () => {
    const snapPoints = [
      { value: 80.3, place: 'mirrored' },
      { value: 81.1, place: 'bustLine' },
    ] as const;
    expect(snap(80.9, snapPoints, 2, 2)).toEqual({ value: 81.1, place: 'bustLine' });
    expect(snap(80.9, [...snapPoints].reverse(), 2, 2)).toEqual({ value: 81.1, place: 'bustLine' });
    expect(snap(80.5, snapPoints, 2, 2)).toEqual({ value: 80.3, place: 'mirrored' });
    expect(snap(80.5, [...snapPoints].reverse(), 2, 2)).toEqual({ value: 80.3, place: 'mirrored' });
    expect(snap(84, snapPoints, 2, 2)).toEqual({ value: 84, place: 'grid' });
  });

  it('is drawn to the bust-point line and across from the wedges of the other block', () => {
    const snapPoints = snapPointsOf(handleOf('axis:front-bust'), DRAFT);
    const front = DRAFT.blocks?.front;
    expect(snapPoints).toContainEqual({ value: front?.bustLine, place: 'bustLine' });
    const side = DEFAULT_STYLE.wedges.find(({ block, station }) => block === 'back' && station > 0);
    const across = stationX(side?.station ?? 0, front?.bustLine ?? 0, front?.width.get('waist') ?? 0);
    expect(snapPoints).toContainEqual({ value: across, place: 'mirrored' });
  });

  it('has no marks as a leg or an edge', () => {
    expect(snapPointsOf(handleOf('edge:hem'), DRAFT)).toEqual([]);
    expect(snapPointsOf(handleOf('leg:front-bust:waist:outer'), DRAFT)).toEqual([]);
  });
});

describe('the panels beside a handle', () => {
  const names = (id: string): (string | undefined)[] =>
    panelsBeside(handleOf(id), DRAFT).map((panel) => panel?.piece.id);

  it('are the ones on its two sides, as they lie on the table', () => {
    expect(names('axis:front-bust')).toEqual(['front-1', 'front-2']);
    expect(names('axis:back-centre')).toEqual(['back-2', 'back-1']);
  });

  it('are as wide as the ledger measures them', () => {
    const [inner] = panelsBeside(handleOf('leg:front-bust:waist:inner'), DRAFT);
    const row = DRAFT.proof.ledger.find(({ level }) => level === 'waist');
    expect(inner?.width).toBe(row?.widths['front-1']);
  });

  it('are none beside an edge of the garment', () => {
    expect(names('edge:top')).toEqual([undefined, undefined]);
  });
});
