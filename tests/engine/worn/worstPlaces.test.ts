// Where a worst place is mended: at a level that the garment reaches, or that its cloth runs towards.

import { describe, expect, it } from 'vitest';
import { type FitFigures, worstPlaces } from '../../../src/engine';

const LEVELS = [
  { name: 'overBust', y: 220 },
  { name: 'bust', y: 273 },
  { name: 'underBust', y: 343 },
  { name: 'waist', y: 406 },
  { name: 'hip', y: 610 },
] as const;

/** Nothing to see but one edge that gapes at a height on paper, mm. */
const gaping = (edge: 'top' | 'hem', y: number): FitFigures => ({
  regions: [],
  edges: [{ edge, part: 'front', gape: 20, widest: { x: 40, y } }],
  marks: [],
  ...{ standOff: 0, stretch: 0, gape: 20, rise: 0, apex: null, tapeShare: 0, girth: 0, score: 0 },
});
const levelOf = (edge: 'top' | 'hem', y: number): string | undefined =>
  worstPlaces(gaping(edge, y), LEVELS)[0]?.level;

describe('an edge that gapes is mended', () => {
  it('at the over-bust where it ends there or above', () => {
    expect(levelOf('top', 232)).toBe('overBust');
    expect(levelOf('top', 150)).toBe('overBust');
  });

  it('at the under-bust where a corset ends a little above it, or high over the waist', () => {
    expect(levelOf('top', 330)).toBe('underBust');
    expect(levelOf('top', 336)).toBe('underBust');
  });

  it('at the waist where a bodice ends there', () => {
    expect(levelOf('hem', 406)).toBe('waist');
    expect(levelOf('hem', 430)).toBe('waist');
  });

  it('at the hip where the hem lies between waist and hip, or beyond', () => {
    expect(levelOf('hem', 500)).toBe('hip');
    expect(levelOf('hem', 640)).toBe('hip');
  });
});
