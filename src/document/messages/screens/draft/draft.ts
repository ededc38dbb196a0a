// The cards of the Draft step: garment, edges, shoulders, pieces beside the panels, left and right, and the wearer's safety.

import type { EdgeNodeName, LevelName } from '../../../../engine';
import { catalogue, plural } from '../../catalogue';
import { EDGE_NODE_WORDS } from '../../words/edgeNodes';
import { LEVEL_WORDS } from '../../words/levels';

interface AtNode {
  readonly node: EdgeNodeName;
}

interface AtLevel {
  readonly level: LevelName;
}

export const DRAFT = catalogue({
  numbers: 'The draft’s numbers',
  inspector: {
    tabs: { wedges: 'Wedges', garment: 'Garment', edges: 'Edges', shoulders: 'Shoulders', more: 'More' },
    next: ({ step }: { step: string }) => `Next: ${step}`,
    toMend: ({ count }: { count: number }) => `${count} to mend before it can be cut`,
    sizing: ({ count, manual }: { count: number; manual: number }) =>
      manual === 0
        ? plural(count, { one: 'Its one wedge is balanced', other: `All ${count} wedges are balanced` })
        : `${manual} of ${plural(count, { one: 'one wedge', other: `${count} wedges` })} sized by hand`,
  },
  redrafted: {
    told: 'Since this draft was kept, the rules of drafting have changed: below the waist the cloth is let out round the body and not at the side, the front has the whole of the bust, the top edge follows the armpit, where front or back widens above the bust, the seams beside the side seam let out half of it, and with shoulders the seam up from the bust takes more where the girth above the bust asks for it. What was asked for before is kept to compare with; its wedges are drawn by the new rules too. With shoulders a round neckline keeps its width farther down, the side line leans less above the bust, and a seam sized by hand opens above as its intake at the over-bust line asks; where the bust is smaller than the girths above and below it, front and back share what is missing. A dart within a panel stands upright, and comes to its points straight or slimmer. The armhole of an off-shoulder band is one hollow. A top edge measured from an under-bust line that the draft goes without is measured from half way between bust and waist.',
    bandArmhole:
      'Since this draft was kept, the rule of the armhole of an off-shoulder band has changed: it is one hollow down to the corner under the arm, which on wide bodies bent back there, and on those it lies farthest in above half its height.',
    bustDart:
      'Since this draft was kept, the rule of the bust dart has changed: the seam that runs up from the bust takes at least half of what the girth above the bust asks for, so that its edges run straighter; a front that is darted from neckline, shoulder or armhole is cut narrower at the bust, and its dart is for the whole of it. A width set under Shoulders goes before the rule.',
    aboveBust:
      'Since this draft was kept, a rule of drafting has changed: where front or back widens above the bust, as towards the arms of most backs, the seams beside the side seam let out half of it, so that the side seam leans less under the arm.',
    neckAndSide:
      'Since this draft was kept, three rules of drafting have changed: a deep round neckline keeps its width farther down, and the side line, which leaned as far above the bust as the girths asked for, leans at most a third of its height there, so that the armhole ends without a hook; and a seam up from the bust that is sized by hand opens in shoulder or armhole as its intake at the over-bust line asks.',
    smallBust:
      'Since this draft was kept, a rule of drafting has changed: where the bust is smaller than the girths above and below it, front and back share what is missing, which was all taken from the front.',
    slimDarts:
      'Since this draft was kept, the rule of darts within a panel has changed: a dart that was not moved by hand stands upright at its place at the waist, comes to its points straight or slimmer, and where it would be blunt there a seam beside it takes more. Its girths are as they were.',
    topLine:
      'Since this draft was kept, a rule of drafting has changed: where the under-bust lies at the waist, below it or at the bust, the draft goes without that line, and a top edge measured from it is measured from half way between bust and waist.',
    read: 'Understood',
  },
  sideChoice: { legend: 'Side shown', left: 'Left', right: 'Right' },
  styles: {
    choose: 'A style of its own',
    opener: ({ shown }: { shown: string }) => `Style book: ${shown}`,
    changedFrom: ({ title }: { title: string }) => `Changed from ${title}`,
    own: 'Your styles',
    readyMade: 'Ready-made',
    book: 'Style book',
  },
  garment: {
    title: 'Garment',
    topEdge: 'Top edge',
    /** `under`: how far under that line its usual place is, with the unit; null at the line. */
    topEdgeHint: ({ level, under }: AtLevel & { under: string | null }) =>
      under === null
        ? `above the ${LEVEL_WORDS[level]} line`
        : `above its usual place, ${under} under the ${LEVEL_WORDS[level]} line`,
    hem: 'Hem',
    hemHint: 'below the waist line',
    lacingGap: 'Lacing gap',
    lacingGapHint: 'left open at each laced centre',
    centres: { front: 'Centre front', back: 'Centre back' },
    closures: {
      seam: 'Seam',
      fold: 'Fold',
      busk: 'Busk',
      lacing: 'Lacing',
      hooks: 'Hooks and tape',
      zip: 'Zip',
    },
    joinedSide: 'Side panel cut in one',
    joinedSideHint: 'front and back without a side seam; the seams beside it take its shaping',
    sideZip: 'Zip in the side seam',
    sideZipHint: 'the garment opens at one side, with or without the centres',
  },
  frontShares: {
    title: 'The front’s part of each girth',
    hint: 'Across the front from side seam to side seam. Empty: a measured front arc, or as usual. A measured arc goes before a number here.',
    across: ({ level }: AtLevel) => `Front at the ${LEVEL_WORDS[level]}`,
    drafted: ({ percent }: { percent: number }) => `${percent} % as drafted`,
  },
  edges: {
    title: 'Top edge and hem',
    /** Two parts of one label; only the second is seen. */
    topFrom: { unseen: 'Top edge', seen: 'measured from the' },
    levelLine: ({ level }: AtLevel) => `${LEVEL_WORDS[level]} line`,
    shouldered: 'How far neckline and armhole end above the level top edge; the shoulders set the rest.',
    free: 'Free',
    corner: 'corner',
    places: {
      centreFront: 'centre front',
      bustLine: 'bust line',
      sideFront: 'side-front',
      underarm: 'underarm',
      sideBack: 'side-back',
      centreBack: 'centre back',
    },
    topShape: {
      title: 'Top edge',
      hint: 'How far each place lies above the level top edge.',
      shape: 'Shape of the top edge',
      at: ({ node }: AtNode) => `Top edge at ${EDGE_NODE_WORDS[node]}`,
      /** Follows `corner`, unseen. */
      inEdge: ({ node }: AtNode) => `in the top edge at ${EDGE_NODE_WORDS[node]}`,
    },
    hemShape: {
      title: 'Hem',
      hint: 'How far each place lies below the level hem.',
      shape: 'Shape of the hem',
      at: ({ node }: AtNode) => `Hem at ${EDGE_NODE_WORDS[node]}`,
      inEdge: ({ node }: AtNode) => `in the hem at ${EDGE_NODE_WORDS[node]}`,
    },
  },
  extras: {
    title: 'Beside the panels',
    unlaced: 'Cut where a centre is laced; neither is now.',
    modesty: 'Modesty panel',
    modestyOverlap: 'Overlap',
    modestyOverlapHint: 'under each laced edge; its ends follow top edge and hem',
    facing: 'Facings',
    facingWidth: 'Facing width',
    facingWidthHint: 'behind each laced edge, cut to its run',
    sleeve: 'Off-shoulder sleeves',
    sleeveDepth: 'Sleeve depth',
    sleeveDepthHint: 'from its upper edge to its hem',
    sleeveEase: 'Sleeve ease',
    sleeveEaseHint: 'over the upper arm',
    sleeveGathered: 'Gathered in',
    sleeveGatheredHint: 'cut so much wider and drawn in round the arm',
    sleeveJoined: 'Sewn on',
    sleeveJoinedHint: 'along the top edge on either side of the side seam',
    straps: 'Straps',
    strapLength: 'Strap length',
    strapLengthHint: 'between the seams',
    strapWidth: 'Strap width',
    strapWidthHint: 'finished; it is cut doubled',
  },
  sides: {
    title: 'Left and right',
    ownWedges: 'The right half has wedges of its own',
    apart: 'Left and right are drafted apart and cut once each. Choose over the table which half lies on it.',
    alike: 'Both sides are alike. A body that differs left to right is written down under its measurements.',
  },
  safety: {
    title: 'The wearer’s safety',
    /** A length follows, then `afterWaist`. */
    waistTakenIn: 'The waist is taken in by',
    afterWaist: ({ percent }: { percent: string | null }) =>
      percent === null ? '.' : `, ${percent} % of the natural waist.`,
    /** A length follows, then `afterUnmeasuredWaist`. */
    unmeasuredWaistTakenIn: 'The waist is to be taken in by',
    afterUnmeasuredWaist: '; it is not measured yet.',
    waistNotTakenIn: 'The waist is not taken in.',
    /** What alterations after a fitting make of it. A length follows, then `afterWaist`. */
    waistAltered: 'With the fittings it is',
    waistAlteredAway: 'With the fittings it is not taken in.',
    howTyped:
      'It is typed as the ease at the waist, beside the table: as a length, or in per cent of the body as -7 %.',
    /** A length follows, then `afterRibs`. */
    ribsTakenIn: 'The ribs at the under-bust are taken in by',
    afterRibs: ({ percent }: { percent: string | null }) =>
      percent === null ? '.' : `, ${percent} % of the girth there.`,
    acknowledged: 'I have read the cautions and the wearer knows them. This is printed on the pattern.',
    cautions: 'Usual cautions for tight lacing',
  },
});
