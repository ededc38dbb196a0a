// Commands and events of WebDriver BiDi, over a WebSocket.

import { WebSocket } from 'undici';

export interface Bidi {
  /** Gives the command's result; an error that names the command where it failed. */
  readonly send: <Result>(method: string, params: object) => Promise<Result>;
  readonly on: (event: string, heard: (params: Readonly<Record<string, unknown>>) => void) => void;
  readonly close: () => void;
}

interface Message {
  readonly type: 'success' | 'error' | 'event';
  readonly id?: number;
  readonly result?: unknown;
  readonly message?: string;
  readonly method?: string;
  readonly params?: Readonly<Record<string, unknown>>;
}

export async function connectBidi(address: string): Promise<Bidi> {
  const socket = new WebSocket(address);
  const waiting = new Map<
    number,
    { method: string; done: (result: never) => void; failed: (error: Error) => void }
  >();
  const listeners = new Map<string, (params: Readonly<Record<string, unknown>>) => void>();
  socket.addEventListener('message', ({ data }) => {
    const message = JSON.parse(String(data)) as Message;
    if (message.type === 'event') {
      listeners.get(message.method ?? '')?.(message.params ?? {});
      return;
    }
    const asked = waiting.get(message.id ?? 0);
    waiting.delete(message.id ?? 0);
    if (message.type === 'error') asked?.failed(new Error(`${asked.method}: ${message.message}`));
    else asked?.done(message.result as never);
  });
  await new Promise<void>((open, failed) => {
    socket.addEventListener('open', () => open());
    socket.addEventListener('error', () => failed(new Error(`${address} does not answer`)));
  });
  socket.addEventListener('close', () => {
    for (const { method, failed } of waiting.values()) failed(new Error(`${method}: the browser has gone`));
  });
  let last = 0;
  return {
    send: (method, params) =>
      new Promise((done, failed) => {
        last += 1;
        waiting.set(last, { method, done, failed });
        socket.send(JSON.stringify({ id: last, method, params }));
      }),
    on: (event, heard) => void listeners.set(event, heard),
    close: () => socket.close(),
  };
}
