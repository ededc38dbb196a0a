// Ready styles and the shapes of edges, by their names on the screen and on paper.

import { catalogue } from '../catalogue';

export const STYLE_TITLES = catalogue({
  default: 'Over-bust corset',
  'ball-bodice': 'Ball bodice, sweetheart and pointed',
  'bridal-bodice': 'Bridal bodice to the waist',
  'under-bust': 'Under-bust corset with a busk',
  cincher: 'Waist cincher',
  'long-line': 'Long-line corset over the hip',
  'stage-bodice': 'Stage bodice, square and high behind',
  'v-front': 'V-front bodice with a dipped hem',
  'long-line-side-panels': 'Long-line corset, side panels in one',
  'off-shoulder-bridal': 'Bridal bodice, off the shoulder',
  'princess-bodice': 'Princess bodice with shoulders, darts behind',
  'armhole-bridal': 'Bridal bodice, seamed from the armhole',
  'darted-bodice': 'Darted bodice to the waist',
  'basque-bodice': 'Basque bodice, shoulder to point',
  'hand-method': 'Hand method, a quarter and put back',
});

export const EDGE_LABELS = catalogue({
  top: {
    level: 'Level',
    sweetheart: 'Sweetheart',
    scoop: 'Scoop',
    square: 'Square',
    v: 'V',
    'high-back': 'High back',
  },
  hem: {
    level: 'Level',
    pointed: 'Pointed in front',
    dipped: 'Dipped front and back',
    arched: 'Arched over the hip',
  },
});
