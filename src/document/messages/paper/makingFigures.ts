// The figures that the making list goes by, as the form names them.

import { catalogue } from '../catalogue';

export const MAKING_FIGURES = catalogue({
  bindingDepth: 'Binding, depth at each end',
  bindingsSlack: 'Bone shorter than between bindings',
  channelSlack: 'Bone shorter than its channel',
  boneStep: 'Bones are sold in steps of',
  boneWidth: 'Width of a bone',
  bonesOnSeam: 'Bones on each seam',
  bonesAtCentre: 'Bones at centre front',
  bonesAtLacing: 'Bones at each lacing edge',
  buskStep: 'Busks are sold in steps of',
  eyeletSpacing: 'Eyelets apart',
  waistSpacing: 'Eyelets apart near the waist',
  waistReach: 'Near the waist: above and below it',
  eyeletInset: 'Eyelet centre from the edge',
  eyeletFlange: 'Eyelet flange, across',
  eyeletEnd: 'First and last eyelet from the end',
  laceOpening: 'Laced loosely, the edges stand apart',
  laceEnds: 'Lace for loops and knots, in all',
  bindingSpare: 'Binding to spare',
  tapeEnds: 'Waist tape for turned ends, in all',
  casingSpare: 'Casing to spare for each channel',
  fashion: 'Layers of fashion cloth',
  strength: 'Layers of strength cloth',
  lining: 'Layers of lining',
  selvedge: 'Selvedge not used, each side',
  clothSpare: 'Cloth to spare',
});
