import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { chromiumPath } from './browser';

/**
 * Draws the icons that the office suite shows: the stacked lifts on paper, so that they stand out from a light and from
 * a dark ribbon. `npx tsx .ci/icons.ts` writes them; they are kept with the source because drawing them needs a browser.
 */

const folder = fileURLToPath(new URL('../src/office/icons/', import.meta.url));

/** Ribbon: 16 to 80. Lists of add-ins: 32 and 64. */
const SIZES = [16, 20, 24, 32, 40, 48, 64, 80];

/** An icon of a size in px, all of its edges on whole pixels but the slant of the lifts. */
export function icon(size: number): string {
  const wide = size < 32 ? 1 : Math.max(2, Math.round(size / 24));
  const gap = Math.max(1, Math.round(size / 20));
  const margin = Math.max(1, Math.round(size / 16));
  const lift = Math.floor((size - 2 * margin - 3 * gap - wide) / 3);
  const top = Math.floor((size - (3 * (lift + gap) + wide)) / 2);
  const left = margin + wide / 2;
  /** A lift by its number from the last down; its front slants. */
  const outline = (k: number) => {
    const [upper, lower] = [top + k * (lift + gap) + wide / 2, top + k * (lift + gap) + lift - wide / 2];
    const front = margin + Math.round((size - 2 * margin) * (0.36 + 0.29 * k)) - wide / 2;
    return `M${left} ${lower}H${front}L${front - Math.round(1.4 * (lower - upper))} ${upper}H${left}Z`;
  };
  const ground = top + 3 * (lift + gap) + wide / 2;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${size}" height="${size}" viewBox="0 0 ${size} ${size}">`,
    `<rect width="${size}" height="${size}" rx="${size / 16}" fill="#fff"/>`,
    `<path d="${[0, 1, 2].map(outline).join('')}M${margin} ${ground}H${size - margin}" `,
    `fill="none" stroke="#14191b" stroke-width="${wide}" stroke-linejoin="round"/></svg>`,
  ].join('');
}

async function main(): Promise<void> {
  mkdirSync(folder, { recursive: true });
  const browser = await chromium.launch({ executablePath: chromiumPath(), args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const page = await browser.newPage();
    for (const size of SIZES) {
      await page.setViewportSize({ width: size, height: size });
      await page.setContent(`<style>body{margin:0}svg{display:block}</style>${icon(size)}`);
      writeFileSync(`${folder}icon-${size}.png`, await page.screenshot({ omitBackground: true }));
    }
  } finally {
    await browser.close();
  }
}

await main();
