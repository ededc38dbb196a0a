// What was printed for the client, folded under its title in Cut.

import { CUT } from '../../document';
import { useOpen } from '../store/storeContext';
import { Fold } from './Fold';
import PrintList from './PrintList';

/** Nothing where nothing was printed yet. */
export function PrintsCard() {
  const { client } = useOpen();
  if (client.prints.length === 0) return null;
  return (
    <Fold title={CUT.prints.title} className="prints-card">
      <p className="hint">{CUT.prints.hint}</p>
      <PrintList />
    </Fold>
  );
}
