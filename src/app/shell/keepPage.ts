// A file dropped beside the place for it would take the place of the page: the browser opens what it is given.

const refuse = (event: DragEvent): void => {
  if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
};

/** Leaves the page where it is when a file is dropped on it; gives what ends it. */
export function keepPage(page: EventTarget): () => void {
  const kinds = ['dragover', 'drop'] as const;
  for (const kind of kinds) page.addEventListener(kind, refuse as EventListener);
  return () => {
    for (const kind of kinds) page.removeEventListener(kind, refuse as EventListener);
  };
}
