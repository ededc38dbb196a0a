// What can be had of a client or a style whose data have bad parts: all the rest, and a list of the parts left behind.

import type * as z from 'zod/mini';
import { DEFAULT_STYLE } from '../../../engine';
import type { Client, OwnStyle } from '../book';
import { isObject } from '../isObject';
import { NO_NOTES, newClient, newDraft } from '../newClient';
import { clientSchema, ownStyleSchema } from './bookSchema';

/** A part that could not be read. `path` is its place among the data; `draft` the name of the draft it belongs to. */
export interface BadPart {
  readonly path: readonly (string | number)[];
  readonly draft: string | null;
}

export interface Mended<T> {
  readonly value: T;
  readonly bad: readonly BadPart[];
}

/** More bad parts than this are not gone through one by one. */
const MOST_PARTS = 200;

/** A client without what cannot be read of her; null where nothing can. */
export const mendClient = (data: unknown): Mended<Client> | null =>
  mend(data, clientSchema, { part: replaceInClient, draftAt: draftNamed }) as Mended<Client> | null;

/** A style with the usual numbers where its own cannot be read; null where nothing can. */
export const mendStyle = (data: unknown): Mended<OwnStyle> | null =>
  mend(data, ownStyleSchema, { part: replaceInStyle, draftAt: () => null }) as Mended<OwnStyle> | null;

interface Mending {
  /** Takes the part at a path out of the data, or puts in its place what stands for nothing known. False where it cannot. */
  readonly part: (data: Record<string, unknown>, path: readonly (string | number)[]) => boolean;
  readonly draftAt: (data: Record<string, unknown>, path: readonly (string | number)[]) => string | null;
}

function mend(data: unknown, schema: z.ZodMiniType, { part, draftAt }: Mending): Mended<unknown> | null {
  if (!isObject(data)) return null;
  const copy = structuredClone(data) as Record<string, unknown>;
  const bad: BadPart[] = [];
  for (let tries = 0; tries < MOST_PARTS; tries += 1) {
    const read = schema.safeParse(copy);
    if (read.success) return { value: read.data, bad };
    const path = (read.error.issues[0]?.path ?? []) as (string | number)[];
    bad.push({ path, draft: draftAt(copy, path) });
    if (path.length === 0 || !part(copy, path)) return null;
  }
  return null;
}

const NOTHING = { id: '', name: '' } as const;

/** What stands for nothing known in each field of a client but her drafts; one that is not named here may be left out. */
const { drafts: _, ...unknownClient } = newClient({ ...NOTHING, unit: 'in', draft: NOTHING });
const NOTHING_KNOWN: Readonly<Record<string, unknown>> = unknownClient;

function replaceInClient(client: Record<string, unknown>, path: readonly (string | number)[]): boolean {
  const [field, inner, ...deeper] = path;
  if (field === 'drafts') return replaceInDrafts(client, inner, deeper);
  const held = client[String(field)];
  if (inner !== undefined && field === 'measurements' && isObject(held)) {
    client.measurements = { ...held, [inner]: null };
  } else if (inner !== undefined && field === 'readings' && isObject(held)) {
    client.readings = Object.fromEntries(Object.entries(held).filter(([name]) => name !== inner));
  } else if (inner !== undefined && Array.isArray(held)) {
    client[String(field)] = held.filter((_, i) => i !== inner);
  } else if (Object.hasOwn(NOTHING_KNOWN, String(field))) {
    client[String(field)] = NOTHING_KNOWN[String(field)];
  } else delete client[String(field)];
  return true;
}

function replaceInDrafts(
  client: Record<string, unknown>,
  at: string | number | undefined,
  path: readonly (string | number)[],
): boolean {
  const drafts = Array.isArray(client.drafts) ? client.drafts : [];
  const draft: unknown = typeof at === 'number' ? drafts[at] : undefined;
  const put = (next: readonly unknown[]): boolean => {
    client.drafts = next;
    return true;
  };
  const [field, ...deeper] = path;
  if (isObject(draft) && field !== undefined) {
    const next: Record<string, unknown> = { ...draft };
    if (field === 'style' && deeper.length > 0 && isObject(next.style))
      next.style = withoutPart(next.style, deeper);
    else if (field === 'style') next.style = DEFAULT_STYLE;
    else if (field === 'comparison' || field === 'acknowledgedReduction') next[field] = null;
    else if (field === 'id') next.id = `draft-${at}`;
    else if (field === 'name') next.name = '';
    else if (field === 'fittings') next.fittings = withoutFitting(next.fittings, deeper);
    else if (field === 'notes') next.notes = replaced(next.notes, deeper, NO_NOTES);
    else delete next[field];
    return put(drafts.map((each, i) => (i === at ? next : each)));
  }
  const left = drafts.filter((_, i) => i !== at);
  return put(left.length > 0 ? left : [newDraft({ id: 'draft-1', name: '' })]);
}

/** Fittings without the alteration, or else the fitting, at a path; none where they are no list. */
function withoutFitting(fittings: unknown, [at, field, inner]: readonly (string | number)[]): unknown {
  if (!Array.isArray(fittings)) return [];
  const fitting: unknown = typeof at === 'number' ? fittings[at] : undefined;
  if (!isObject(fitting) || field !== 'alterations' || !Array.isArray(fitting.alterations))
    return fittings.filter((_, i) => i !== at);
  const alterations = fitting.alterations.filter((_, i) => i !== inner);
  return fittings.map((each: unknown, i) => (i === at ? { ...fitting, alterations } : each));
}

function replaceInStyle(own: Record<string, unknown>, path: readonly (string | number)[]): boolean {
  const [field, ...inner] = path;
  if (field !== 'style') {
    own[String(field)] = '';
    return true;
  }
  if (inner.length === 0 || !isObject(own.style)) return false;
  own.style = withoutPart(own.style, inner);
  return true;
}

/** A style with the usual value at a path, or without the part where there is no usual one; a bad wedge is left out. */
function withoutPart(style: Readonly<Record<string, unknown>>, path: readonly (string | number)[]): unknown {
  const [field, at] = path;
  const list = style[String(field)];
  if (Array.isArray(list) && at !== undefined)
    return { ...style, [String(field)]: list.filter((_, i) => i !== at) };
  return replaced(style, path, DEFAULT_STYLE);
}

function replaced(data: unknown, path: readonly (string | number)[], usual: unknown): unknown {
  const [name, ...inner] = path;
  if (name === undefined || !isObject(data)) return usual;
  const instead = isObject(usual) ? usual[name] : undefined;
  const part = replaced(data[name], inner, instead);
  const { [name]: _, ...others } = data;
  return part === undefined ? others : { ...others, [name]: part };
}

function draftNamed(data: Record<string, unknown>, [field, at]: readonly (string | number)[]): string | null {
  if (field !== 'drafts' || typeof at !== 'number' || !Array.isArray(data.drafts)) return null;
  const draft: unknown = data.drafts[at];
  return isObject(draft) && typeof draft.name === 'string' ? draft.name : '';
}
