/**
 * SHA-256 of the style blocks that the grid puts into the page. Nothing else may bring styles or scripts along.
 * tests/browser/content-security.test.ts computes them from the page and names those that are missing or left over.
 */
export const styleBlocks: Readonly<Record<string, string>> = {
  empty: '47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU=',
  theme: 'EZuRRLbf+2M2tjG+oI/ndE7mpDofGZMg8VdJuQmUdc0=',
  dialog: 'nzTgYzXYDNe6BAHiiI7NNlfK8n/auuOAhh2t92YvuXo=',
  notices: 'CIxDM5jnsGiKqXs2v7NKCY5MzdR9gu6TtiMJrDw29AY=',
};

/** What the page may load: its own files, pictures in data addresses, and the grid's style blocks. */
export const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "connect-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  `style-src 'self' ${Object.values(styleBlocks)
    .map((hash) => `'sha256-${hash}'`)
    .join(' ')}`,
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');
