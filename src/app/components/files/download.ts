// Hands a file to the browser to be saved.

export function download(content: Uint8Array | string, type: string, name: string): void {
  const part = typeof content === 'string' ? content : new Uint8Array(content);
  const url = URL.createObjectURL(new Blob([part], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser reads the address after the click; a minute is ample.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
