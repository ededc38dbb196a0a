// Whether the page that is shown is of the build that the service worker in charge serves.

/** What a page is built from: its first scripts and sheets, which have the sum of what they hold in their names. */
const PARTS = 'script[src], link[rel="stylesheet"]';

/**
 * Asks the worker in charge for the page, and compares. A worker may take charge of a page that the one before it had served, before
 * any script of that page hears of it. True also where no worker is in charge, and where it does not answer.
 */
export async function isServedBuild(page: Document = document): Promise<boolean> {
  if (!navigator.serviceWorker.controller) return true;
  try {
    const answer = await fetch('./');
    if (!answer.ok) return true;
    const served = namesIn(new DOMParser().parseFromString(await answer.text(), 'text/html'));
    const own = new Set(namesIn(page));
    return served.every((name) => own.has(name));
  } catch {
    return true;
  }
}

const namesIn = (page: Document): (string | null)[] =>
  [...page.querySelectorAll(PARTS)].map((part) => part.getAttribute('src') ?? part.getAttribute('href'));
