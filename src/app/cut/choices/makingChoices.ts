// The workshop's figures for the making list, remembered while the page is open: they belong to the workshop, not to a client.

import { create } from 'zustand';
import type { Unit } from '../../../document';
import { checkMaking, type MakingSettings, usualMaking } from '../../../paper';

export interface MakingChoices {
  /** As typed, which may be out of span; null while nothing was changed. */
  readonly typed: MakingSettings | null;
  /** The last that could be used; null while nothing was changed. */
  readonly settings: MakingSettings | null;
  /** The list goes behind the printed pattern and the eyelets onto its panels. */
  readonly printed: boolean;
}

export const useMakingChoices = create<MakingChoices>()(() => ({
  typed: null,
  settings: null,
  printed: true,
}));

const { setState: set } = useMakingChoices;

/** The figures in force: before any is changed, the usual ones in round numbers of the client's tape. */
export const makingFor = ({ settings }: Pick<MakingChoices, 'settings'>, unit: Unit): MakingSettings =>
  settings ?? usualMaking(unit);

/** Changes what was typed, and what is in force with it where it can be used. */
export const changeMaking = (unit: Unit, change: Partial<MakingSettings>): void =>
  set((choices) => {
    const typed = { ...(choices.typed ?? makingFor(choices, unit)), ...change };
    return checkMaking(typed).ok ? { typed, settings: typed } : { typed };
  });

/** Leaves aside what is typed and cannot be used. */
export const dropTyped = (): void => set(({ settings }) => ({ typed: settings }));

export const resetMaking = (): void => set({ typed: null, settings: null });

export const printMaking = (printed: boolean): void => set({ printed });
