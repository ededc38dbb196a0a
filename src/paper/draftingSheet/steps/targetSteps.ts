// The first steps: the lines of the draft, and what each half must measure along them.

import type { PlanInput } from '../../layout/planInput';
import type { DraftingStep } from '../elements/draftingStep';
import { startDrawing } from '../elements/figure';
import { heightsOf, linesOf } from '../elements/heights';
import type { SheetLengths } from '../elements/sheetLengths';

const BOTH = ['front', 'back'] as const;

export function targetSteps(input: PlanInput, lengths: SheetLengths): DraftingStep[] {
  return [linesStep(input, lengths), targetsStep(input, lengths)];
}

function linesStep({ draft }: PlanInput, lengths: SheetLengths): DraftingStep {
  const lines = linesOf(draft, lengths);
  const heights = heightsOf(draft, lengths);
  const drawing = startDrawing(draft, heights, BOTH, true);
  for (const { y } of lines)
    for (const block of BOTH) {
      const width = draft.blocks?.[block].sideSeam.xs.reduce((most, x) => Math.max(most, x), 0) ?? 0;
      drawing.line(block, 'drawn', [
        { x: 0, y },
        { x: width, y },
      ]);
      if (block === 'front') drawing.label(block, lengths.text(y), { x: -4, y }, 'end');
    }
  return {
    heading: 'Centre lines and levels',
    sentences: [
      'Draw the centre front upright at the left of the paper and the centre back upright at the right, far enough apart for both blocks. Square the shoulder level across the top of both.',
      'Measure down both centre lines from the shoulder level and square a line across at each of these heights.',
      ...(heights.length > lines.length
        ? ['Draw the guides lightly: they only keep the curves true where lines lie far apart.']
        : []),
    ],
    tables: [
      {
        columns: ['Line', 'Below the shoulder level'],
        rows: heights.map(({ name, y }) => [name, lengths.text(y)]),
      },
    ],
    figure: drawing.done(),
  };
}

function targetsStep({ draft }: PlanInput, lengths: SheetLengths): DraftingStep {
  const used = new Set(linesOf(draft, lengths).map(({ level }) => level));
  const levels = draft.levels.filter(({ name }) => used.has(name));
  const names = new Map(linesOf(draft, lengths).map(({ level, name }) => [level, name]));
  const drawing = startDrawing(draft, heightsOf(draft, lengths), BOTH, true);
  for (const { y, net } of levels)
    for (const block of BOTH) {
      drawing.line(block, 'drawn', [
        { x: 0, y },
        { x: net[block], y },
      ]);
      drawing.label(block, lengths.text(net[block]), { x: net[block] / 2, y: y - 3 }, 'middle');
    }
  const gaps = levels.map(({ bodyGirth, ease, net }) => (bodyGirth + ease) / 2 - net.front - net.back);
  const gap = Math.max(0, ...gaps);
  return {
    heading: 'What each half must measure',
    sentences: [
      'Add the ease to the body’s girth (a minus draws in) and halve the sum: the half body. The front takes its share of it, the back the rest.',
      ...(gap > lengths.divisionMm / 2
        ? [
            `${lengths.text(gap)} ${lengths.unit}, half of the lacing gap, is already taken off; what stands here is the width of the cloth, closed.`,
          ]
        : []),
    ],
    tables: [
      {
        columns: ['Level', 'Body', 'Ease', 'Half', 'Front’s share', 'Front', 'Back'],
        rows: levels.map(({ name, bodyGirth, ease, net, frontShare }) => [
          names.get(name) ?? name,
          lengths.text(bodyGirth),
          signed(ease, lengths),
          lengths.text((bodyGirth + ease) / 2),
          `${Math.round(frontShare * 1000) / 10} %`,
          lengths.text(net.front),
          lengths.text(net.back),
        ]),
      },
    ],
    figure: drawing.done(),
  };
}

const signed = (mm: number, lengths: SheetLengths): string =>
  lengths.round(mm) > 0 ? `+${lengths.text(mm)}` : lengths.text(mm);
