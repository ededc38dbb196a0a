// The headless drafter as a shell starts it: its streams, its exit code, and a reader that leaves.

import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { DEMO_CLIENT } from '../../src/document';
import { buildDrafter } from './buildDrafter';
import { FROM_SOURCE, runDraft, runDraftProcess } from './runDraft';

let place: string;
let drafter: readonly string[];
beforeAll(async () => {
  place = realpathSync(mkdtempSync(join(tmpdir(), 'staywright-')));
  drafter = await buildDrafter(place);
}, 120_000);
afterAll(() => rmSync(place, { recursive: true, force: true }));

const LINE = `${JSON.stringify({ name: DEMO_CLIENT.name, unit: 'mm', measurements: DEMO_CLIENT.measurements })}\n`;

describe('the process of the drafter', { concurrent: true }, () => {
  it('drafts the demo client into files and names them, and ends with 0', async () => {
    const out = join(place, 'demo', 'deep');
    const ran = await runDraftProcess(drafter, ['--paper', 'roll', '--out', out]);
    expect(ran).toMatchObject({ code: 0, err: '' });
    const files = ['pieces.json', 'pattern.pdf', 'pattern.svg', 'pattern.dxf', 'sheet.html'];
    expect(ran.out.split('\n')).toEqual([...files.map((name) => join(out, name)), '']);
    expect(readdirSync(out).sort()).toEqual(files.sort());
  });

  it('ends with 2 on an unknown word, and says so on the error stream', async () => {
    const ran = await runDraftProcess(drafter, ['--quick']);
    expect(ran).toMatchObject({ code: 2, out: '' });
    expect(ran.err).toMatch(/^--quick: This is not understood/);
  });

  it('ends with 1 on a draft that must not be cut', async () => {
    const measurements = { ...DEMO_CLIENT.measurements, neckToWaist: 280, neckToUnderBust: 270 };
    const client = join(place, 'upside.json');
    writeFileSync(client, JSON.stringify({ name: 'Isla', unit: 'mm', measurements }));
    const ran = await runDraftProcess(drafter, ['--client', client, '--out', join(place, 'upside')]);
    expect(ran.code).toBe(1);
    expect(ran.err).toMatch(/^block waist: The waist line is not far enough below/m);
  });

  it('answers what it reads from its input', async () => {
    const ran = await runDraftProcess(drafter, ['--stdin'], LINE);
    expect(ran).toMatchObject({ code: 0, err: '' });
    expect(ran).toEqual(await runDraft(['--stdin'], LINE));
  });

  it('stops when its reader leaves, says so in one line and ends with 3', async () => {
    const ran = await runDraftProcess(drafter, ['--stdin'], LINE.repeat(200), { leaves: true });
    expect(ran).toMatchObject({ code: 3, err: 'The output could not be written (its reader has left).\n' });
    expect(ran.out.length).toBeLessThan(200 * 1000);
  });

  it.runIf(existsSync('/dev/full'))('says in one line that the device is full, and ends with 3', async () => {
    const ran = await runDraftProcess(drafter, ['--stdin'], LINE.repeat(2), { to: '/dev/full' });
    expect(ran).toEqual({ code: 3, out: '', err: 'The output could not be written (ENOSPC).\n' });
  });

  it.each([[['--help']], [['--version']], [['--stdin']], [['--client', 'nobody.json', '--out', 'nobody']]])(
    'ends so in every task: %s',
    async (words) => {
      const { measurements } = DEMO_CLIENT;
      writeFileSync(join(place, 'nobody.json'), JSON.stringify({ name: 'nobody', unit: 'mm', measurements }));
      const placed = words.map((word) => (word.startsWith('nobody') ? join(place, word) : word));
      const ran = await runDraft(placed, '{"name":"nobody"}\n', { isFull: true });
      expect(ran).toEqual({ code: 3, out: '', err: 'The output could not be written (ENOSPC).\n' });
    },
  );

  it('says its version, started from its source as npm run draft does', async () => {
    const { version, scripts } = JSON.parse(readFileSync('package.json', 'utf8'));
    expect(scripts.draft).toBe(['node', ...FROM_SOURCE].join(' '));
    expect(await runDraftProcess(FROM_SOURCE, ['--version'])).toEqual({
      code: 0,
      out: `Staywright ${version}\n`,
      err: '',
    });
  });
});
