// The fit in words and figures: the worst places with what cures them, and a table by region, edge and mark.

import { WORN } from '../../document';
import type { WornHalfFigures } from './view/wornPicture';

export function WornPlaces({ halves }: { readonly halves: readonly WornHalfFigures[] }) {
  const places = halves.flatMap(({ side, worst }) =>
    worst.map((place) => {
      const text = WORN.worst.sentence(place);
      return side === null ? text : WORN.worst.side({ side, text });
    }),
  );
  return (
    <div className="worn-places">
      <h3>{WORN.worst.title}</h3>
      {places.length === 0 ? (
        <p>{WORN.worst.none}</p>
      ) : (
        <>
          <ol>
            {places.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ol>
          <a href="#draft">{WORN.worst.goTo}</a>
        </>
      )}
    </div>
  );
}

export function WornTable({ half: { side, figures } }: { readonly half: WornHalfFigures }) {
  const { table } = WORN;
  return (
    <>
      <table className="worn-table">
        <caption>{side === null ? table.title : table.half({ side })}</caption>
        <thead>
          <tr>
            <th scope="col">{table.where}</th>
            <th scope="col">{table.standOff}</th>
            <th scope="col">{table.stretch}</th>
          </tr>
        </thead>
        <tbody>
          {figures.regions.map(({ band, part, standOff, stretch }) => (
            <tr key={`${band} ${part}`}>
              <th scope="row">{table.region({ band, part })}</th>
              <td>{table.mm({ value: standOff })}</td>
              <td>{table.percent({ value: stretch })}</td>
            </tr>
          ))}
          {figures.edges.map(({ edge, part, gape }) => (
            <tr key={`${edge} ${part}`}>
              <th scope="row">{table.edge({ edge, part })}</th>
              <td colSpan={2}>{table.mm({ value: gape })}</td>
            </tr>
          ))}
          {figures.marks.map(({ level, part, rise }) => (
            <tr key={`${level} ${part}`}>
              <th scope="row">{table.mark({ level, part })}</th>
              <td colSpan={2}>{table.rise({ value: rise })}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {figures.apex !== null && <p className="hint">{table.apex({ value: figures.apex })}</p>}
    </>
  );
}
