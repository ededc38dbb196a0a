// The cloth of each layer and the plans that were made. They are remembered while the page is open.

import { create } from 'zustand';
import { inches, type Piece } from '../../../engine';
import { CLOTH_SPANS, type Cloth, type LayPlan, OPEN_CLOTH } from '../../../paper';

export const LAYERS = ['fashion', 'strength', 'lining'] as const;
export type LayerName = (typeof LAYERS)[number];

export interface LayerCloth extends Cloth {
  /** Straps lie at 45°. */
  readonly biasStraps: boolean;
  /** Of a yard or a metre, by the client's unit; null where none was given. */
  readonly price: number | null;
}

/** A plan with what it was made from, to tell whether that has changed since. */
export interface MadePlan {
  readonly plan: LayPlan;
  readonly pieces: readonly Piece[];
  readonly cloth: LayerCloth;
}

interface LayChoices {
  readonly layer: LayerName;
  readonly cloths: Readonly<Record<LayerName, LayerCloth>>;
  /** By draft and layer. */
  readonly plans: ReadonlyMap<string, MadePlan>;
}

const USUAL: LayerCloth = {
  ...OPEN_CLOTH,
  widthMm: 1120,
  gapMm: inches(1 / 4),
  biasStraps: false,
  price: null,
};

export const useLayChoices = create<LayChoices>()(() => ({
  layer: 'fashion',
  cloths: { fashion: USUAL, strength: USUAL, lining: USUAL },
  plans: new Map(),
}));

const { setState: set } = useLayChoices;

export const chooseLayer = (layer: LayerName): void => set({ layer });

/** Changes the cloth of the layer in hand. */
export const changeCloth = (change: Partial<LayerCloth>): void =>
  set(({ layer, cloths }) => ({ cloths: { ...cloths, [layer]: { ...cloths[layer], ...change } } }));

export const keepPlan = (key: string, made: MadePlan): void =>
  set(({ plans }) => ({ plans: new Map(plans).set(key, made) }));

export const isOld = (made: MadePlan, pieces: readonly Piece[], cloth: LayerCloth): boolean =>
  JSON.stringify([made.pieces, { ...made.cloth, price: null }]) !==
  JSON.stringify([pieces, { ...cloth, price: null }]);

/** Which number of a cloth is outside its span; null where none is. */
export function outsideSpan(cloth: Cloth): 'width' | 'gap' | 'shrinkage' | null {
  const isWithin = (name: keyof typeof CLOTH_SPANS): boolean =>
    cloth[name] >= CLOTH_SPANS[name][0] && cloth[name] <= CLOTH_SPANS[name][1];
  if (!isWithin('widthMm')) return 'width';
  if (!isWithin('gapMm')) return 'gap';
  return isWithin('shrinkAlong') && isWithin('shrinkAcross') ? null : 'shrinkage';
}
