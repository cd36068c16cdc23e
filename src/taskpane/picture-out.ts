import { standalone } from '../drawing/standalone';
import type { Picture } from '../drawing/svg';

/** Pixels of a copied picture for one drawing millimetre: 12 are 305 dots an inch. */
const DENSITY = 12;
/** Browsers draw no canvas much larger than this, px. */
const LARGEST = 8000;

/** Rules of the drawings, as the page has them. */
async function rules(): Promise<string> {
  const response = await fetch('drawing.css');
  if (!response.ok) throw new Error(`drawing.css did not load (${response.status}).`);
  return response.text();
}

/**
 * Puts a picture on the clipboard, for a letter or a ticket; where that may not be, saves it as a file.
 * @returns what was done
 */
export async function copyPicture(picture: Picture, name: string): Promise<string> {
  try {
    // The clipboard takes the promise, since it must be asked while the maker's click still counts.
    await navigator.clipboard.write([
      new ClipboardItem({ 'image/png': rules().then((css) => png(picture, name, css)) }),
    ]);
    return `${name} is on the clipboard as a picture.`;
  } catch {
    await savePicture(picture, name);
    return `${name} may not be put on the clipboard here, so it is saved as a file.`;
  }
}

/** Saves a picture as an SVG file. @returns what was done */
export async function savePicture(picture: Picture, name: string): Promise<string> {
  const svg = standalone(picture, name, await rules());
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  link.download = `${name}.svg`.replace(/[\\/:*?"<>|]/g, ' ');
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
  return `${name} is saved as a file in SVG.`;
}

async function png(picture: Picture, name: string, css: string): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([standalone(picture, name, css)], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const { width, height } = image;
    const scale = Math.min((DENSITY * 25.4) / 96, LARGEST / Math.max(width, height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(width * scale);
    canvas.height = Math.round(height * scale);
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) =>
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('The picture came out empty.'))), 'image/png'),
    );
  } finally {
    URL.revokeObjectURL(address);
  }
}
