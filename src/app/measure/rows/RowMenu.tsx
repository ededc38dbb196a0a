// The menu of a row. It is out of the order of Tab, which goes from number to number: the pointer opens it by its button, the
// keyboard by Alt and arrow down in the row's field.

import { type FocusEvent, type KeyboardEvent, useEffect, useRef } from 'react';
import { MEASURE, MEASUREMENT_WORDS } from '../../../document';
import type { MeasurementName } from '../../../engine';
import { inputOf } from './fieldShown';
import type { RowAction } from './useRowActions';

interface RowMenuProps {
  readonly name: MeasurementName;
  readonly actions: readonly RowAction[];
  readonly isOpen: boolean;
  readonly onOpen: (open: boolean) => void;
}

export function RowMenu({ name, actions, isOpen, onOpen }: RowMenuProps) {
  const label = MEASURE.row.more({ measurement: MEASUREMENT_WORDS[name].name });
  if (actions.length === 0) return <span className="row-menu" />;
  return (
    <div className="row-menu">
      <button
        type="button"
        className="row-more"
        tabIndex={-1}
        aria-haspopup="menu"
        aria-expanded={isOpen}
        aria-label={label}
        title={label}
        // The focus stays where it is, so that an open menu is not closed and opened again by one press.
        onMouseDown={(event) => event.preventDefault()}
        onClick={() => onOpen(!isOpen)}
      >
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <path d="M4 10h.1M10 10h.1M16 10h.1" />
        </svg>
      </button>
      {isOpen ? <Items name={name} label={label} actions={actions} onClose={() => onOpen(false)} /> : null}
    </div>
  );
}

interface ItemsProps {
  readonly name: MeasurementName;
  readonly label: string;
  readonly actions: readonly RowAction[];
  readonly onClose: () => void;
}

function Items({ name, label, actions, onClose }: ItemsProps) {
  const menu = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const opened = menu.current;
    if (!opened) return;
    // Where there is no room below, the menu stands above its button.
    const isBelow = opened.getBoundingClientRect().bottom <= window.innerHeight;
    opened.classList.toggle('upwards', !isBelow);
    opened.querySelector('button')?.focus({ preventScroll: true });
  }, []);
  const close = (): void => {
    inputOf(name)?.focus({ preventScroll: true });
    onClose();
  };
  const leave = ({ currentTarget, relatedTarget }: FocusEvent<HTMLDivElement>): void => {
    if (!currentTarget.contains(relatedTarget)) onClose();
  };
  const press = (event: KeyboardEvent<HTMLDivElement>): void => {
    const items = [...event.currentTarget.querySelectorAll('button')];
    const at = items.findIndex((item) => item.matches(':focus'));
    const to = { ArrowDown: at + 1, ArrowUp: at - 1 + items.length, Home: 0, End: items.length - 1 }[
      event.key
    ];
    if (to !== undefined) items[to % items.length]?.focus();
    else if (event.key === 'Escape' || event.key === 'Tab') close();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div
      ref={menu}
      className="row-items"
      role="menu"
      aria-label={label}
      tabIndex={-1}
      onKeyDown={press}
      onBlur={leave}
    >
      {actions.map(({ label: text, run }) => (
        <button
          key={text}
          type="button"
          role="menuitem"
          tabIndex={-1}
          onClick={() => {
            close();
            run();
          }}
        >
          {text}
        </button>
      ))}
    </div>
  );
}
