// What was typed and chosen for sizes and casts. It is remembered while the page is open, and is the same for every client.

import { create } from 'zustand';
import { type ChartChoice, type ChosenUses, type ColumnUse, withUse } from '../../../document';

export type Whom = 'range' | 'cast';
export type Form = 'sheets' | 'page' | 'projector' | 'svg' | 'dxf' | 'zip';

export interface SizingChoices {
  readonly whom: Whom;
  readonly source: 'chart' | 'table';
  readonly chart: ChartChoice;
  /** The tables as typed. */
  readonly text: Readonly<Record<Whom, string>>;
  /** What was said of the columns of each table. */
  readonly uses: Readonly<Record<Whom, ChosenUses>>;
  /** Names that are not to be printed. */
  readonly off: readonly string[];
  readonly form: Form;
  readonly withSheets: boolean;
}

export const useSizingChoices = create<SizingChoices>()(() => ({
  whom: 'range',
  source: 'chart',
  chart: { from: 800, to: 1100, drop: null, stature: null },
  text: { range: '', cast: '' },
  uses: { range: new Map(), cast: new Map() },
  off: [],
  form: 'sheets',
  withSheets: false,
}));

const { setState: set } = useSizingChoices;

export const chooseSizing = (choices: Partial<SizingChoices>): void => set(choices);

export const chooseChart = (change: Partial<ChartChoice>): void =>
  set(({ chart }) => ({ chart: { ...chart, ...change } }));

export const typeTable = (whom: Whom, typed: string): void =>
  set(({ text }) => ({ text: { ...text, [whom]: typed } }));

export const chooseUse = (whom: Whom, key: string, use: ColumnUse | null): void =>
  set(({ uses }) => ({ uses: { ...uses, [whom]: withUse(uses[whom], key, use) } }));

export const tick = (name: string, isOn: boolean): void =>
  set(({ off }) => ({ off: isOn ? off.filter((each) => each !== name) : [...off, name] }));
