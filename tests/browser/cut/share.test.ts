// A print handed on from a phone: the button for it, and what it gives to the device.

import { describe, expect, it } from 'vitest';
import { downloadBytes } from '../../support/browser/downloadBytes';
import { withBrowser } from '../session';

const visit = withBrowser();

/** What a list of programs was asked to take. */
interface Shared {
  readonly title: string;
  readonly name: string;
  readonly type: string;
  readonly size: number;
  /** Whether the device would take it as asked for by a person. */
  readonly isAsked: boolean;
}

/** A device that has a list of programs for PDFs, and answers what the test says. */
function shareAsPhone(): void {
  const device = Object.assign(window, { shared: [] as Shared[], refusal: '' });
  Object.assign(navigator, {
    canShare: ({ files = [] }: ShareData) => files.every(({ type }) => type === 'application/pdf'),
    share: async ({ files: [file] = [], title = '' }: ShareData) => {
      const { name = '', type = '', size = 0 } = file ?? {};
      device.shared.push({ title, name, type, size, isAsked: navigator.userActivation.isActive });
      if (device.refusal !== '') throw new DOMException('refused', device.refusal);
    },
  });
}

describe('a print on a phone', () => {
  it('is handed to the device as it was made, and a refusal says where it lies', async () => {
    const { page, context } = await visit('measure', {
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
    });
    await context.addInitScript(shareAsPhone);
    await page.reload();
    await page.locator('#root > .loading').waitFor({ state: 'detached' });
    await page.getByRole('link', { name: 'Cut', exact: true }).tap();
    const asked = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Download the PDF' }).tap();
    const download = await asked;
    const name = download.suggestedFilename();
    const { length: size } = await downloadBytes(download);
    const share = page.getByRole('button', { name: 'Share the PDF' });
    await share.waitFor();
    expect((await share.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    const shared = () => page.evaluate(() => (window as unknown as { shared: Shared[] }).shared);
    const refuse = (refusal: string) =>
      page.evaluate((given) => Object.assign(window, { refusal: given }).refusal, refusal);
    await share.tap();
    await expect.poll(shared).toEqual([{ title: name, name, type: 'application/pdf', size, isAsked: true }]);
    const notTaken = page.getByText('The device did not take the PDF. It lies among your downloads.');
    await refuse('NotAllowedError');
    await share.tap();
    await notTaken.waitFor();
    // The list was closed, which is no failure.
    await refuse('AbortError');
    await share.tap();
    await notTaken.waitFor({ state: 'hidden' });
    expect(await shared()).toHaveLength(3);
  });
});
