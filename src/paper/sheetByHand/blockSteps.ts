// One half block by numbers: the bust-point line, each wedge leg by leg, and the side seam that puts the wedges back.

import { wedgeNameOf } from '../../document';
import { type DraftedWedge, type Side, xAt } from '../../engine';
import type { PlanInput } from '../placePanels';
import { type Drawing, startDrawing } from './figure';
import type { HandStep } from './handStep';
import { type HandHeight, heightsOf } from './heights';
import type { Tape } from './tape';

const SIDE_WORDS = { front: 'Front', back: 'Back' } as const;

export function blockSteps(input: PlanInput, side: Side, tape: Tape): HandStep[] {
  const { draft } = input;
  const block = draft.blocks?.[side];
  if (!block) return [];
  const heights = heightsOf(draft, tape);
  const onBlock = (drawn: readonly DraftedWedge[], fromShoulder = false): Drawing => {
    const drawing = startDrawing(draft, heights, [side], fromShoulder);
    for (const wedge of drawn) {
      drawing.down(side, 'done', wedge.innerLeg);
      drawing.down(side, 'done', wedge.outerLeg);
    }
    return drawing;
  };
  return [
    bustLineStep(side, block.bustLine, onBlock([], true), heights, tape),
    ...block.wedges.map((wedge, i) =>
      wedgeStep(input, side, wedge, onBlock(block.wedges.slice(0, i)), heights, tape),
    ),
    sideStep(input, side, onBlock(block.wedges), heights, tape),
  ];
}

function bustLineStep(
  side: Side,
  bustLine: number,
  drawing: Drawing,
  heights: readonly HandHeight[],
  tape: Tape,
): HandStep {
  const foot = heights[heights.length - 1]?.y ?? 0;
  drawing.line(side, 'drawn', [
    { x: bustLine, y: 0 },
    { x: bustLine, y: foot },
  ]);
  drawing.label(side, tape.said(bustLine), { x: bustLine, y: -4 }, 'middle');
  return {
    heading: `${SIDE_WORDS[side]}: the bust-point line`,
    sentences: [
      side === 'front'
        ? 'Draw an upright line at half the distance between the bust points: wedges stand in relation to it.'
        : 'Draw the same line on the back, where the bust points lie seen from behind, less half of the lacing gap.',
    ],
    tables: [{ columns: ['Line', 'From the centre line'], rows: [['Bust-point line', tape.said(bustLine)]] }],
    figure: drawing.done(),
  };
}

function wedgeStep(
  { sheet }: PlanInput,
  side: Side,
  wedge: DraftedWedge,
  drawing: Drawing,
  heights: readonly HandHeight[],
  tape: Tape,
): HandStep {
  const { axis, innerLeg, outerLeg, onCentre } = wedge;
  drawing.down(side, 'drawn', innerLeg);
  drawing.down(side, 'drawn', outerLeg);
  let overlaps = false;
  const rows = heights.map(({ name, y, level }) => {
    const [inner, outer] = [xAt(innerLeg, y), xAt(outerLeg, y)];
    overlaps ||= tape.round(outer) < tape.round(inner);
    for (const x of onCentre ? [outer] : [inner, outer]) drawing.spot(side, { x, y });
    if (level !== null) drawing.label(side, tape.said(outer - inner), { x: outer + 4, y: y - 2 }, 'start');
    const legs = onCentre ? [outer] : [xAt(axis, y), inner, outer];
    return [name, tape.said(outer - inner), ...legs.map(tape.said)];
  });
  const name = wedgeNameOf(wedge.id, sheet.style);
  return {
    heading: `${SIDE_WORDS[side]}: ${name.charAt(0).toLowerCase()}${name.slice(1)}`,
    sentences: [
      onCentre
        ? 'Mark its outer leg on each line, measured from the centre line, which is its inner leg.'
        : 'Mark its two legs on each line, measured from the centre line: half of the intake to either side of its axis.',
      'Draw each leg as one smooth curve through its marks, without a bulge between two of them; beyond the outermost mark it runs straight down or up.',
      ...(overlaps
        ? ['Where the intake is less than nothing the legs overlap: cloth is added there, not taken.']
        : []),
    ],
    tables: [
      {
        columns: onCentre
          ? ['Line', 'Intake', 'Outer leg']
          : ['Line', 'Intake', 'Axis', 'Inner leg', 'Outer leg'],
        rows,
      },
    ],
    figure: drawing.done(),
  };
}

function sideStep(
  { draft }: PlanInput,
  side: Side,
  drawing: Drawing,
  heights: readonly HandHeight[],
  tape: Tape,
): HandStep {
  const seam = draft.blocks?.[side].sideSeam;
  const rows: string[][] = [];
  if (seam) {
    drawing.down(side, 'drawn', seam);
    for (const { name, y, level } of heights) {
      const x = xAt(seam, y);
      drawing.spot(side, { x, y });
      if (level !== null) drawing.label(side, tape.said(x), { x: x + 5, y: y - 2 }, 'start');
      const net = draft.levels.find((each) => each.name === level)?.net[side];
      // The sum is made to be right on the tape: what the wedges take is the difference of what is read.
      rows.push(
        net === undefined
          ? [name, '', '', tape.said(x)]
          : [name, tape.said(net), tape.said(tape.round(x) - tape.round(net)), tape.said(x)],
      );
    }
  }
  return {
    heading: `${SIDE_WORDS[side]}: the side seam`,
    sentences: [
      'Put back what the wedges take: on each level add all intakes to the width of the closed half, and mark the side that far from the centre line. Once the wedges are sewn, the half measures what it must.',
      'Draw the side seam through the marks as one smooth curve.',
    ],
    tables: [{ columns: ['Line', 'Closed half', 'All wedges', 'Side seam from the centre line'], rows }],
    figure: drawing.done(),
  };
}
