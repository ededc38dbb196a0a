// The steps of the drafting sheet from the whole blocks to the proof, and those of the pieces beside the panels. Lengths come
// written.

import { catalogue } from '../catalogue';

interface AtSeam {
  /** The two pieces that it joins. */
  readonly seam: string;
}

interface InDart {
  readonly dart: string;
}

interface EdgeOfPiece {
  readonly piece: string;
  readonly edge: string;
}

interface Finished {
  readonly edge: string;
  /** What it is sewn to; null for nothing. */
  readonly mate: string | null;
  readonly finish: string;
}

export const DRAFTING_PANELS = catalogue({
  /** A seam by its two mates. */
  seamOf: ({ a, b }: { a: string; b: string }) => `${a} – ${b}`,
  edgeOf: ({ piece, edge }: EdgeOfPiece) => `${piece}, ${edge}`,
  truing: {
    heading: 'True the seams',
    measure:
      'Two edges that are sewn together must be equally long above and below the waist. Measure both along the curve from the waist line; where they differ, take the mean on both. That and the shape of top edge and hem move ends and balance marks off their lines by as much as stands here.',
    mark: 'Mark each on its own leg. Ends and balance marks that are not named stay on their lines.',
    allStay: 'On this draft all ends and balance marks stay on their lines.',
    upperEnd: ({ seam }: AtSeam) => `${seam}, upper end`,
    markAt: ({ seam }: AtSeam) => `${seam}, mark`,
    lowerEnd: ({ seam }: AtSeam) => `${seam}, lower end`,
  },
  shoulder: {
    heading: {
      front: 'Front: neckline, shoulder and armhole',
      back: 'Back: neckline, shoulder and armhole',
    },
    front: ({ height, neck, depth }: { height: string; neck: string; depth: string }) =>
      `The front hangs from its neck point: mark it ${height}, ${neck} from the centre line. The neckline begins ${depth} below the shoulder level at centre front.`,
    back: ({ height, neck, depth }: { height: string; neck: string; depth: string }) =>
      `The back hangs from a neck point of its own: mark it ${height}, ${neck} from the centre line. The nape, where the neckline begins at centre back, lies ${depth} below it.`,
    tipAt: ({
      long,
      falls,
      across,
      height,
    }: {
      long: string;
      falls: string;
      across: string;
      height: string;
    }) =>
      `The shoulder line is ${long} long, its wedges sewn up, and falls ${falls} to its tip; on paper the tip lies ${across} from the centre line and ${height}.`,
    armhole: ({ inward, height }: { inward: string; height: string }) =>
      `Half way down, where it lies farthest in, the armhole is ${inward} from the centre line, wedges sewn up; its base lies ${height}, and there it meets the side.`,
    height: {
      on: 'on the shoulder level',
      above: ({ length }: { length: string }) => `${length} above the shoulder level`,
      below: ({ length }: { length: string }) => `${length} below the shoulder level`,
    },
    wedgeEnd: ({
      wedge,
      edge,
      across,
      height,
      takes,
    }: {
      wedge: string;
      edge: 'neckline' | 'shoulder' | 'armhole';
      across: string;
      height: string;
      takes: string;
    }) =>
      `${wedge}: its leg nearer the centre ends in the ${edge}, ${across} from the centre line and ${height}; level with it the other leg lies ${takes} farther out. What lies beyond is turned with that leg, so that the ${edge} runs straight on across the sewn seam.`,
    parts:
      'Draw each part of the shoulder line straight, from the neck point to the inner leg of the wedge and from its outer leg on: sewn, they are one line.',
    line: 'Draw the shoulder line straight from the neck point to the tip.',
    curves:
      'Draw neckline and armhole as smooth curves through their points. Both meet the shoulder line square, so that they run on across the shoulder seam.',
    measure: 'Measure the parts of the shoulder line that are sewn together: they must be equally long.',
    measureEased: ({ ease }: { ease: string }) =>
      `Measure the parts of the shoulder line that are sewn together: in all the back’s are ${ease} longer, which is eased in.`,
    tip: ({ across, down }: { across: string; down: string }) => `${across}, ${down}`,
  },
  edges: {
    heading: 'Top edge and hem',
    hemHeading: 'Hem',
    mark: 'Mark these points on each panel, the first and the last at the ends of its legs, and draw the edge through them as one smooth curve. Sewn, it runs on across each seam without a kink, but where the design has a corner.',
  },
  darts: {
    heading: 'Darts',
    meet: 'Both legs of a dart meet in each of these points. Sewn together they must be equally long: measure both from the point, and where they differ, take the mean on both.',
    fold: 'Fold an open dart shut before its edge is cut: unfolded, the cut line rises to a peak between its legs.',
    dartOf: ({ piece, wedge }: { piece: string; wedge: string }) => `${piece}, ${wedge}`,
    upperPoint: ({ dart }: InDart) => `${dart}, upper point`,
    lowerPoint: ({ dart }: InDart) => `${dart}, lower point`,
  },
  turn: {
    heading: 'Front: turn the bust dart into the side seam',
    slash: ({ below, across, down }: { below: string; across: string; down: string }) =>
      `Mark the front’s side seam ${below} below the armhole, measured along the seam: ${across} from the centre line and ${down} below the shoulder level. Draw a straight line from there to the bust point, and cut along it up to the point.`,
    close: ({ wedge }: { wedge: string }) =>
      `Close the ${wedge} in the neckline: lay its outer leg on its inner leg, both from the bust point. What lies between the two cuts swings up in one, and the dart opens in the side seam. Neckline, shoulder and armhole keep their lengths.`,
    opens: ({ width, short, leg }: { width: string; short: string; leg: string }) =>
      `It opens ${width} at the side. Draw a line from the bust point to the middle of the opening and mark the point of the dart on it, ${short} from the bust point; draw both legs from there, ${leg} long each.`,
    fold: 'Fold the dart down before the side is cut: unfolded, the cut line rises to a peak between its legs. Mark on the back’s side seam, as far below the armhole, where the dart is closed.',
    lowerEnd: 'Dart, lower end at the side',
    upperEnd: 'Dart, upper end at the side',
    point: 'Dart, point',
    underarm: 'Side seam, upper end',
  },
  drill: {
    heading: 'Drill marks',
    mark: 'Mark where the awl goes through; it stands inside the point of the dart, so that sewing covers it.',
  },
  allowances: {
    heading: 'Cut apart and add the allowances',
    trace:
      'Trace each panel onto its own paper with its number, its balance marks and its grain line, which runs with the centre line. The cloth of the wedges falls away between the panels.',
    draw: 'Draw the cut line outside the sew line by the allowance of each edge.',
    edge: ({ edge, mate, finish }: Finished) =>
      mate === null ? `${edge}: ${finish}` : `${edge} to ${mate}: ${finish}`,
    zipped: ({ allowance, zip }: { allowance: string; zip: string }) => `${allowance}, ${zip}`,
  },
  proof: {
    heading: 'Prove it',
    measure:
      'Measure each panel from edge to edge along each level it crosses, front panels from the centre, then back panels. Together they must come to half of what the garment measures; rounding may leave a division or two of the tape.',
  },
  band: {
    draw: ({ cut }: { cut: string }) =>
      `Draw it on paper of its own, from a centre line and a shoulder level squared across it, and cut ${cut}. It is sewn to the top edge of the panels when their seams are closed.`,
    mark: 'Mark the points, draw each edge through its own as one smooth curve, and set the marks on the edge to the panels where their seams meet it.',
    edgeToPanels: 'edge to the panels',
    edgeToPanel: ({ panel }: { panel: string }) => `edge to ${panel}`,
    seam: 'Seam of the panels',
  },
  beside: {
    heading: 'Beside the panels',
    modesty:
      'Modesty panel: rule a rectangle, its length that of the laced edge, and in it a line for each laced edge, as far from the long edges as is written. Lay the panel’s laced edge along each line, from end to end of the rectangle, and trace its top edge and hem out to the long edge; between the lines the ends run straight across.',
    facing:
      'Facing: trace the laced edge from its panel with its balance marks, and from both its ends the top edge and the hem. Draw the inner edge parallel to the laced edge at the width; where the panel is narrower, top edge and hem run on straight.',
    strap: 'Straps: rule each as a rectangle; it is folded along its middle and sewn.',
    sleeve:
      'Off-shoulder sleeve: rule a rectangle, its width the upper arm, the ease over it and what is gathered in. Its short ends are sewn to each other under the arm. Mark the upper edge so far from each end as is written, and the top edge of each panel beside the side seam as far from that seam: between the marks, under the arm, the two are sewn to each other.',
    allowances:
      'The grain runs upright. Add the allowances outside: first that of the edge on the left (of a facing, the laced one), then those of the lower end, of the edge across from it and of the upper end.',
  },
});
