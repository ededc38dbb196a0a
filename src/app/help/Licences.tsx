// The parts made by others that the page ships, each with the whole text of its licence.

import licences from 'virtual:licences';
import { HELP } from '../../document';

export default function Licences() {
  return (
    <ul className="licences">
      {licences.map(({ name, licence, text }) => (
        <li key={name}>
          <details>
            <summary>{HELP.about.part({ name, licence })}</summary>
            <pre>{text}</pre>
          </details>
        </li>
      ))}
    </ul>
  );
}
