// The Content-Security-Policy of the page: nothing leaves it, and nothing comes from another host.

/** What may be run, styled, fetched and started; the rest is the same for every build. */
interface Sources {
  readonly scripts: string;
  readonly styles: string;
  readonly fetched: string;
  readonly fonts: string;
  readonly workers: string;
  readonly manifest: string;
}

/** WebAssembly, and no other code from text: the shaping of letters for a print. */
const WASM = "'wasm-unsafe-eval'";

/** Own files only, from where the page came from. */
export const FOLDER_POLICY = policy({
  scripts: `'self' ${WASM}`,
  styles: "'self'",
  fetched: "'self'",
  fonts: "'self'",
  workers: "'self'",
  manifest: "'self'",
});

/**
 * The policy of the page in one file: its own script and style by their sums, workers made of its own text, and what stands in
 * the file itself. No request is made.
 *
 * @param scripts sums of the inline scripts, as `sha256-…`
 */
export const singleFilePolicy = (scripts: readonly string[], styles: readonly string[]): string =>
  policy({
    scripts: `${quoted(scripts)} ${WASM}`,
    styles: quoted(styles),
    fetched: 'data:',
    fonts: 'data:',
    workers: 'blob:',
    manifest: "'none'",
  });

const quoted = (sums: readonly string[]): string => sums.map((sum) => `'${sum}'`).join(' ');

function policy({ scripts, styles, fetched, fonts, workers, manifest }: Sources): string {
  return [
    "default-src 'none'",
    `script-src ${scripts}`,
    `style-src ${styles}`,
    "img-src 'self' data: blob:",
    `font-src ${fonts}`,
    `connect-src ${fetched}`,
    `manifest-src ${manifest}`,
    `worker-src ${workers}`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}
