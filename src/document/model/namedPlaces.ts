// How files name panels, seams and places of an alteration: "front-2", ["front-2", "front-3"], ["front-dart"], "centreBack".

import { type AlteredPlace, LANDMARKS, type PanelName, type SeamName } from '../../engine';

/** The side panel in one, as files call it. */
const SIDE_PANEL = 'side';

/** A panel by its name in a file; null for any other text. */
function readPanel(text: unknown): PanelName | null {
  if (text === SIDE_PANEL) return { kind: 'sidePanel' };
  const [, block, number] = typeof text === 'string' ? (/^(front|back)-([1-9]\d?)$/.exec(text) ?? []) : [];
  return block === 'front' || block === 'back' ? { kind: 'panel', block, number: Number(number) } : null;
}

/** A seam by its two panels, a dart by its wedge; null for anything else. */
export function readSeam(given: unknown): SeamName | null {
  if (!Array.isArray(given)) return null;
  const [first, second, third]: unknown[] = given;
  if (third !== undefined) return null;
  if (second === undefined)
    return typeof first === 'string' && first !== '' ? { kind: 'dart', wedge: first } : null;
  const [a, b] = [readPanel(first), readPanel(second)];
  return a && b ? { kind: 'seam', pieces: [a, b] } : null;
}

/** A place round the body; null for anything else. */
export function readPlace(given: unknown): AlteredPlace | null {
  const name = LANDMARKS.find((each) => each === given);
  return name ? { kind: 'landmark', name } : readSeam(given);
}

const panelWritten = (panel: PanelName): string =>
  panel.kind === 'sidePanel' ? SIDE_PANEL : `${panel.block}-${panel.number}`;

/** A place or a seam as files name it. */
export const placeWritten = (place: AlteredPlace): string | readonly string[] => {
  switch (place.kind) {
    case 'landmark':
      return place.name;
    case 'dart':
      return [place.wedge];
    case 'seam':
      return place.pieces.map(panelWritten);
  }
};
