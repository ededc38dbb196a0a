// The client that is there on the first start: invented, for trying things out.
// The scenario: a harbour town's ferry crew stages a winter ball, and its dancers want corset bodices made to measure.

import { inches, type Measurements, UNMEASURED } from '../../engine';
import { BOOK_VERSION, type Book, type Client } from '../model/book';
import { newClient } from '../model/newClient';

const DEMO_MEASUREMENTS: Measurements = {
  ...UNMEASURED,
  overBust: inches(35.5),
  bust: inches(37),
  underBust: inches(31.75),
  waist: inches(29.5),
  hip: inches(40),
  neckToBust: inches(10.75),
  neckToUnderBust: inches(13.5),
  neckToWaist: inches(16),
  neckToHip: inches(24),
  waistToHighHip: null,
  bustPointWidth: inches(7.25),
  acrossShoulder: inches(15.25),
  backNeckToWaist: inches(15.25),
  underarmToWaist: inches(7.75),
  waistToLap: inches(5.5),
  frontOverBustArc: null,
  frontBustArc: null,
  frontUnderBustArc: null,
  frontWaistArc: null,
  frontHipArc: null,
  shoulderLength: null,
  shoulderDrop: null,
  chestWidth: null,
  backWidth: null,
  upperArm: null,
};

/** Wren Abernathy, ferry pilot, dressed for the winter ball in the default style. */
export const DEMO_CLIENT: Client = {
  ...newClient({
    id: 'demo',
    name: 'Wren Abernathy',
    unit: 'in',
    draft: { id: 'demo-ball', name: 'Winter ball bodice' },
  }),
  measurements: DEMO_MEASUREMENTS,
  invented: true,
};

/** The book of a first start, but for the id of its client. */
export const DEMO_BOOK: Book = {
  version: BOOK_VERSION,
  styles: [],
  clients: [DEMO_CLIENT],
  openClient: DEMO_CLIENT.id,
};

/** The book of a first start. The invented client has an id of her own in each, because a user may make her a client. */
export const demoBook = (id: string): Book => ({
  ...DEMO_BOOK,
  clients: [{ ...DEMO_CLIENT, id }],
  openClient: id,
});
