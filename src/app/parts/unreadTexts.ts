// What was typed and could not be read, kept while another step is in view, so that it is still in its field on return.

export interface UnreadText {
  readonly text: string;
  /** The sentence that says what is wrong with it. */
  readonly fault: string;
}

const unread = new Map<string, UnreadText>();

/** The text that lies in a field unread; undefined where there is none. */
export const unreadText = (field: string | undefined): UnreadText | undefined =>
  field === undefined ? undefined : unread.get(field);

/** Lays a text by for a field, or (null) lets it go. */
export function layByText(field: string | undefined, text: UnreadText | null): void {
  if (field === undefined) return;
  if (text) unread.set(field, text);
  else unread.delete(field);
}
