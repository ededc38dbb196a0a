// The way to the name of a client who was just added, which is the first thing to be written of her.

/** Asked for when she was added; her name may not be on the screen yet. */
let awaited = false;

/** Her name takes the focus as soon as it is laid out. */
export function awaitName(): void {
  awaited = true;
}

/** A client's name is laid out: where it was awaited, it takes the focus, and typing puts another in its place. */
export function arriveAtName(field: HTMLInputElement | null | undefined): void {
  if (!awaited || !field) return;
  awaited = false;
  field.focus();
  field.select();
}
