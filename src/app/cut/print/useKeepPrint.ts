// Keeps the record of what was printed or saved with the client.

import { type KeptPrint, keepPrint, nextMockup, printOf } from '../../../document';
import { today } from '../../components/files/formatDay';
import { useOpen, useStore } from '../../store/storeContext';
import { useCutChoices } from '../choices/cutChoices';

/** Gives what is to be called when a pattern or mock-up was made in a form. */
export function useKeepPrint(): (form: KeptPrint['form']) => void {
  const { client } = useOpen();
  const { kind, mockupAllowance: allowance } = useCutChoices();
  const follow = useStore((state) => state.follow);
  return (form) => {
    const on = today();
    const mockup = kind === 'mockup' ? { number: nextMockup(client, on), allowance } : null;
    const print = printOf(client, { on, form, mockup });
    follow((history) => keepPrint(history, client.id, print, new Date().toISOString()));
  };
}
