import { expect, it } from 'vitest';
import { NEXT_STEP } from '../../../src/app/measure/rows/fieldShown';
import { walkFrom, walkToFirst } from '../../../src/app/measure/rows/walkFields';

/** Three numbers with what stands between them, and the way on. */
function form(): HTMLInputElement[] {
  document.body.innerHTML = `
    <form class="tape-form">
      <input type="text" value="35"><button>Second reading</button><input type="checkbox">
      <input type="text" value="37"><input type="text" value="31 3/4">
    </form>
    <button id="${NEXT_STEP}">Next</button>`;
  return [...document.querySelectorAll<HTMLInputElement>('input[type="text"]')];
}

it('goes from number to number, each wholly selected, and from the last to the way on', () => {
  const [bust, under, waist] = form() as [HTMLInputElement, HTMLInputElement, HTMLInputElement];
  walkToFirst();
  expect(document.activeElement).toBe(bust);
  walkFrom(bust);
  expect(document.activeElement).toBe(under);
  expect([under.selectionStart, under.selectionEnd]).toEqual([0, 2]);
  walkFrom(under);
  expect(document.activeElement).toBe(waist);
  walkFrom(waist);
  expect(document.activeElement?.id).toBe(NEXT_STEP);
});

it('goes back the same way, and from the first stays', () => {
  const [bust, under, waist] = form() as [HTMLInputElement, HTMLInputElement, HTMLInputElement];
  waist.focus();
  walkFrom(waist, true);
  expect(document.activeElement).toBe(under);
  walkFrom(under, true);
  expect(document.activeElement).toBe(bust);
  walkFrom(bust, true);
  expect(document.activeElement).toBe(bust);
});
