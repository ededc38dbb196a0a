// Which way up the panels may lie: cloth with a nap or a one-way print has every head at the same end.

import { changeNap, napFor, useCutChoices } from './cutChoices';

export function NapChoice() {
  const choices = useCutChoices();
  return (
    <label className="choice">
      <span>Panels lie</span>
      <select
        value={napFor(choices) ? 'one' : 'either'}
        onChange={(event) => changeNap(event.target.value === 'one')}
      >
        <option value="either">heads either way</option>
        <option value="one">all one way (nap or print)</option>
      </select>
    </label>
  );
}
