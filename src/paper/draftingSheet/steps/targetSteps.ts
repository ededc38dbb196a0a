// The first steps: the lines of the draft, and what each half must measure along them.

import { DRAFTING_BLOCKS, DRAFTING_SHEET } from '../../../document';
import type { PlanInput } from '../../layout/planInput';
import type { DraftingStep } from '../elements/draftingStep';
import { startDrawing } from '../elements/figure';
import { heightsOf, linesOf } from '../elements/heights';
import type { SheetLengths } from '../elements/sheetLengths';

const { levels: LEVELS, targets: TARGETS } = DRAFTING_BLOCKS;
const COLUMNS = DRAFTING_SHEET.columns;

const BOTH = ['front', 'back'] as const;

/** Two steps: the lines, then the widths along them. */
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
    heading: LEVELS.heading,
    sentences: [LEVELS.centres, LEVELS.down, ...(heights.length > lines.length ? [LEVELS.guides] : [])],
    tables: [
      {
        columns: [COLUMNS.line, COLUMNS.belowShoulder],
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
    heading: TARGETS.heading,
    sentences: [
      TARGETS.half,
      ...(gap > lengths.divisionMm / 2 ? [TARGETS.gap({ gap: lengths.text(gap), unit: lengths.unit })] : []),
    ],
    tables: [
      {
        columns: [
          COLUMNS.level,
          COLUMNS.body,
          COLUMNS.ease,
          COLUMNS.half,
          COLUMNS.frontShare,
          COLUMNS.front,
          COLUMNS.back,
        ],
        rows: levels.map(({ name, bodyGirth, ease, net, frontShare }) => [
          names.get(name) ?? name,
          lengths.text(bodyGirth),
          signed(ease, lengths),
          lengths.text((bodyGirth + ease) / 2),
          DRAFTING_SHEET.cells.share({ percent: Math.round(frontShare * 1000) / 10 }),
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
