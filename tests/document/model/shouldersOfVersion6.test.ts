// The shoulders of stored styles: earlier usual numbers are let go, chosen ones stay.

import { describe, expect, it } from 'vitest';
import { shouldersOfVersion6 } from '../../../src/document/model/migrations/shouldersOfVersion6';

const EARLIER = { drop: 25.4, armholeIn: 12.7, intake: { front: 12.7, back: 6.35 } };

describe('the shoulders of a stored style', () => {
  it('say nothing where they held the earlier usual numbers', () => {
    expect(shouldersOfVersion6({ hemBelow: 3, shoulders: EARLIER })).toEqual({ hemBelow: 3, shoulders: {} });
    expect(shouldersOfVersion6({ shoulders: { ...EARLIER, bandAbove: 38.1 } })).toEqual({
      shoulders: { bandAbove: 38.1 },
    });
  });

  it('keep each number that was chosen', () => {
    const chosen = { drop: 30, armholeIn: 10, intake: { front: 20, back: 5 } };
    expect(shouldersOfVersion6({ shoulders: chosen })).toEqual({ shoulders: chosen });
    expect(shouldersOfVersion6({ shoulders: { ...EARLIER, intake: { front: 20, back: 6.35 } } })).toEqual({
      shoulders: { intake: { front: 20 } },
    });
  });

  it('are given back as they are when there are none or they cannot be read', () => {
    for (const data of [null, 7, {}, { shoulders: null }, { shoulders: 'none' }])
      expect(shouldersOfVersion6(data)).toEqual(data);
    expect(shouldersOfVersion6({ shoulders: { drop: 'low', intake: 3 } })).toEqual({
      shoulders: { drop: 'low' },
    });
  });
});
