// The card that leads to sizes and casts.

import { useState } from 'react';
import { CUT } from '../../document';
import { LaterDialog } from '../components/later/LaterDialog';
import { lazyPart } from '../components/later/later';
import { Fold } from './Fold';

const SizesDialog = lazyPart(async () => (await import('./sizes/SizesDialog')).default);

export function SizesCard() {
  const [isOpen, setOpen] = useState(false);
  return (
    <Fold title={CUT.sizes.title} className="sizes-card">
      <p className="hint">{CUT.sizes.hint}</p>
      <div className="actions">
        <button type="button" aria-haspopup="dialog" onClick={() => setOpen(true)}>
          {CUT.sizes.open}
        </button>
      </div>
      {isOpen ? (
        <LaterDialog onClose={() => setOpen(false)}>
          <SizesDialog onClose={() => setOpen(false)} />
        </LaterDialog>
      ) : null}
    </Fold>
  );
}
