// The cloths that were set and the plans that were made since the page was opened. What was made is also kept with its draft.

import { create } from 'zustand';
import type { KeptLay, LayCloth, LayLayer } from '../../../document';
import { inches } from '../../../engine';
import { CLOTH_SPANS, type LayPlan, OPEN_CLOTH } from '../../../paper';

/** A plan with what of it is kept. */
export interface MadePlan {
  readonly plan: LayPlan;
  readonly lay: KeptLay;
}

export interface LayChoices {
  readonly layer: LayLayer;
  /** The cloth that was last set for each layer, of whatever draft. */
  readonly last: Partial<Readonly<Record<LayLayer, LayCloth>>>;
  /** The cloths as set, and the plans as made, by draft and layer. */
  readonly cloths: ReadonlyMap<string, LayCloth>;
  readonly plans: ReadonlyMap<string, MadePlan>;
}

const USUAL: LayCloth = {
  ...OPEN_CLOTH,
  widthMm: 1120,
  gapMm: inches(1 / 4),
  layers: 1,
  price: null,
  bias: [],
  others: [],
};

export const useLayChoices = create<LayChoices>()(() => ({
  layer: 'fashion',
  last: {},
  cloths: new Map(),
  plans: new Map(),
}));

const { setState: set } = useLayChoices;

export const chooseLayer = (layer: LayLayer): void => set({ layer });

/** The cloth as it was set, else that of the plan that is kept, else the last one of the layer without what is a draft's own. */
export function clothFor(
  { cloths, last }: Pick<LayChoices, 'cloths' | 'last'>,
  key: string,
  layer: LayLayer,
  kept: KeptLay | null,
  layers: number,
): LayCloth {
  const found = cloths.get(key) ?? (kept && outsideSpan(kept.cloth) === null ? kept.cloth : null);
  return found ?? { ...(last[layer] ?? USUAL), layers, bias: [], others: [] };
}

export const setCloth = (key: string, layer: LayLayer, cloth: LayCloth): void =>
  set(({ cloths, last }) => ({
    cloths: new Map(cloths).set(key, cloth),
    last: { ...last, [layer]: cloth },
  }));

export const showPlan = (key: string, made: MadePlan): void =>
  set(({ plans }) => ({ plans: new Map(plans).set(key, made) }));

/** Whether a plan would lie otherwise on another cloth; the price does not change it. */
export const isOtherCloth = (one: LayCloth, other: LayCloth): boolean => textOf(one) !== textOf(other);

const textOf = (cloth: LayCloth): string => {
  const { widthMm, folded, nap, grainDegrees, gapMm, shrinkAlong, shrinkAcross, layers } = cloth;
  const bias = cloth.bias.map(({ of, piece }) => [of, piece]);
  const others = cloth.others.map(({ client, draft }) => [client, draft]);
  return JSON.stringify([
    [widthMm, folded, nap, grainDegrees, gapMm, shrinkAlong, shrinkAcross, layers],
    bias,
    others,
  ]);
};

/** Which number of a cloth is outside its span; null where none is. */
export function outsideSpan(cloth: LayCloth): 'width' | 'gap' | 'shrinkage' | 'layers' | null {
  const isWithin = (name: keyof typeof CLOTH_SPANS): boolean =>
    cloth[name] >= CLOTH_SPANS[name][0] && cloth[name] <= CLOTH_SPANS[name][1];
  if (!isWithin('widthMm')) return 'width';
  if (!isWithin('gapMm')) return 'gap';
  if (!isWithin('layers') || !Number.isInteger(cloth.layers)) return 'layers';
  return isWithin('shrinkAlong') && isWithin('shrinkAcross') && isWithin('grainDegrees') ? null : 'shrinkage';
}
