// What each step of the history is called, beside "Undo:" and as it is said aloud.

import type { Alteration } from '../../../engine';
import type { Change, ChangeCode, ChangeOf } from '../../model/change';
import { catalogue, plural } from '../catalogue';
import { EDGE_NODE_WORDS } from '../words/edgeNodes';
import { inSentence } from '../words/inSentence';
import { LEVEL_WORDS } from '../words/levels';
import { MEASUREMENT_WORDS } from '../words/measurements';
import { wedgePhrase } from '../words/wedges';

/** The name of a change; it begins small, for it stands behind a word of the button's. */
export function changeSentence(change: Change): string {
  const sentence = SENTENCES[change.code] as (change: Change) => string;
  return sentence(change);
}

const SENTENCES: { readonly [Code in ChangeCode]: (change: ChangeOf<Code>) => string } = catalogue({
  passingChangeKept: () => 'last change',
  backupRestored: () => 'restored a backup',
  unitSet: () => 'unit',

  clientAdded: () => 'new client',
  clientRenamed: () => 'client’s name',
  clientOpened: ({ name }) => `opened ${name}`,
  clientCopied: ({ name }) => `copied ${name}`,
  clientArchived: ({ name }) => `archived ${name}`,
  clientBroughtBack: ({ name }) => `took ${name} from the archive`,
  clientRemoved: ({ name }) => `took out ${name}`,

  draftAdded: () => 'new draft',
  draftRenamed: () => 'draft’s name',
  draftOpened: ({ name }) => `opened ${name}`,
  draftCopied: ({ name }) => `copied ${name}`,
  draftRemoved: ({ name }) => `took off ${name}`,
  comparisonNamed: () => 'named what it is compared with',
  comparisonSaved: () => 'saved the draft to compare with',
  newRulesRead: () => 'read what new rules of drafting changed',
  cautionAcknowledged: () => 'acknowledged the caution',

  styleLaid: ({ title }) => `style ${title}`,
  styleKept: ({ title }) => `kept the style ${title}`,
  styleRead: ({ title }) => `read the style ${title}`,
  styleRemoved: ({ title }) => `took out ${title}`,
  styleRenamed: () => 'style’s name',

  measurementSet: ({ measurement }) => inSentence(MEASUREMENT_WORDS[measurement].label),
  estimateTaken: ({ measurement }) => `estimated ${inSentence(MEASUREMENT_WORDS[measurement].label)}`,
  readingSet: ({ measurement, which }) => {
    const label = inSentence(MEASUREMENT_WORDS[measurement].label);
    return which === 1 ? `second reading of ${label}` : `third reading of ${label}`;
  },
  numbersPasted: ({ count }) => plural(count, { one: 'one number pasted', other: `${count} numbers pasted` }),
  clientsRead: ({ count }) =>
    plural(count, { one: 'one client from a file', other: `${count} clients from a file` }),
  measuringDaySet: () => 'day of measuring',
  measurementSetBegun: () => 'new set of measurements',
  sidesSet: ({ differing }) => (differing ? 'sides that differ' : 'sides that are alike'),
  leftHalfSet: ({ level }) => `left half at the ${LEVEL_WORDS[level]}`,
  rightLowerSet: ({ level }) => `right ${LEVEL_WORDS[level]} line lower by`,

  garmentLengthSet: ({ field }) =>
    ({ topAbove: 'top edge', hemBelow: 'hem', 'closure.lacingGap': 'lacing gap' })[field],
  centreSet: ({ block }) => (block === 'front' ? 'centre front' : 'centre back'),
  sidePanelSet: ({ joined }) => (joined ? 'side panel cut in one' : 'side seam'),
  sideZipSet: ({ zipped }) => (zipped ? 'zip in the side seam' : 'side seam without a zip'),
  rightWedgesSet: ({ own }) => (own ? 'wedges of the right’s own' : 'the same wedges left and right'),
  easeSet: ({ level }) => `ease at the ${LEVEL_WORDS[level]}`,
  panelWidthSet: ({ level }) => `width of a panel at the ${LEVEL_WORDS[level]}`,

  frontShareSet: ({ level }) => `front’s part of the ${LEVEL_WORDS[level]}`,

  topLineSet: () => 'top edge’s line',
  topEdgeMoved: ({ from }) => `top edge above the ${LEVEL_WORDS[from]} line`,
  hemMoved: () => 'hem below the waist line',
  edgeShapeSet: ({ edge }) => (edge === 'top' ? 'top edge’s shape' : 'hem’s shape'),
  edgeNodeSet: ({ edge, node }) =>
    edge === 'top' ? `top edge at ${EDGE_NODE_WORDS[node]}` : `hem at ${EDGE_NODE_WORDS[node]}`,

  shouldersSet: ({ kind }) =>
    ({ strapless: 'strapless', shoulders: 'shoulders', band: 'off-shoulder band' })[kind],
  shoulderNumberSet: ({ number }) =>
    ({
      drop: 'shoulder drop',
      armholeIn: 'armhole inwards',
      ease: 'ease of the back shoulder',
      rise: 'neck point above the nape',
      'intake.front': 'front wedge at mid-shoulder',
      'intake.back': 'back wedge at mid-shoulder',
      bandAbove: 'band height',
    })[number],
  dartsBelowShoulders: () => 'darts below the shoulders',

  extraSet: ({ extra }) =>
    ({ modesty: 'modesty panel', facing: 'facings', straps: 'straps', sleeve: 'sleeves' })[extra],
  extraLengthSet: ({ path }) =>
    ({
      'extras.modesty.overlap': 'overlap',
      'extras.facing.width': 'facing width',
      'extras.sleeve.depth': 'sleeve depth',
      'extras.sleeve.ease': 'ease of the sleeve',
      'extras.sleeve.gathered': 'gathered in at the sleeve',
      'extras.sleeve.joined': 'sleeve sewn to the top edge',
      'extras.straps.length': 'strap length',
      'extras.straps.width': 'strap width',
    })[path],
  allowanceSet: ({ edge }) =>
    ({
      seam: 'allowance, seams',
      side: 'allowance, side seam',
      top: 'allowance, top edge',
      centre: 'allowance, centre edges',
      hem: 'allowance, hem',
      armhole: 'allowance, armhole',
      neckline: 'allowance, neckline',
    })[edge],
  turnedHemSet: ({ turned }) => (turned ? 'hem turned up' : 'hem not turned up'),

  fittingAdded: () => 'new fitting',
  fittingRemoved: () => 'took off a fitting',
  fittingDated: () => 'day of a fitting',
  fittingNoted: () => 'note of a fitting',
  fittingSwitched: ({ on }) => (on ? 'switched a fitting on' : 'switched a fitting off'),
  fittingsCarriedOver: () => 'carried fittings over',
  alterationAdded: ({ kind }) => `alteration of ${ALTERED[kind]}`,
  alterationSet: ({ kind }) => `changed an alteration of ${ALTERED[kind]}`,
  alterationRemoved: ({ kind }) => `took off an alteration of ${ALTERED[kind]}`,
  alterationSwitched: ({ kind, on }) =>
    on ? `switched an alteration of ${ALTERED[kind]} on` : `switched an alteration of ${ALTERED[kind]} off`,
  draftNoted: ({ note }) =>
    ({
      cloth: 'note of the cloth',
      event: 'note of the event',
      heel: 'note of the heel',
      bra: 'note of the bra',
    })[note],

  wedgeAdded: ({ block }) => (block === 'front' ? 'added a front wedge' : 'added a back wedge'),
  wedgeRemoved: ({ wedge }) => `took off the ${wedgePhrase(wedge)}`,
  wedgeMoved: ({ wedge }) => `${wedgePhrase(wedge)}: distance from the centre line`,
  upperEndSet: ({ wedge }) => `${wedgePhrase(wedge)}: where it ends above`,
  wedgeLocked: () => 'locked a wedge',
  wedgeBalanced: () => 'balanced a wedge',
  allBalanced: () => 'balance',
  intakeSet: ({ level }) => `intake at the ${LEVEL_WORDS[level]}`,
  intakePulled: ({ wedge, level }) => `${wedgePhrase(wedge)}: intake at the ${LEVEL_WORDS[level]}`,
  intakeTurned: ({ wedge }) => `turned intake of the ${wedgePhrase(wedge)}`,
  cupSet: () => 'fullness of the cup',
  axisSet: ({ level }) => `axis at the ${LEVEL_WORDS[level]}`,
  axisBent: ({ wedge, level }) =>
    `${wedgePhrase(wedge)}: axis from the centre line at the ${LEVEL_WORDS[level]}`,
  axisStraightened: () => 'straightened an axis',
  wedgeEndsSet: ({ wedge, ends }) =>
    ({
      through: `${wedgePhrase(wedge)} through`,
      openAtHem: `${wedgePhrase(wedge)} open at the hem`,
      openAtTop: `${wedgePhrase(wedge)} open at the top edge`,
      closed: `${wedgePhrase(wedge)} closed`,
    })[ends],
  dartPointSet: ({ wedge, end }) => `${end} point of the ${wedgePhrase(wedge)}`,
  dartPointPulled: ({ wedge, end }) => `${wedgePhrase(wedge)}, ${end} point`,
  dartSlanted: ({ wedge, end }) => `${wedgePhrase(wedge)}, ${end} point: distance from the centre line`,
});

/** What an alteration alters. */
const ALTERED = catalogue({
  seam: 'a seam',
  length: 'a length',
  edge: 'an edge',
  bustPoint: 'the bust point',
}) satisfies Record<Alteration['kind'], string>;
