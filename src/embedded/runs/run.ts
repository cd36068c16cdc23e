import type { IWorkbookData } from '@univerjs/core';

/** What the list has of a run that this browser keeps. Times are ms since 1970. */
export interface Run {
  /** Names it in the page's address; never given to another. */
  readonly id: string;
  readonly name: string;
  readonly changed: number;
  /** Raised by each change that is kept, from 1. */
  readonly version: number;
  /** The visit that kept it last. */
  readonly by: string;
  /** When it was put into the bin. */
  readonly removed?: number;
  /** What is kept cannot be opened. */
  readonly damaged?: true;
}

/** A change that lies before what a run holds now, and the way back before it. */
export interface EarlierState {
  readonly key: number;
  readonly run: string;
  /** When the change was kept. */
  readonly at: number;
  /** The change, in words. */
  readonly what: string;
  /** What the workbook before it takes, packed. */
  readonly bytes: number;
}

/** A state that is yet to be kept: a change, and the workbook before it, packed. */
export interface NewState {
  readonly at: number;
  readonly what: string;
  readonly packed: Uint8Array;
}

/** A run's content at its place: what is to be kept of it. */
export interface Change {
  readonly id: string;
  readonly workbook: IWorkbookData;
  /** The version that it was made from; 0 where nothing is kept of the run yet. */
  readonly from: number;
  readonly by: string;
  /** When the maker changed something; undefined where nothing was but looks or what is worked out. */
  readonly at?: number | undefined;
  /** The version that it becomes; one more than it was unless said otherwise. */
  readonly version?: number;
  readonly state?: NewState | undefined;
}

/** A run was changed, or removed, by another visit than the one that wants to keep it: neither may overwrite the other. */
export class Overtaken extends Error {
  constructor(readonly run: Run | undefined) {
    super('The run was changed in another tab.');
  }
}

/** How long the bin keeps a run, ms. */
export const BIN_KEEPS = 30 * 24 * 60 * 60 * 1000;

/** A new name for a visit, or for a run in the page's address. */
export function newId(): string {
  const letters = 'abcdefghjkmnpqrstuvwxyz23456789';
  return Array.from(crypto.getRandomValues(new Uint8Array(8)), (byte) => letters[byte % letters.length]).join('');
}
