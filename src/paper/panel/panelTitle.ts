// Places the title of a panel: its name, how often it is cut, the client and the draft.

import { PATTERN, pieceLabel } from '../../document';
import { isInside, type Piece } from '../../engine';
import { type Box, boxAround } from '../geometry/box';
import { layersOfPiece } from '../making/layers';
import { shortened, wrapped } from '../text/textWidth';
import { cleaned, settable } from '../text/writable';
import { type Candidate, LEAST_PT, type PanelNames, type PanelRoom, sideways } from './panelRoom';
import { isClear, touchesAny } from './room';
import type { PlacedText, Stroke } from './strokes';
import { boxOf, setBlock, type TextBlock, type TextLine, type TurnedBox, textsOfBlock } from './textBlock';

/** Wider names are cut off with an ellipsis; the first page has them in full. mm */
const MOST_NAME_MM = 75;
const NAME_PT = 8.5;

/** A longer line of what is cut goes on in the next one. mm */
const MOST_CUT_MM = 30;
const CUT_PT = 10.5;

const SCALES = [1, 0.9, 0.8, 0.72];

/** Clearances of the title from lines, the best first. mm */
const TITLE_CLEAR_MM = [4, 2.5, 1.6];

/** Lines of a title as they are to be set. */
interface Setting {
  readonly lines: readonly TextLine[];
  readonly scale: number;
  readonly turnRad: number;
}

/** The title inside the panel where it has room, else outside it with a leader. */
export function titleTexts(panel: PanelRoom, names: PanelNames): { texts: PlacedText[]; leaders: Stroke[] } {
  const { piece, sewn } = panel;
  const cut = PATTERN.panel.cut({
    ...piece.cut,
    rightSideUp: piece.side !== null,
    layers: names.layers ? layersOfPiece(piece, names.layers) : [],
  });
  const mockup = names.mockupOf === null ? '' : settable(PATTERN.panel.mockup(names.mockupOf));
  const lines: TextLine[] = [
    { text: pieceLabel(piece), sizePt: 16, bold: true },
    { text: mockup, sizePt: 10.5, bold: true },
    ...wrapped(cut, CUT_PT, true, MOST_CUT_MM).map((text) => ({ text, sizePt: CUT_PT, bold: true })),
    { text: onPanel(names.client), sizePt: NAME_PT, bold: false },
    { text: onPanel(names.draft), sizePt: NAME_PT, bold: false },
  ].filter((line) => line.text !== '');
  const whole = [pieceLabel(piece), mockup, cut, onPanel(names.client), onPanel(names.draft)];
  const oneLine: TextLine[] = [
    { text: whole.filter((text) => text !== '').join(' · '), sizePt: 9, bold: true },
  ];
  // A smaller title is better than one close to a line, and a close one better than a turned one.
  const upright = [...panel.larger, 1, 0.9, 0.8].map((scale): Setting => ({ lines, scale, turnRad: 0 }));
  const turned = [
    ...SCALES.map((scale): Setting => ({ lines, scale, turnRad: sideways(panel) })),
    ...[1, 0.85, LEAST_PT / 9].map((scale): Setting => ({ lines: oneLine, scale, turnRad: sideways(panel) })),
  ];
  const tries = [upright, turned].flatMap((settings) =>
    TITLE_CLEAR_MM.flatMap((clearMm) => settings.map((setting) => ({ setting, clearMm }))),
  );
  const box = boxAround(sewn);
  if (!box) return { texts: [], leaders: [] };
  // One setting is tried at several clearances, and most are never needed.
  const known = new Map<Setting, readonly Candidate[]>();
  const spotsOf = (setting: Setting): readonly Candidate[] => {
    const { lines: set, scale, turnRad } = setting;
    const found = known.get(setting) ?? spots(box, piece, setBlock(set, scale), turnRad);
    known.set(setting, found);
    return found;
  };
  for (const avoid of panel.bands.length > 0 ? [panel.bands, []] : [[]])
    for (const { setting, clearMm } of tries) {
      const found = spotsOf(setting).find(
        (each) =>
          !touchesAny(each.box, avoid) &&
          isInside(sewn, each.box.centre) &&
          isClear(panel.room, each.box, clearMm + panel.heavierMm),
      );
      if (!found) continue;
      panel.room.taken.push(found.box);
      return { texts: textsOfBlock(found.block, found.box), leaders: [] };
    }
  return leadOut(panel, oneLine);
}

const onPanel = (name: string): string => shortened(cleaned(name), NAME_PT, false, MOST_NAME_MM);

/** Candidates all over the panel; those beside the upper half of the grain line come first. */
function spots(box: Box, { grain }: Piece, block: TextBlock, turnRad: number): Candidate[] {
  const upright = turnRad === 0;
  const [width, height] = upright ? [block.widthMm, block.heightMm] : [block.heightMm, block.widthMm];
  const bestY = upright ? box.top + 0.36 * (box.bottom - box.top) : (box.top + box.bottom) / 2;
  const found: { box: TurnedBox; cost: number }[] = [];
  for (let y = box.top + height / 2 + 3; y <= box.bottom - height / 2 - 3; y += 4)
    for (const side of [1, -1])
      for (const away of [3, 5, 8, 12]) {
        const x = grain[0].x + side * (away + width / 2);
        const cost = Math.abs(y - bestY) + Math.abs(away - 5) + (side < 0 ? 6 : 0);
        found.push({ box: boxOf(block, { x, y }, turnRad), cost });
      }
  return found.sort((a, b) => a.cost - b.cost).map((each) => ({ block, box: each.box }));
}

/** Places a title that has no room inside outside the cut line, with a leader to the grain line. */
function leadOut(panel: PanelRoom, oneLine: readonly TextLine[]): { texts: PlacedText[]; leaders: Stroke[] } {
  const { piece, room } = panel;
  const box = boxAround(piece.cutLine);
  if (!box) return { texts: [], leaders: [] };
  const block = setBlock(oneLine, LEAST_PT / 9);
  const x = box.right + 1 + block.heightMm / 2;
  const middle = { x: piece.grain[0].x, y: (piece.grain[0].y + piece.grain[1].y) / 2 };
  const placed = boxOf(block, { x, y: middle.y }, sideways(panel));
  const leader = [{ x: x - block.heightMm / 2 - 0.4, y: middle.y }, middle] as const;
  room.taken.push(placed);
  room.segments.push(leader);
  return { texts: textsOfBlock(block, placed), leaders: [{ kind: 'leader', points: leader }] };
}
