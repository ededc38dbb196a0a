// The choice of how the panels lie: either way, or all one way on cloth with a nap or a one-way print.

import { CUT } from '../../../document';
import { changeNap, napFor, useCutChoices } from './cutChoices';

export function NapChoice() {
  const choices = useCutChoices();
  return (
    <label className="choice">
      <span>{CUT.nap.label}</span>
      <select
        value={napFor(choices) ? 'one' : 'either'}
        onChange={(event) => changeNap(event.target.value === 'one')}
      >
        <option value="either">{CUT.nap.eitherWay}</option>
        <option value="one">{CUT.nap.oneWay}</option>
      </select>
    </label>
  );
}
