// What of the making list is asked for most, under the drawing, with the way to all of it.

import { MAKING } from '../../document';
import { amountOf, type PlanInput } from '../../paper';
import { choose } from './choices/cutChoices';
import { useMaking } from './useMaking';

const TEXTS = MAKING.summary;

export function MakingSummary({ input }: { input: PlanInput }) {
  const { unit } = input.client;
  const { list, sections } = useMaking(input);
  const eyelets = list.eyelets.reduce((sum, { times, points }) => sum + times * points.length, 0);
  const bones = list.bones.reduce((sum, { count, lengthMm }) => sum + (lengthMm === null ? 0 : count), 0);
  const counted = [
    { item: TEXTS.bones, amount: bones },
    { item: TEXTS.eyelets, amount: eyelets },
  ].filter(({ amount }) => amount > 0);
  const measured = sections
    .filter(({ kind }) => kind === 'trimmings')
    .flatMap(({ lines }) => lines.map((line) => ({ item: line.item, amount: amountOf(line, unit) })));
  return (
    <section className="making-summary" aria-label={TEXTS.title}>
      <div>
        <h2>{MAKING.title}</h2>
        <button type="button" className="quiet" onClick={() => choose({ view: 'making' })}>
          {TEXTS.whole}
        </button>
      </div>
      <dl>
        {[...counted, ...measured].map(({ item, amount }) => (
          <div key={item}>
            <dt>{item}</dt>
            <dd>{amount}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
