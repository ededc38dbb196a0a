import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { PROGRAM, PROGRAM_VERSION } from '../../../src/document';

it('is the version of the package, in every print', () => {
  const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
  expect(PROGRAM_VERSION).toBe(version);
  expect(PROGRAM).toBe(`Staywright ${version}`);
});
