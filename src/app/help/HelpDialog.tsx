// Help: the way through, measuring, the keyboard, the words, the sources, where the work is kept, and what the page is.

import { type ReactNode, useId } from 'react';
import { GLOSSARY, HELP, MEASUREMENT_WORDS, SAFETY_CAUTIONS, SAFETY_STANDING, SOURCES } from '../../document';
import { MEASUREMENTS } from '../../engine';
import { Dialog } from '../components/Dialog';
import { LaterSection } from '../components/later/LaterSection';
import { lazyPart } from '../components/later/later';

declare const __VERSION__: string | undefined;
const Licences = lazyPart(async () => (await import('./Licences')).default);

/** The mode `single` builds the page as one file that is opened from a disk. */
const KEEPING_TEXTS = import.meta.env.MODE === 'single' ? HELP.keepingOfFile : HELP.keeping;

const SECTIONS: Readonly<Record<keyof typeof HELP.sections, () => ReactNode>> = {
  way: () => (
    <ol>
      {HELP.way.map(({ name, what }) => (
        <li key={name}>
          <b>{name}</b> {what}
        </li>
      ))}
    </ol>
  ),
  measuring: () => (
    <>
      <Paragraphs texts={HELP.measuring.intro} />
      <Meanings
        of={MEASUREMENTS.map(({ name }) => [MEASUREMENT_WORDS[name].label, MEASUREMENT_WORDS[name].how])}
      />
    </>
  ),
  keyboard: () =>
    HELP.keyboard.map(({ title, keys }) => (
      <div key={title}>
        <h4>{title}</h4>
        <Meanings of={keys.map((each) => [each.keys, each.what])} />
      </div>
    )),
  glossary: () => <Meanings of={GLOSSARY.map(({ word, meaning }) => [word, meaning])} />,
  sources: () => (
    <>
      {SOURCES.map(({ title, items }) => (
        <Listed key={title} title={title} items={items} />
      ))}
      <p>{SAFETY_STANDING}</p>
      <Listed title={HELP.lacing.title} items={SAFETY_CAUTIONS.map(HELP.lacing.caution)} />
    </>
  ),
  keeping: () => <Paragraphs texts={KEEPING_TEXTS} />,
  about: () => (
    <>
      <p>
        <b>{HELP.about.version({ version: typeof __VERSION__ === 'undefined' ? '' : __VERSION__ })}</b>
      </p>
      <p>{HELP.about.what}</p>
      <p>{HELP.about.parts}</p>
      <LaterSection>
        <Licences />
      </LaterSection>
    </>
  ),
};

export default function HelpDialog({ onClose }: { onClose: () => void }) {
  const id = useId();
  const names = Object.keys(SECTIONS) as (keyof typeof SECTIONS)[];
  const go = (name: string): void => {
    const heading = document.getElementById(`${id}${name}`);
    heading?.scrollIntoView({ block: 'start' });
    heading?.focus({ preventScroll: true });
  };
  return (
    <Dialog title={HELP.title} wide={true} onClose={onClose}>
      <div className="help">
        <nav aria-label={HELP.title}>
          {names.map((name) => (
            <button key={name} type="button" className="quiet" onClick={() => go(name)}>
              {HELP.sections[name]}
            </button>
          ))}
        </nav>
        <div className="help-text">
          {names.map((name) => (
            <section key={name} aria-labelledby={`${id}${name}`}>
              <h3 id={`${id}${name}`} tabIndex={-1}>
                {HELP.sections[name]}
              </h3>
              {SECTIONS[name]()}
            </section>
          ))}
        </div>
      </div>
    </Dialog>
  );
}

const Paragraphs = ({ texts }: { texts: readonly string[] }) => texts.map((text) => <p key={text}>{text}</p>);

const Listed = ({ title, items }: { title: string; items: readonly string[] }) => (
  <div>
    <h4>{title}</h4>
    <ul>
      {items.map((item) => (
        <li key={item}>{item}</li>
      ))}
    </ul>
  </div>
);

const Meanings = ({ of }: { of: readonly (readonly [string, string])[] }) => (
  <dl>
    {of.map(([word, meaning]) => (
      <div key={word}>
        <dt>{word}</dt>
        <dd>{meaning}</dd>
      </div>
    ))}
  </dl>
);
