// The drafting sheet: what holds for all of it, its lines and columns, and the steps of a half block. Lengths come written.

import { catalogue } from '../catalogue';

const lengthsIn = (unit: string): string =>
  `All lengths in ${unit}. Each is rounded by itself, so a sum may be one division out; measure every mark from the line that is named, never from the mark before.`;

interface OfHalf {
  /** As it is written within a sentence. */
  readonly heading: string;
}

export const DRAFTING_SHEET = catalogue({
  title: 'Drafting sheet',
  nothing: 'There is nothing to draw yet.',
  figure: ({ heading }: { heading: string }) => `Figure: ${heading}`,
  sidesDiffer:
    'The two sides differ: the left half and the right half are each drafted by themselves, from girths that are twice that side’s part. Cut each panel once; a right front and a left back are traced face down.',
  ofHalf: {
    left: ({ heading }: OfHalf) => `Left half: ${heading}`,
    right: ({ heading }: OfHalf) => `Right half: ${heading}`,
  },
  lengths: {
    in: lengthsIn('inches, to the nearest 1/16'),
    cm: lengthsIn('centimetres, to the nearest millimetre'),
  },
  /** The lines at which numbers are given: `name` within a sentence, `title` to begin a line. */
  lines: {
    midShoulder: { front: 'Mid-shoulder', back: 'Mid-shoulder of the back' },
    endIn: ({ edge, height }: { edge: 'neckline' | 'shoulder' | 'armhole'; height: string }) =>
      `End in the ${edge} at ${height}`,
    top: { name: 'top line', title: 'Top line' },
    hem: { name: 'hem line', title: 'Hem line' },
    dartPoint: ({ height }: { height: string }) => `Dart point at ${height}`,
    fullerCup: 'Fuller cup',
    guide: ({ height }: { height: string }) => `Guide at ${height}`,
    bustPoint: 'Bust-point line',
    /** Two that are one. */
    both: ({ title, name }: { title: string; name: string }) => `${title}, ${name}`,
  },
  /** How a height stands to a line. */
  heights: {
    onLine: 'on the line',
    above: ({ length }: { length: string }) => `${length} above`,
    below: ({ length }: { length: string }) => `${length} below`,
  },
  columns: {
    allowance: 'Allowance',
    allowanceOfEach: 'Allowance of each edge',
    allowances: 'Allowances',
    allWedges: 'All wedges',
    axis: 'Axis',
    back: 'Back',
    backLength: 'Back’s length',
    belowShoulder: 'Below the shoulder level',
    body: 'Body',
    closedHalf: 'Closed half',
    cut: 'Cut',
    dart: 'Dart',
    ease: 'Ease',
    edge: 'Edge',
    firstMate: 'First mate',
    from: 'From the',
    fromCentre: 'From the centre line',
    front: 'Front',
    frontLength: 'Front’s length',
    frontShare: 'Front’s share',
    half: 'Half',
    innerLeg: 'Inner leg',
    intake: 'Intake',
    lacedEdge: 'Laced edge from the long edge',
    length: 'Length',
    level: 'Level',
    line: 'Line',
    mark: 'Mark',
    mustBe: 'Must be',
    outerLeg: 'Outer leg',
    panel: 'Panel',
    panels: 'Panels',
    piece: 'Piece',
    point: 'Point',
    seam: 'Seam',
    secondMate: 'Second mate',
    shoulderSeam: 'Shoulder seam',
    sideSeam: 'Side seam from the centre line',
    together: 'Together',
    width: 'Width',
  },
  cells: {
    noAllowance: 'none',
    onFold: 'on the fold',
    cutOnFold: ({ count }: { count: number }) => `${count} on the fold`,
    share: ({ percent }: { percent: number }) => `${percent} %`,
  },
});

const LEG_ENDS = {
  bothPoints: 'the two meet in both points of the dart',
  upperPoint: 'the two meet in the point of the dart, and run straight down from the lowest mark',
  lowerPoint: 'the two meet in the point of the dart, and run straight up from the highest mark',
  through: 'beyond the outermost mark it runs straight down or up',
} as const;

export type LegEnds = keyof typeof LEG_ENDS;

export const DRAFTING_BLOCKS = catalogue({
  levels: {
    heading: 'Centre lines and levels',
    centres:
      'Draw the centre front upright at the left of the paper and the centre back upright at the right, far enough apart for both blocks. Square the shoulder level across the top of both.',
    down: 'Measure down both centre lines from the shoulder level and square a line across at each of these heights.',
    guides: 'Draw the guides lightly: they only keep the curves true where lines lie far apart.',
  },
  targets: {
    heading: 'What each half must measure',
    half: 'Add the ease to the body’s girth (a minus draws in) and halve the sum: the half body. The front takes its share of it, the back the rest.',
    gap: ({ gap, unit }: { gap: string; unit: string }) =>
      `${gap} ${unit}, half of the lacing gap, is already taken off; what stands here is the width of the cloth, closed.`,
  },
  bustLine: {
    heading: { front: 'Front: the bust-point line', back: 'Back: the bust-point line' },
    draw: {
      front:
        'Draw an upright line at half the distance between the bust points: wedges stand in relation to it.',
      back: 'Draw the same line on the back, where the bust points lie seen from behind, less half of the lacing gap.',
    },
  },
  wedge: {
    heading: {
      front: ({ wedge }: { wedge: string }) => `Front: ${wedge}`,
      back: ({ wedge }: { wedge: string }) => `Back: ${wedge}`,
    },
    onCentre: 'Mark its outer leg on each line, measured from the centre line, which is its inner leg.',
    legs: 'Mark its two legs on each line, measured from the centre line: half of the intake to either side of its axis.',
    draw: ({ ends }: { ends: LegEnds }) =>
      `Draw each leg as one smooth curve through its marks, without a bulge between two of them; ${LEG_ENDS[ends]}.`,
    overlap: 'Where the intake is less than nothing the legs overlap: cloth is added there, not taken.',
  },
  sideSeam: {
    heading: { front: 'Front: the side seam', back: 'Back: the side seam' },
    putBack:
      'Put back what the wedges take: on each level add all intakes to the width of the closed half, and mark the side that far from the centre line. Once the wedges are sewn, the half measures what it must.',
    held: 'Above the armhole’s base no cloth goes round the body: a line there has no sum where the side would lean by more than a third of its height.',
    draw: 'Draw the side seam through the marks as one smooth curve; beyond the outermost mark it runs straight down or up.',
  },
});
