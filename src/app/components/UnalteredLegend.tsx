// What the broken lines in a drawing of the altered draft are.

import { TABLE } from '../../document';

export const UnalteredLegend = () => (
  <p className="line-legend hint">
    <svg viewBox="0 0 32 6" aria-hidden="true">
      <path d="M0 3H32" />
    </svg>
    <span>{TABLE.withoutFittings}</span>
  </p>
);
