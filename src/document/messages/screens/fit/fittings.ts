// Fit, Fittings: what was seen on the client, and what it changes in the draft.

import { catalogue, plural } from '../../catalogue';

interface Of {
  /** What is altered, as its line says it. */
  readonly what: string;
}

export const FITTINGS = catalogue({
  title: 'Fittings',
  intro:
    'What was pinned and marked on the mock-up, as changes of single seams, lengths and edges. Everything else stays as it is.',
  none: 'Nothing has been fitted yet.',
  printMockup: 'Print a mock-up',
  newFitting: 'New fitting',
  day: ({ day }: { day: string }) => `Fitting of ${day}`,
  /** One of several fittings of a day, counted from 1. */
  sameDay: ({ day, number }: { day: string; number: number }) => `${day}, number ${number}`,
  dayAndNote: 'Day and note',
  date: 'Day',
  note: 'Note',
  noteOf: ({ day }: { day: string }) => `Note of the fitting of ${day}`,
  dateOf: ({ day }: { day: string }) => `Day of the fitting of ${day}`,
  inForce: 'Made in the draft',
  removeFitting: 'Take off this fitting',
  removeFittingOf: ({ day }: { day: string }) => `Take off this fitting: ${day}`,
  change: 'Change',
  changeOf: ({ what }: Of) => `Change: ${what}`,
  remove: 'Take off',
  removeOf: ({ what }: Of) => `Take off: ${what}`,
  empty: 'No alteration yet: choose one below, or press a seam in the drawing, or pull its edge.',
  add: 'Add an alteration',
  kinds: {
    seam: 'Seam or dart',
    length: 'Length',
    edge: 'Edge',
    bustPoint: 'Bust point',
    gaps: 'Gaps of the lacing',
    seen: 'What do you see?',
  },
  /** A seam that was pressed, how high, and on which half where left and right are drafted apart. */
  pressed: ({ seam, height, side }: { seam: string; height: string; side: 'both' | 'left' | 'right' }) =>
    ({
      both: `${seam}, ${height}`,
      left: `${seam}, ${height}, left`,
      right: `${seam}, ${height}, right`,
    })[side],
  alterHere: 'Alter here',
  /** By how much the finished girths change, each signed and with its unit. */
  girths: ({ changes }: { changes: readonly { level: string; by: string }[] }) =>
    changes.length === 0
      ? 'No girth at a level changes.'
      : `Round the whole garment: ${changes.map(({ level, by }) => `${level} ${by}`).join(', ')}.`,
  sum: ({ count, refused }: { count: number; refused: number }) =>
    refused === 0
      ? count === 0
        ? 'No alteration is made.'
        : plural(count, { one: 'One alteration is made.', other: `${count} alterations are made.` })
      : count === 0
        ? plural(refused, {
            one: 'One alteration is not made.',
            other: `${refused} alterations are not made.`,
          })
        : `${plural(count, { one: 'One alteration is made', other: `${count} alterations are made` })}, ${plural(
            refused,
            { one: 'one is not', other: `${refused} are not` },
          )}.`,
  form: {
    newTitle: 'New alteration',
    changeTitle: 'Change the alteration',
    make: 'Make it',
    keep: 'Keep it',
    cancel: 'Cancel',
    seam: 'Seam or dart',
    gone: ({ seam }: { seam: string }) => `${seam} (not in this style)`,
    height: 'Height',
    ends: { top: 'top edge', hem: 'hem' },
    ownHeight: 'a height of its own',
    belowWaist: 'Below the waist (− for above)',
    alike: 'The same on both edges',
    onEach: 'On each edge',
    seamHint: '+ takes in, − lets out. It runs out to nothing at the next levels.',
    bothEdges: ({ length, isIn }: { length: string; isIn: boolean }) =>
      isIn ? `Both edges together: ${length} taken in.` : `Both edges together: ${length} let out.`,
    anotherHeight: 'Another height',
    removeHeight: 'Take off this height',
    heightNumber: ({ number }: { number: number }) => `Height ${number}`,
    side: 'On',
    sides: { both: 'both sides', left: 'the left only', right: 'the right only' },
    upper: 'From',
    lower: 'To',
    lengthHint: '+ shortens, − lengthens; from place to place it runs evenly.',
    roundHint: '+ shortens, − lengthens.',
    place: 'Place',
    placeNumber: ({ number }: { number: number }) => `Place ${number}`,
    by: 'By',
    allRound: 'all round',
    anotherPlace: 'Another place',
    removePlace: 'Take off this place',
    edge: 'Edge',
    edgeHint: '+ raises, − lowers; nothing at the next seam on either side.',
    out: 'Farther out from the centre',
    down: 'Farther down',
    pointHint: '− moves it in, or up.',
    /** Why it cannot be made yet. */
    nothing: 'Type an amount that is not 0.',
    unread: 'One of the amounts is wanting or cannot be read.',
    order: 'The upper one must stand first.',
  },
  gaps: {
    title: 'Gaps of the lacing, as laced',
    hint: ({ gap }: { gap: string }) =>
      `Type what you read between the laced edges; the draft asks for ${gap}. The difference is shared over the seams as the draft shares it. Leave out what you did not read.`,
    at: ({ level }: { level: string }) => `Gap at the ${level}`,
    make: 'Share over the seams',
    nothing: 'Type a gap that differs from the one asked for.',
    notLaced: 'The garment is not laced.',
    notDrafted: 'Nothing is drafted yet.',
  },
  seen: {
    title: 'What do you see?',
    what: 'Seen on the client',
    how: 'How much',
    take: 'Fill in the alteration',
    source: 'Common practice; the amount is what you pinned or measured.',
  },
  notes: {
    title: 'Notes of this draft',
    cloth: 'Cloth',
    event: 'Made for',
    heel: 'Heel',
    bra: 'Bra worn for the tape',
  },
  carry: {
    title: 'Carry over',
    from: 'Fittings of',
    take: 'Carry over into this draft',
    hint: 'Each seam is found again by where it stands on the body.',
    draft: ({ name, count }: { name: string; count: number }) =>
      `${name} (${plural(count, { one: 'one fitting', other: `${count} fittings` })})`,
  },
});
