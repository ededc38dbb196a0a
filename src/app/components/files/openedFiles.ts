// Files that the device opens with the installed page: File Handling API (W3C Community Group).

/** What the browser hands over; it is there where the page can be installed. */
interface LaunchQueue {
  setConsumer(consume: (launch: { readonly files?: readonly FileSystemFileHandle[] }) => void): void;
}

/** Gives the text of every file that is opened with the page from now on, empty where it cannot be read. */
export function onOpenedFile(take: (text: string) => void): void {
  const { launchQueue } = window as { launchQueue?: LaunchQueue };
  launchQueue?.setConsumer(({ files }) => {
    const [handle] = files ?? [];
    if (!handle) return;
    handle
      .getFile()
      .then((file) => file.text())
      .catch(() => '')
      .then(take, () => undefined);
  });
}
