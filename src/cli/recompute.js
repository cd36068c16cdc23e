#!/usr/bin/env node
// The command; what it does stands in recompute.ts, which the build packs together.
import { existsSync } from 'node:fs';

const built = new URL('../../dist/recompute.cjs', import.meta.url);
if (existsSync(built)) await import(built);
else {
  console.error('There is nothing to work with yet. Run "npm run build" first.');
  process.exitCode = 2;
}
