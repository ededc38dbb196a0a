// The example in the engine's README does what it says: it is cut out of the text and run.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DEFAULT_STYLE, type Draft, draft } from '../../src/engine';

const README = readFileSync('src/engine/README.md', 'utf8');

describe('the example in the README of the engine', () => {
  it('drafts six pieces and reports no error', () => {
    const [, code = ''] = /```ts\nimport [^\n]*\n([\s\S]*?)```/.exec(README) ?? [];
    expect(code).toContain('draft(');
    const run = new Function('draft', 'DEFAULT_STYLE', `${code}; return { pieces, proof, issues };`);
    const { pieces, proof, issues } = run(draft, DEFAULT_STYLE) as Draft;
    expect(pieces).toHaveLength(6);
    expect(proof.ledger.map(({ level }) => level)).toEqual(['overBust', 'bust', 'underBust', 'waist', 'hip']);
    expect(issues.filter(({ severity }) => severity === 'error')).toEqual([]);
  });
});
