// The focus never falls to the page: where what has it goes away or disables itself, it goes to what stands in its place, or to
// what stands nearest there.

const FOCUSABLE =
  ':is(a[href], button, input, select, textarea, summary, [tabindex="0"]):not(:disabled, [tabindex="-1"])';

/** An element that has had the focus, with the elements round it, the nearest first, and its place in each. */
interface Place {
  readonly element: Element;
  readonly around: readonly { readonly parent: Element; readonly index: number }[];
}

/** Watches the document; gives what ends it. */
export function keepFocus(page: Document): () => void {
  let last: Place | null = null;
  const come = ({ target }: FocusEvent): void => {
    last = target instanceof Element ? placeOf(target) : null;
  };
  // One who leaves an element that is still there wants it so. A browser may tell of it just before it takes the element out, so that
  // it is only known once what runs has ended.
  const leave = ({ target, relatedTarget }: FocusEvent): void => {
    if (relatedTarget !== null || !(target instanceof Element)) return;
    queueMicrotask(() => {
      if (last?.element === target && isThere(target) && page.activeElement !== target) last = null;
    });
  };
  const watch = new MutationObserver(() => {
    const { activeElement } = page;
    if (!last || isThere(last.element) || (activeElement !== page.body && activeElement !== last.element))
      return;
    const next = nearest(last);
    last = null;
    if (next instanceof HTMLElement) next.focus();
  });
  page.addEventListener('focusin', come);
  page.addEventListener('focusout', leave);
  watch.observe(page.body, {
    childList: true,
    subtree: true,
    attributes: true,
    attributeFilter: ['disabled'],
  });
  return () => {
    page.removeEventListener('focusin', come);
    page.removeEventListener('focusout', leave);
    watch.disconnect();
  };
}

const isThere = (element: Element): boolean => element.isConnected && !element.matches(':disabled');

function placeOf(element: Element): Place {
  const around: { parent: Element; index: number }[] = [];
  for (let child = element; child.parentElement; child = child.parentElement)
    around.push({ parent: child.parentElement, index: [...child.parentElement.children].indexOf(child) });
  return { element, around };
}

/** Null where nothing on the page can have the focus. */
function nearest({ around }: Place): Element | null {
  for (const { parent, index } of around.filter((each) => each.parent.isConnected)) {
    const children = [...parent.children];
    // What stands in its place, what follows, and what stood before, the nearest first.
    for (const child of [...children.slice(index), ...children.slice(0, index).reverse()]) {
      const found = child.matches(FOCUSABLE) ? child : child.querySelector(FOCUSABLE);
      if (found) return found;
    }
  }
  return null;
}
