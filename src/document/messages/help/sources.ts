// Where the rules and figures come from: the one place in which it is said.

import { catalogue } from '../catalogue';

interface SourceGroup {
  readonly title: string;
  readonly items: readonly string[];
}

export const SOURCES: readonly SourceGroup[] = catalogue([
  {
    title: 'The body',
    items: [
      'Names of measurements, where it has one: ISO 8559-1:2017, Size designation of clothes, part 1.',
      'What is usual for her other measurements, estimates, and how the hip grows round: C. C. Gordon and others, 1988 Anthropometric Survey of U.S. Army Personnel: Methods and Summary Statistics, NATICK/TR-89/044 (1989), approved for public release; 2,208 women, for the hip’s shape 1,104 of them. They were fit and mostly young, so that an unusual number is a reason to measure again and no more.',
      'How far careful readings by tape differ: ISO 20685:2010.',
      'The steps of bust girth in a computed chart of sizes: the intervals of EN 13402-3. All its other numbers follow from the survey’s means and correlations.',
      'The under-bust line lies 3 in (7.5 cm) below the bust point where it was not measured: common practice, no source.',
    ],
  },
  {
    title: 'The draft',
    items: [
      'Lines of least bending: J. M. Hyman, Accurate monotonicity preserving cubic interpolation, SIAM Journal on Scientific and Statistical Computing 4 (1983).',
      'Darts, and wedges that end in neckline, shoulder or armhole: F. N. Fritsch and J. Butland, A method for constructing local monotone piecewise cubic interpolants, in the same journal, 5 (1984).',
      'Front shares of the girths, weights of the wedges, heights of edges, allowances, necklines and shoulders: common practice or from memory, no source. Each that is a number of the style can be changed.',
    ],
  },
  {
    title: 'Making',
    items: [
      'A bone is ½ in shorter than the distance between bindings: D. H. McCunn’s book on pattern making.',
      'A bone is 3 cm shorter than its channel: a maker’s published page.',
      'Eyelets at most 3 cm apart and within 15 mm of the edge: published advice. Spiral bones are sold 4 to 15 mm wide.',
      'All other figures of the making list: common practice, no source.',
    ],
  },
]);
