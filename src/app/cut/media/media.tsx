// The three things a pattern is printed on, each as a drawing of what will come and a card to choose and print with.

import { useMemo, useState } from 'react';
import type { Unit } from '../../../document';
import {
  checkPaper,
  gridSideMm,
  isProjectorChoice,
  layOut,
  layOutOnePage,
  type PlanInput,
  planProjected,
  sheetName,
} from '../../../paper';
import { fileName } from '../../components/fileName';
import { correctionOf, paperFor, useCutChoices } from '../choices/cutChoices';
import { refusalOf } from '../choices/usePlanInput';
import { PrintFrame, type Surroundings } from '../print/PrintFrame';
import { usePrint } from '../print/usePrint';
import { PageDrawing } from './PageDrawing';
import { PageForm } from './PageForm';
import { ProjectorForm } from './ProjectorForm';
import { SheetsDrawing } from './SheetsDrawing';
import { SheetsForm } from './SheetsForm';

interface MediumProps extends Surroundings {
  readonly input: PlanInput;
  readonly unit: Unit;
}

const nameOf = ({ client, savedDraft }: PlanInput): string => fileName(client.name, savedDraft.name);

export function OnSheets({ input: plan, unit, ...around }: MediumProps) {
  const choices = useCutChoices();
  const printing = usePrint();
  const { paperName, paper: chosen } = choices;
  const paper = useMemo(() => paperFor({ paperName, paper: chosen }, unit), [paperName, chosen, unit]);
  const correction = correctionOf(choices);
  const [across, down] = [correction?.across ?? 1, correction?.down ?? 1];
  const layout = useMemo(() => {
    const factors = { across, down };
    return checkPaper(paper, factors).ok ? layOut({ ...plan, paper, correction: factors }) : null;
  }, [plan, paper, across, down]);
  // What is left out is left out of these sheets: where others come, all are printed again.
  const sheets = layout?.sheets.map(sheetName) ?? [];
  const these = sheets.join(' ');
  const [left, setLeft] = useState<{ of: string; names: readonly string[] }>({ of: '', names: [] });
  const leftOut = left.of === these ? left.names : [];
  const toggle = (name: string): void =>
    setLeft({
      of: these,
      names: leftOut.includes(name)
        ? leftOut.filter((each) => each !== name)
        : sheets.filter((each) => each === name || leftOut.includes(each)),
    });
  const drawn = layout !== null && layout.panels.length > 0;
  return (
    <PrintFrame
      {...around}
      drawing={drawn ? <SheetsDrawing layout={layout} leftOut={leftOut} onToggle={toggle} /> : null}
      printing={printing}
      refusal={refusalOf(plan)}
      ready={drawn && leftOut.length < sheets.length}
      onPrint={() =>
        printing.print(
          { kind: 'sheets', input: { ...plan, paper, leftOut, ...(correction && { correction }) } },
          `${nameOf(plan)}.pdf`,
        )
      }
    >
      <SheetsForm paper={paper} unit={unit} layout={layout} leftOut={leftOut.length} />
      {leftOut.length > 0 ? (
        <button type="button" className="quiet" onClick={() => setLeft({ of: these, names: [] })}>
          Print all sheets again
        </button>
      ) : sheets.length > 1 ? (
        <p className="hint">A sheet that is not wanted is left out by a press on it.</p>
      ) : null}
    </PrintFrame>
  );
}

export function OnPage({ input, unit, ...around }: MediumProps) {
  const choices = useCutChoices();
  const printing = usePrint();
  const { page } = choices;
  const correction = correctionOf(choices);
  const [across, down] = [correction?.across ?? 1, correction?.down ?? 1];
  const laid = useMemo(() => layOutOnePage(input, page, { across, down }), [input, page, across, down]);
  return (
    <PrintFrame
      {...around}
      drawing={laid.ok && laid.page.panels.length > 0 ? <PageDrawing {...laid.page} /> : null}
      printing={printing}
      refusal={refusalOf(input)}
      ready={laid.ok}
      onPrint={() =>
        printing.print({ kind: 'page', input, choice: page, correction }, `${nameOf(input)}-one-page.pdf`)
      }
    >
      <PageForm laid={laid} unit={unit} />
    </PrintFrame>
  );
}

export function OnProjector({ input, unit, ...around }: MediumProps) {
  const { projector } = useCutChoices();
  const printing = usePrint();
  const ready = isProjectorChoice(projector);
  const plan = useMemo(() => (ready ? planProjected(input, projector) : null), [input, projector, ready]);
  return (
    <PrintFrame
      {...around}
      drawing={
        plan && plan.panels.length > 0 ? (
          <PageDrawing {...plan} gridMm={gridSideMm(unit)} lineMm={projector.lineMm} />
        ) : null
      }
      printing={printing}
      refusal={refusalOf(input)}
      ready={ready}
      onPrint={() =>
        printing.print({ kind: 'projector', input, choice: projector }, `${nameOf(input)}-projector.pdf`)
      }
    >
      <ProjectorForm unit={unit} />
    </PrintFrame>
  );
}
