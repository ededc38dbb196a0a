// The words of the drawing and of the proofs, as the app uses them; each means one thing.

import { catalogue } from '../catalogue';

interface Entry {
  readonly word: string;
  readonly meaning: string;
}

export const GLOSSARY: readonly Entry[] = catalogue([
  {
    word: 'Level',
    meaning:
      'A horizontal line of the draft at which the body has a girth: over-bust, bust, under-bust, waist, high hip (where it was measured), hip.',
  },
  {
    word: 'Ease',
    meaning:
      'What the sewn garment measures more (+) or less (−) than the body at a level. A waist reduction is a negative ease.',
  },
  { word: 'Lacing gap', meaning: 'The width that is left open at a laced centre.' },
  { word: 'Block', meaning: 'The front half or the back half of the draft, before it is cut apart.' },
  {
    word: 'Wedge (dart)',
    meaning:
      'Cloth taken out between two legs. One that runs from top edge to hem parts two panels; one that ends inside a panel is a dart.',
  },
  { word: 'Leg', meaning: 'One of the two edges of a wedge. They are sewn to each other.' },
  { word: 'Axis', meaning: 'The line midway between the legs of a wedge.' },
  {
    word: 'Intake',
    meaning: 'The width of a wedge at a level. Less than nothing adds cloth there, as for a spring hem.',
  },
  {
    word: 'Station',
    meaning:
      'Where a wedge stands: from the centre line past the bust-point line to the side seam. One that you put by hand stays at its distance from the body’s centre.',
  },
  {
    word: 'Distance from centre',
    meaning:
      'Measured from the middle of the body, front or back, along the level. Where the centre is laced, half the gap is counted in, though no cloth lies there.',
  },
  {
    word: 'Balanced, by hand',
    meaning:
      'A balanced wedge takes what the girths ask of it and follows them. One by hand keeps the numbers that you gave it, and the others balance round it.',
  },
  { word: 'Side seam', meaning: 'Where front and back meet. It takes what the wedges leave.' },
  {
    word: 'Spring',
    meaning: 'What is let out below the waist, at each seam as much as the body grows there.',
  },
  { word: 'Panel', meaning: 'What lies between two wedges that run from top edge to hem.' },
  { word: 'Seam', meaning: 'Two edges that are sewn together; each is the other’s mate.' },
  {
    word: 'Truing',
    meaning: 'Making mates equal in length, and the edges run smoothly across the seams that they cross.',
  },
  {
    word: 'Sewn girth',
    meaning:
      'What the tape reads round the finished, closed garment at a level; it is called laced where a gap is left open.',
  },
  { word: 'Balance mark', meaning: 'A mark on a seam that meets the same mark on its mate. Notch it.' },
  { word: 'Drill mark', meaning: 'A mark inside a panel, a little short of the point of a dart.' },
  {
    word: 'Sew line, cut line',
    meaning: 'The outline of a panel without and with its seam allowances.',
  },
  { word: 'Grain', meaning: 'The direction of the warp; it stands upright at the waist line.' },
  { word: 'Busk', meaning: 'The two steels of a front that opens. They need a straight edge.' },
  { word: 'Facing', meaning: 'The strip that finishes an edge inside.' },
  { word: 'Modesty panel', meaning: 'What lies behind the lacing and covers the gap.' },
]);
