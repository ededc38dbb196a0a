// A print handed on to another program of the device, where the browser can.

import { render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { ShareButton } from '../../../src/app/cut/print/ShareButton';

const PDF = new File(['%PDF-'], 'Isla-A4.pdf', { type: 'application/pdf' });

const sharingBrowser = (share: () => Promise<void>, takesFiles = true) => {
  const shared = vi.fn(share);
  Object.assign(navigator, { share: shared, canShare: () => takesFiles });
  return shared;
};
afterEach(() => {
  for (const name of ['share', 'canShare']) Reflect.deleteProperty(navigator, name);
});

describe('sharing a print', () => {
  it('is not offered where the browser cannot share, or not files', () => {
    const { unmount } = render(<ShareButton file={PDF} />);
    expect(screen.queryByRole('button')).toBeNull();
    unmount();
    sharingBrowser(async () => undefined, false);
    render(<ShareButton file={PDF} />);
    expect(screen.queryByRole('button')).toBeNull();
  });

  it('hands on the file under its name', async () => {
    const shared = sharingBrowser(async () => undefined);
    render(<ShareButton file={PDF} />);
    await userEvent.click(screen.getByRole('button', { name: 'Share the PDF' }));
    expect(shared).toHaveBeenCalledWith({ files: [PDF], title: 'Isla-A4.pdf' });
  });

  it('says where the file lies when the device does not take it, and nothing when the list is closed', async () => {
    sharingBrowser(() => Promise.reject(new DOMException('closed', 'AbortError')));
    const { unmount } = render(<ShareButton file={PDF} />);
    await userEvent.click(screen.getByRole('button', { name: 'Share the PDF' }));
    expect(screen.queryByText(/among your downloads/)).toBeNull();
    unmount();
    sharingBrowser(() => Promise.reject(new DOMException('no', 'NotAllowedError')));
    render(<ShareButton file={PDF} />);
    await userEvent.click(screen.getByRole('button', { name: 'Share the PDF' }));
    await screen.findByText('The device did not take the PDF. It lies among your downloads.');
  });
});
