// A range of twelve sizes as a table of separated values: invented bodies, 4 cm of bust apart and 6 cm from 104 on.

const BUSTS = [80, 84, 88, 92, 96, 100, 104, 110, 116, 122, 128, 134];

const HEAD = [
  ...[
    'Size',
    'Bust',
    'Under-bust',
    'Waist',
    'Hip',
    'neckToBust',
    'neckToUnderBust',
    'neckToWaist',
    'neckToHip',
  ],
  'bustPointWidth',
];

const round = (cm: number): number => Math.round(cm * 10) / 10;

/** The table with a decimal comma and a row of units, of so many sizes from the smallest. */
export const sizeRange = (count = BUSTS.length): string =>
  [
    HEAD.join(';'),
    ['', ...HEAD.slice(1).map(() => 'cm')].join(';'),
    ...BUSTS.slice(0, count).map((bust, i) =>
      [
        String(34 + 2 * i),
        ...[
          bust,
          bust - 12 + 0.15 * i,
          bust - 18 + 0.4 * i,
          bust + 8,
          25.5 + 0.5 * i,
          33 + 0.5 * i,
          38.7 + 0.3 * i,
          58.7 + 0.4 * i,
          17.5 + 0.5 * i,
        ].map((cm) => String(round(cm)).replace('.', ',')),
      ].join(';'),
    ),
  ].join('\r\n');
