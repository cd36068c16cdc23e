/** A colour as red, green and blue from 0 to 255 and how much it covers, 0…1. */
export interface Colour {
  readonly red: number;
  readonly green: number;
  readonly blue: number;
  readonly cover: number;
}

/** Reads #rgb, #rrggbb, #rrggbbaa, rgb(…) and rgba(…); undefined for anything else. */
export function readColour(text: string): Colour | undefined {
  const hex = /^#([\da-f]{3}|[\da-f]{6}|[\da-f]{8})$/i.exec(text.trim())?.[1];
  if (hex) {
    const pairs = hex.length === 3 ? [...hex].map((digit) => digit + digit) : (hex.match(/../g) as string[]);
    const [red = 0, green = 0, blue = 0, cover = 255] = pairs.map((pair) => parseInt(pair, 16));
    return { red, green, blue, cover: cover / 255 };
  }
  const parts = /^rgba?\(([^)]*)\)$/i
    .exec(text.trim())?.[1]
    ?.split(/[\s,/]+/)
    .filter(Boolean);
  if (!parts || parts.length < 3 || parts.length > 4) return undefined;
  const [red, green, blue] = parts.slice(0, 3).map(Number);
  const last = parts[3] ?? '1';
  const cover = last.endsWith('%') ? Number(last.slice(0, -1)) / 100 : Number(last);
  if ([red, green, blue, cover].some((part) => part === undefined || Number.isNaN(part))) return undefined;
  return { red, green, blue, cover } as Colour;
}

/** As a canvas takes it. */
export function writeColour({ red, green, blue, cover }: Colour): string {
  return cover === 1 ? `rgb(${red}, ${green}, ${blue})` : `rgba(${red}, ${green}, ${blue}, ${cover})`;
}
