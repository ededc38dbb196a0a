// The record behind a print: style, tape and girths that it was drafted from, so that it can be told later what was cut.

import {
  alterationWords,
  type Client,
  formatLength,
  LEVEL_TITLES,
  MEASUREMENT_WORDS,
  outcomesOf,
  RECORD,
  type SavedDraft,
} from '../../document';
import { type Draft, finishedCloth, type LedgerRow, type MeasurementName, openWidth } from '../../engine';

/** What a record is made from. */
interface Printed {
  readonly draft: Draft;
  readonly client: Pick<Client, 'unit' | 'measurements' | 'estimated'> & {
    readonly sides?: Client['sides'] | null;
  };
  readonly savedDraft: Pick<SavedDraft, 'style'> & Partial<Pick<SavedDraft, 'fittings'>>;
  readonly date: string;
  readonly mockup?: boolean;
  readonly mockupNumber?: number;
  readonly tapeDay?: string | null;
  /** The days of the fittings as they are printed. */
  readonly fittingDays?: readonly string[];
  readonly program?: string;
}

export interface PrintRecord {
  /** Headings with rows of two cells: what, and how much. */
  readonly parts: readonly {
    readonly heading: string;
    readonly rows: readonly (readonly [what: string, amount: string])[];
  }[];
  /** Girths level by level, as wide as `columns`. */
  readonly girths: {
    readonly heading: string;
    readonly columns: readonly string[];
    readonly rows: readonly (readonly string[])[];
  };
}

/** The record of a print, in the client's unit. */
export function recordOf(printed: Printed): PrintRecord {
  const { unit } = printed.client;
  const written = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  const altered = alterationRows(printed);
  const isAltered = printed.draft.proof.ledger.some((row) => row.alteredBy !== 0);
  const { level, body, ease, asked, alteredBy, cloth } = RECORD.girths.columns;
  return {
    parts: [
      { heading: RECORD.style.heading, rows: styleRows(printed, written) },
      { heading: RECORD.tape.heading, rows: tapeRows(printed, written) },
      ...(altered.length > 0 ? [{ heading: RECORD.fittings.heading, rows: altered }] : []),
    ],
    girths: {
      heading: RECORD.girths.heading,
      columns: isAltered ? [level, body, ease, asked, alteredBy, cloth] : [level, body, ease, asked, cloth],
      rows: printed.draft.proof.ledger.map((row) =>
        girthRow(row, openWidth(printed.savedDraft.style.closure), unit, isAltered),
      ),
    },
  };
}

type Written = (mm: number) => string;

function styleRows(
  { draft, savedDraft, date, program, mockup, mockupNumber }: Printed,
  written: Written,
): [string, string][] {
  const { style: words } = RECORD;
  const { closure, allowances } = savedDraft.style;
  const gap = openWidth(closure);
  const count = (block: 'front' | 'back'): number =>
    draft.pieces.filter((piece) => piece.kind === 'panel' && piece.block === block && piece.side !== 'right')
      .length;
  return [
    ...(program ? [[RECORD.program, program] as [string, string]] : []),
    [RECORD.printed, date],
    ...(mockup
      ? [
          [
            words.mockup,
            words.mockupOf({ number: mockupNumber ?? null, allowance: written(allowances.seam) }),
          ] as [string, string],
        ]
      : []),
    [words.panels, words.panelsOf({ front: count('front'), back: count('back') })],
    [
      words.closure,
      words.closureOf({ front: closure.front, back: closure.back, side: closure.sideZip === true }),
    ],
    [words.gap, gap > 0 ? written(gap) : words.gapNone],
    [words.reduction, reduction(draft, gap, written)],
  ];
}

/** How much narrower than the body the laced waist is, as asked for and as altered. */
function reduction({ proof }: Draft, gap: number, written: Written): string {
  const { style: words } = RECORD;
  const waist = proof.ledger.find(({ level }) => level === 'waist');
  if (!waist) return words.reductionNone;
  const said = (taken: number): string =>
    taken > 0
      ? words.reductionOf({ length: written(taken), percent: Math.round((100 * taken) / waist.bodyGirth) })
      : words.reductionNone;
  const asked = waist.bodyGirth - waist.targetGirth - gap;
  return waist.alteredBy === 0
    ? said(asked)
    : words.reductionAltered({ asked: said(asked), altered: said(asked - waist.alteredBy) });
}

function tapeRows({ draft, client, tapeDay }: Printed, written: Written): [string, string][] {
  const { measurements, estimated } = client;
  const names = Object.keys(MEASUREMENT_WORDS) as MeasurementName[];
  return [
    [RECORD.tape.taken, tapeDay ?? RECORD.tape.notWritten],
    ...names.flatMap((name): [string, string][] => {
      const mm = measurements[name];
      if (mm === null || mm === undefined) return [];
      const length = written(mm);
      return [
        [
          MEASUREMENT_WORDS[name].label,
          estimated.includes(name) ? RECORD.tape.estimated({ length }) : length,
        ],
      ];
    }),
    ...(draft.halves
      ? [[RECORD.tape.sides, client.sides ? RECORD.tape.differs : RECORD.tape.apart] as [string, string]]
      : []),
  ];
}

/** Every alteration that is switched on, by the day of its fitting; what could not be made says so. */
function alterationRows({ draft, client, savedDraft, fittingDays }: Printed): [string, string][] {
  const fittings = savedDraft.fittings ?? [];
  if (fittings.length === 0) return [];
  return outcomesOf(fittings, draft).flatMap(({ fitting, alteration, applied, code }): [string, string][] => {
    const kept = fittings[fitting]?.alterations[alteration];
    if (!kept || code === 'switchedOff') return [];
    const words = alterationWords(kept, { unit: client.unit, style: savedDraft.style });
    return [
      [
        RECORD.fittings.of({ date: fittingDays?.[fitting] ?? fittings[fitting]?.date ?? '' }),
        applied ? words : RECORD.fittings.notMade({ words }),
      ],
    ];
  });
}

function girthRow(row: LedgerRow, gap: number, unit: Client['unit'], isAltered: boolean): string[] {
  const { level, bodyGirth, ease, targetGirth, alteredBy } = row;
  const cloth = finishedCloth(row);
  const written = (mm: number, signed = false): string => formatLength(mm, unit, { withUnit: true, signed });
  return [
    LEVEL_TITLES[level],
    written(bodyGirth),
    written(ease, true),
    written(targetGirth + gap),
    ...(isAltered ? [written(alteredBy, true)] : []),
    cloth === null ? RECORD.girths.outside : written(cloth),
  ];
}
