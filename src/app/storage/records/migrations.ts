// The steps from earlier versions of the book, as a part of their own: they draft, and what is kept is seldom of an earlier version.

import type { Migrations } from '../../../document';

/** Enough for what is of this version. */
export const NO_STEPS: Migrations = {};

/** Rejected where they do not come. */
export const fetchSteps = async (): Promise<Migrations> => (await import('./allSteps')).MIGRATIONS;
