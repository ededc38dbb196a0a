// A name that no other of its kind bears, so that each can be told from the others in a list.

/** The name, or with the first number behind it that makes it the only one; capitals make no difference. */
export function freeName(name: string, taken: readonly string[]): string {
  const names = new Set(taken.map(plainName));
  const plain = name.replace(/ \d+$/, '');
  let [free, number] = [name, 2];
  for (; names.has(plainName(free)); number += 1) free = `${plain} ${number}`;
  return free;
}

/** A name as it is compared with others. */
export const plainName = (name: string): string => name.trim().toLowerCase();
