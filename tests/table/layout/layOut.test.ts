import { describe, expect, it } from 'vitest';
import { DEMO_CLIENT } from '../../../src/document';
import { DEFAULT_STYLE, draft, inches } from '../../../src/engine';
import { layOut, lineHeight } from '../../../src/table';

describe('the layout of the blocks', () => {
  it('leaves room for names between a level at the hem and the hip line below it, drawn out of scale', () => {
    const made = draft({ ...DEMO_CLIENT.measurements, highHip: inches(36) }, DEFAULT_STYLE);
    const layout = layOut(made);
    expect(layout?.beyond).toHaveProperty('hip');
    const heights = layout ? made.levels.map(({ name, y }) => lineHeight(layout, name, y)) : [];
    const [highHip = 0, hip = 0] = heights.slice(-2);
    expect(made.levels.at(-2)?.name).toBe('highHip');
    expect(hip - highHip).toBeGreaterThanOrEqual(30);
    expect(hip).toBeLessThan((layout?.top ?? 0) + (layout?.height ?? 0));
  });
});
