// The way to the name of a client who was just added, which is the first thing to be written of her.

/** Asked for when she was added; her name may not be on the screen yet. */
let awaited = false;

/** Her name takes the focus as soon as it is laid out. */
export function awaitName(): void {
  awaited = true;
}

/** Her card is laid out: where her name was awaited it takes the focus, and typing puts another in its place. */
export function arriveAtName(card: HTMLElement | null): void {
  const field = awaited ? card?.querySelector('input') : null;
  if (!field) return;
  awaited = false;
  field.focus();
  field.select();
}
