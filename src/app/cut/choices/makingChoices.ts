// The workshop's figures for the making list. They are remembered while the page is open, and are the same for every client.

import { create } from 'zustand';
import type { Unit } from '../../../document';
import { checkMaking, type MakingSettings, usualMaking } from '../../../paper';

export interface MakingChoices {
  /** The figures as typed, which may be out of their spans; null while none was changed. */
  readonly typed: MakingSettings | null;
  /** The last figures within their spans; null while none was changed. */
  readonly settings: MakingSettings | null;
  /** Whether the list is printed behind the pattern and the eyelets are drawn on its panels. */
  readonly printed: boolean;
}

export const useMakingChoices = create<MakingChoices>()(() => ({
  typed: null,
  settings: null,
  printed: true,
}));

const { setState: set } = useMakingChoices;

/** The figures the list is computed from: before any is changed, the usual ones in round numbers of the client's unit. */
export const makingFor = ({ settings }: Pick<MakingChoices, 'settings'>, unit: Unit): MakingSettings =>
  settings ?? usualMaking(unit);

/** Changes the figures as typed, and those the list is computed from where all are within their spans. */
export const changeMaking = (unit: Unit, change: Partial<MakingSettings>): void =>
  set((choices) => {
    const typed = { ...(choices.typed ?? makingFor(choices, unit)), ...change };
    return checkMaking(typed).ok ? { typed, settings: typed } : { typed };
  });

/** Discards typed figures that are out of their spans. */
export const dropTyped = (): void => set(({ settings }) => ({ typed: settings }));

export const resetMaking = (): void => set({ typed: null, settings: null });

export const printMaking = (printed: boolean): void => set({ printed });
