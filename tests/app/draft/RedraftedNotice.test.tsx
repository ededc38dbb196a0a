// A draft that new rules draw otherwise says so until it was read, and not again.

import { screen } from '@testing-library/react';
import { expect, it } from 'vitest';
import { RedraftedNotice } from '../../../src/app/draft/RedraftedNotice';
import { changeDraft, DEMO_BOOK } from '../../../src/document';
import { onTable } from '../withStore';

it('says that new rules draw the draft otherwise until it is understood', async () => {
  const { user, client, changes } = onTable(
    <RedraftedNotice />,
    changeDraft(DEMO_BOOK, (draft) => ({ ...draft, redrafted: true })),
  );
  expect(screen.getByRole('status')).toHaveTextContent('What was asked for before is kept to compare with');
  await user.click(screen.getByRole('button', { name: 'Understood' }));
  expect(screen.queryByRole('status')).toBeNull();
  expect(client().drafts[0]).not.toHaveProperty('redrafted');
  expect(changes()).toEqual(['read what new rules of drafting changed']);
});

it('says of the bust dart alone where only that is drawn otherwise', () => {
  onTable(
    <RedraftedNotice />,
    changeDraft(DEMO_BOOK, (draft) => ({ ...draft, redrafted: ['bustDart'] })),
  );
  expect(screen.getByRole('status')).toHaveTextContent('the rule of the bust dart has changed');
});

it('says of the seams above the bust alone where only they are drawn otherwise', () => {
  onTable(
    <RedraftedNotice />,
    changeDraft(DEMO_BOOK, (draft) => ({ ...draft, redrafted: ['aboveBust'] })),
  );
  expect(screen.getByRole('status')).toHaveTextContent('where front or back widens above the bust');
  expect(screen.getByRole('status')).not.toHaveTextContent('the rule of the bust dart');
});

it('says of each rule that draws it otherwise, one after another', () => {
  onTable(
    <RedraftedNotice />,
    changeDraft(DEMO_BOOK, (draft) => ({ ...draft, redrafted: ['neckAndSide', 'smallBust'] })),
  );
  expect(screen.getByRole('status')).toHaveTextContent(
    /a deep round neckline keeps its width.*front and back share what is missing/,
  );
});

it('is silent over a draft that was made by these rules', () => {
  onTable(<RedraftedNotice />, DEMO_BOOK);
  expect(screen.queryByRole('status')).toBeNull();
});
