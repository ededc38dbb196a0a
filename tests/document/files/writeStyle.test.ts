import { describe, expect, it } from 'vitest';
import { NAMED_STYLES, readStyle, setCup, setIntake, setStationAt, writeStyle } from '../../../src/document';
import { DEFAULT_STYLE } from '../../../src/engine';

const worked = [
  ['with a bent axis', setStationAt(DEFAULT_STYLE, 'front-bust', 'underBust', 0.2)],
  ['with a fuller cup', setCup(DEFAULT_STYLE, 'front-bust', { below: 40, intake: 12 })],
  ['with a wedge by hand', setIntake(DEFAULT_STYLE, 'front-side', 'waist', 31.25, {})],
] as const;

describe('a style file', () => {
  it.each([...[...NAMED_STYLES].map(([name, { style }]) => [name, style] as const), ...worked])(
    'gives the headless drafter the very style: %s',
    (_, style) => {
      expect(readStyle(JSON.parse(writeStyle('Harbour ½', style)), 'file')).toEqual({
        ok: true,
        value: { title: 'Harbour ½', style },
      });
    },
  );

  it('has wedges at their stations, wherever they were put on one client', () => {
    const put = {
      ...DEFAULT_STYLE,
      wedges: DEFAULT_STYLE.wedges.map((wedge) => ({ ...wedge, fromCentre: { waist: 71 } })),
    };
    expect(JSON.parse(writeStyle('Quay', put))).toEqual(JSON.parse(writeStyle('Quay', DEFAULT_STYLE)));
  });
});
