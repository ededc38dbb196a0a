/** The nine numbers that a draft needs of a client, as one types them in inches, in the order of the fields. */
export const NINE_NUMBERS = {
  bust: '37',
  underBust: '31 3/4',
  waist: '29 1/2',
  hip: '40',
  neckToBust: '10 3/4',
  neckToUnderBust: '13 1/2',
  neckToWaist: '16',
  neckToHip: '24',
  bustPointWidth: '7 1/4',
} as const;
