/** How the two pieces of a pair are to match: not at all, beside each other, or mirrored across the backbone. */
export const PAIRS = ['anywhere', 'side by side', 'across the backbone'] as const;
export type Pairs = (typeof PAIRS)[number];
