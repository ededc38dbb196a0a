// The places of top edge and hem by name.

import type { EdgeNodeName } from '../../../engine';
import { catalogue } from '../catalogue';

/** The places where top edge and hem are given a height. */
export const EDGE_NODE_WORDS: Readonly<Record<EdgeNodeName, string>> = catalogue({
  centreFront: 'centre front',
  bustLine: 'the bust line',
  sideFront: 'side-front',
  underarm: 'the underarm',
  sideBack: 'side-back',
  centreBack: 'centre back',
});
