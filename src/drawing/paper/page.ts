import type { Marks } from '../mark';

/** A sheet of paper, mm. */
export interface PaperFormat {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** ISO 216 and North American letter paper, upright. */
export const PAPERS = {
  A4: { name: 'A4', width: 210, height: 297 },
  A3: { name: 'A3', width: 297, height: 420 },
  Letter: { name: 'Letter', width: 215.9, height: 279.4 },
} as const satisfies Record<string, PaperFormat>;

/** What every page says of the job. */
export interface JobFacts {
  /** Name of the run, as given. */
  readonly run: string;
  /** Date of the plan in words, as given: nothing here reads a clock. */
  readonly date: string;
  readonly paper: PaperFormat;
}

/** A page of a document, drawn when it is wanted. */
export interface Page {
  readonly width: number;
  readonly height: number;
  /** What it shows, for progress and bookmarks. */
  readonly name: string;
  /** Its marks, mm from the upper left corner; the page is the n-th of so many. */
  draw(n: number, of: number): Marks;
}

/** Printers leave this much of a page's edge white, mm. */
export const MARGIN = 5;

const LEAST = 90;
const MOST = 2000;

/** Reads "A4", "A3", "Letter" or "WxH" in mm. @returns undefined where it is none of these, or too small to draw on */
export function paperOf(words: string): PaperFormat | undefined {
  const known = Object.values(PAPERS).find(({ name }) => name.toLowerCase() === words.trim().toLowerCase());
  if (known) return known;
  const match = /^(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)$/i.exec(words.trim());
  const [width, height] = [Number(match?.[1]), Number(match?.[2])];
  if (!match || Math.min(width, height) < LEAST || Math.max(width, height) > MOST) return undefined;
  return { name: `${width} × ${height} mm`, width, height };
}
