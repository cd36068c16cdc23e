/**
 * The address on this machine that a built manifest names.
 * @throws Error where it names another, or none
 */
export function localAddress(manifest: string): URL {
  const page = /<SourceLocation DefaultValue="([^"]+)"/.exec(manifest)?.[1];
  if (!page) throw new Error('The manifest names no page. Run "npm run build" again.');
  const address = new URL('.', page);
  if (address.hostname !== 'localhost' || address.pathname !== '/') {
    throw new Error(
      `The files were built for ${address.href}, which is not this machine. ` +
        'Build them without SOLEBENCH_ADDRESS, or with one such as https://localhost:3443/.',
    );
  }
  return address;
}
