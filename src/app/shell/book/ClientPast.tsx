// When the client was fitted and what came of it, and what was printed for her: the answer to what was cut and from which tape.

import { CLIENT_BOOK } from '../../../document';
import { LaterSection } from '../../components/later/LaterSection';
import { lazyPart } from '../../components/later/later';
import { useOpen } from '../../store/storeContext';

const { past: words } = CLIENT_BOOK;

const Fitted = lazyPart(async () => (await import('./Fitted')).default);
const PrintList = lazyPart(async () => (await import('../../cut/PrintList')).default);

/** Nothing where the client was neither fitted nor printed for. */
export function ClientPast() {
  const { client } = useOpen();
  const fitted = client.drafts
    .flatMap((draft) => draft.fittings.map((fitting) => ({ draft, fitting })))
    .sort((a, b) => (a.fitting.date < b.fitting.date ? 1 : -1));
  if (fitted.length === 0 && client.prints.length === 0) return null;
  return (
    <section className="client-past" aria-label={words.title({ client: client.name })}>
      <h3>{words.title({ client: client.name })}</h3>
      {fitted.length > 0 ? (
        <>
          <h4>{words.fittings}</h4>
          <LaterSection>
            <ul>
              {fitted.map(({ draft, fitting }, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a fitting is told by its place in the list
                <li key={i}>
                  <Fitted draft={draft} fitting={fitting} />
                </li>
              ))}
            </ul>
          </LaterSection>
        </>
      ) : null}
      {client.prints.length > 0 ? (
        <>
          <h4>{words.prints}</h4>
          <LaterSection>
            <PrintList />
          </LaterSection>
        </>
      ) : null}
    </section>
  );
}
