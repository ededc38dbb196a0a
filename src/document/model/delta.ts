// What it takes to make one piece of plain data from another, so that two hundred books can be kept in the room of few.

import { isObject } from './isObject';

/** `set`: taken whole. `in`: parts changed, and parts left out. `at`: items of a list dropped there and others put in. */
export type Delta =
  | { readonly set: unknown }
  | { readonly in: Readonly<Record<string, Delta>>; readonly out?: readonly string[] }
  | { readonly at: number; readonly drop: number; readonly put: readonly unknown[] };

/** The way from one to the other; null where they are the same. Parts they share are found by being one and the same. */
export function delta(from: unknown, to: unknown): Delta | null {
  if (Object.is(from, to)) return null;
  if (Array.isArray(from) && Array.isArray(to))
    return from.length === to.length ? parts(from, to) : splice(from, to);
  return isObject(from) && isObject(to) ? parts(from, to) : { set: to };
}

/** The other, made from the one; what does not fit together is made as far as it goes. Nothing given is changed. */
export function apply(from: unknown, step: Delta | null): unknown {
  if (step === null) return from;
  if ('set' in step) return step.set;
  if ('at' in step)
    return Array.isArray(from)
      ? [...from.slice(0, step.at), ...step.put, ...from.slice(step.at + step.drop)]
      : from;
  if (Array.isArray(from)) return from.map((item, i) => apply(item, step.in[String(i)] ?? null));
  if (!isObject(from)) return from;
  const out = new Set(step.out);
  const own = (key: string): Delta | null => (Object.hasOwn(step.in, key) ? (step.in[key] ?? null) : null);
  const stays = Object.entries(from)
    .filter(([key]) => !out.has(key))
    .map(([key, value]): [string, unknown] => [key, apply(value, own(key))]);
  const comes = Object.keys(step.in)
    .filter((key) => !Object.hasOwn(from, key))
    .map((key): [string, unknown] => [key, apply(undefined, own(key))]);
  return Object.fromEntries([...stays, ...comes]);
}

function parts(from: object, to: object): Delta | null {
  const [before, after] = [new Map(Object.entries(from)), new Map(Object.entries(to))];
  const changed: [string, Delta][] = [];
  for (const [key, value] of after) {
    const step = before.has(key) ? delta(before.get(key), value) : { set: value };
    if (step) changed.push([key, step]);
  }
  const out = [...before.keys()].filter((key) => !after.has(key));
  if (changed.length === 0 && out.length === 0) return null;
  return { in: Object.fromEntries(changed), ...(out.length > 0 ? { out } : {}) };
}

function splice(from: readonly unknown[], to: readonly unknown[]): Delta {
  const shorter = Math.min(from.length, to.length);
  let at = 0;
  while (at < shorter && delta(from[at], to[at]) === null) at += 1;
  let end = 0;
  while (end < shorter - at && delta(from.at(-1 - end), to.at(-1 - end)) === null) end += 1;
  return { at, drop: from.length - at - end, put: to.slice(at, to.length - end) };
}
