// The three media a pattern is printed on, each with a drawing of the print and a form for its choices.

import { useMemo, useState } from 'react';
import { CUT, type Unit } from '../../../document';
import {
  type Correction,
  checkPaper,
  gridSideMm,
  isProjectorChoice,
  type PlanInput,
  sheetName,
} from '../../../paper';
import { fileName } from '../../components/files/fileName';
import { correctionOf, paperFor, useCutChoices } from '../choices/cutChoices';
import { refusalOf } from '../choices/usePlanInput';
import { PrintFrame, type SurroundingCards } from '../print/PrintFrame';
import { usePrint } from '../print/usePrint';
import { PageDrawing } from './PageDrawing';
import { PageForm } from './PageForm';
import { ProjectorForm } from './ProjectorForm';
import { SheetsDrawing } from './SheetsDrawing';
import { SheetsForm } from './SheetsForm';
import { usePlan } from './usePlan';

interface MediumProps extends SurroundingCards {
  readonly input: PlanInput;
  readonly unit: Unit;
}

/** Names the file of a print by client, draft, what it is of, paper, and the correction in per cent across and down. */
function printName(
  { client, savedDraft, mockup }: PlanInput,
  paper: string,
  correction?: Correction | undefined,
): string {
  const percent = (factor: number): string => (100 * factor).toFixed(1);
  const name = fileName(client.name, savedDraft.name, ...(mockup ? ['mock-up'] : []), paper);
  return correction
    ? `${name}-${percent(correction.across)}x${percent(correction.down)}-percent.pdf`
    : `${name}.pdf`;
}

/** The pattern on sheets of paper that are joined. */
export function SheetsPrint({ input, unit, ...cards }: MediumProps) {
  const choices = useCutChoices();
  const printing = usePrint();
  const { paperName, paper: chosen } = choices;
  const paper = useMemo(() => paperFor({ paperName, paper: chosen }, unit), [paperName, chosen, unit]);
  const correction = correctionOf(choices);
  const [across, down] = [correction?.across ?? 1, correction?.down ?? 1];
  const { plan, isCurrent } = usePlan(
    useMemo(
      () => ({ kind: 'sheets' as const, input, paper, correction: { across, down } }),
      [input, paper, across, down],
    ),
  );
  const { whole = null, layout = null } = plan ?? {};
  const sheets = layout?.sheets.map(sheetName) ?? [];
  // The sheets left out belong to one layout: another layout is printed whole again.
  const layoutKey = sheets.join(' ');
  const [omitted, setOmitted] = useState<{ layoutKey: string; names: readonly string[] }>({
    layoutKey: '',
    names: [],
  });
  const leftOut = isCurrent && omitted.layoutKey === layoutKey ? omitted.names : [];
  const toggle = (name: string): void =>
    setOmitted({
      layoutKey,
      names: leftOut.includes(name)
        ? leftOut.filter((each) => each !== name)
        : sheets.filter((each) => each === name || leftOut.includes(each)),
    });
  const hasPanels = layout !== null && layout.panels.length > 0;
  const drawing = whole ? (
    <PageDrawing {...whole.page} />
  ) : hasPanels ? (
    <SheetsDrawing layout={layout} leftOut={leftOut} onToggle={toggle} />
  ) : null;
  return (
    <PrintFrame
      {...cards}
      drawing={drawing}
      isBusy={!isCurrent}
      printing={printing}
      refusal={refusalOf(input)}
      isPrintable={
        isCurrent
          ? whole !== null || (hasPanels && leftOut.length < sheets.length)
          : checkPaper(paper, { across, down }).ok
      }
      onPrint={() =>
        printing.print(
          {
            kind: 'sheets',
            input: { ...input, paper, leftOut, ...(correction && { correction }) },
            layout: isCurrent ? layout : null,
          },
          printName(input, paper.name, correction),
        )
      }
    >
      <SheetsForm
        paper={paper}
        unit={unit}
        layout={layout}
        isWhole={whole !== null}
        leftOut={leftOut.length}
      />
      {leftOut.length > 0 ? (
        <button type="button" className="quiet" onClick={() => setOmitted({ layoutKey, names: [] })}>
          {CUT.sheets.printAll}
        </button>
      ) : sheets.length > 1 ? (
        <p className="hint">{CUT.sheets.leaveOutHint}</p>
      ) : null}
    </PrintFrame>
  );
}

/** The pattern on one page of a roll or a large sheet. */
export function PagePrint({ input, unit, ...cards }: MediumProps) {
  const choices = useCutChoices();
  const printing = usePrint();
  const { page } = choices;
  const correction = correctionOf(choices);
  const [across, down] = [correction?.across ?? 1, correction?.down ?? 1];
  const { plan: laid, isCurrent } = usePlan(
    useMemo(
      () => ({ kind: 'page' as const, input, choice: page, correction: { across, down } }),
      [input, page, across, down],
    ),
  );
  return (
    <PrintFrame
      {...cards}
      isBusy={!isCurrent}
      drawing={laid?.ok && laid.page.panels.length > 0 ? <PageDrawing {...laid.page} /> : null}
      printing={printing}
      refusal={refusalOf(input)}
      isPrintable={isCurrent && laid?.ok === true}
      onPrint={() =>
        printing.print(
          { kind: 'page', input, choice: page, correction },
          printName(
            input,
            choices.pageName === 'own' ? 'one page' : `one page ${choices.pageName}`,
            correction,
          ),
        )
      }
    >
      <PageForm laid={laid} unit={unit} />
    </PrintFrame>
  );
}

/** The pattern as one picture for a projector over the cutting table. */
export function ProjectorPrint({ input, unit, ...cards }: MediumProps) {
  const { projector } = useCutChoices();
  const printing = usePrint();
  const isPrintable = isProjectorChoice(projector);
  const { plan: made, isCurrent } = usePlan(
    useMemo(
      () => (isPrintable ? { kind: 'projector' as const, input, choice: projector } : null),
      [input, projector, isPrintable],
    ),
  );
  const plan = isPrintable ? made : null;
  return (
    <PrintFrame
      {...cards}
      isBusy={!isCurrent}
      drawing={
        plan && plan.panels.length > 0 ? (
          <PageDrawing {...plan} gridMm={gridSideMm(unit)} lineMm={projector.lineMm} />
        ) : null
      }
      printing={printing}
      refusal={refusalOf(input)}
      isPrintable={isPrintable}
      onPrint={() =>
        printing.print({ kind: 'projector', input, choice: projector }, printName(input, 'projector'))
      }
    >
      <ProjectorForm unit={unit} />
    </PrintFrame>
  );
}
