import { describe, expect, it } from 'vitest';
import { toBeSewn } from '../../../src/app/worn/wornRequest';
import { DEMO_CLIENT } from '../../../src/document';
import { DEFAULT_STYLE, draftWhole, sewGarment } from '../../../src/engine';

describe('what of a draft goes to the worker', () => {
  const { measurements } = DEMO_CLIENT;
  const drafted = draftWhole(measurements, DEFAULT_STYLE);

  it('is sewn to the same figures as the draft itself', () => {
    const [own, sent] = [drafted, structuredClone(toBeSewn(drafted))].map(
      (each) => sewGarment(each, measurements, DEFAULT_STYLE, null, { width: 24 }).halves[0]?.figures,
    );
    expect(own?.apex).toBeGreaterThan(0);
    expect(sent).toEqual(own);
  });
});
