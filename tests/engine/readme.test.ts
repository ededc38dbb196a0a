// The example in the engine's README does what it says: it is cut out of the text and run.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DEFAULT_STYLE, type Draft, draft, UNMEASURED } from '../../src/engine';

const README = readFileSync('src/engine/README.md', 'utf8');

describe('the example in the README of the engine', () => {
  it('drafts six pieces and reports no error', () => {
    const [, code = ''] = /```ts\nimport [^\n]*\n([\s\S]*?)```/.exec(README) ?? [];
    expect(code).toContain('draft(');
    const taken = { draft, DEFAULT_STYLE, UNMEASURED };
    const run = new Function(...Object.keys(taken), `${code}; return { pieces, proof, issues };`);
    const { pieces, proof, issues } = run(...Object.values(taken)) as Draft;
    expect(pieces).toHaveLength(6);
    expect(proof.ledger.map(({ level }) => level)).toEqual(['overBust', 'bust', 'underBust', 'waist', 'hip']);
    expect(issues.filter(({ severity }) => severity === 'error')).toEqual([]);
  });
});
