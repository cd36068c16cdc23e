import { standalone } from '../drawing/standalone';
import type { Picture } from '../drawing/svg';
import type { Host } from '../host/host';
import { type FilesOut, handOverOnly, nameOfFile, whereItWent } from './files-out';

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
 * Puts a picture on the clipboard, for a letter or a ticket; where that may not be, does with it what else can be done.
 * @returns what was done
 */
export async function copyPicture(picture: Picture, name: string, otherwise: () => Promise<string>): Promise<string> {
  try {
    // The clipboard takes the promise, since it must be asked while the maker's click still counts.
    await navigator.clipboard.write([
      new ClipboardItem({ 'image/png': rules().then((css) => png(picture, name, css)) }),
    ]);
    return `${name} is on the clipboard as a picture.`;
  } catch {
    return `${name} may not be put on the clipboard here. ${await otherwise()}`;
  }
}

/** Hands a picture over as an SVG file. @returns what became of it */
export async function savePicture(picture: Picture, name: string, out: FilesOut): Promise<string> {
  const file = nameOfFile(`${name}.svg`);
  handOverOnly(standalone(picture, name, await rules()), 'image/svg+xml', file);
  return whereItWent(file, out);
}

/** Puts a picture into the sheet, where the host can. @returns what was done */
export async function putPicture(picture: Picture, name: string, put: Host['insertPicture'] & {}): Promise<string> {
  const blob = await png(picture, name, await rules());
  const sheet = await put({ png: await base64(blob), name, description: picture.label, width: picture.width });
  return `${name} is in the sheet ${sheet}, at the cell that is selected.`;
}

/** Bytes as text, without what says their kind. */
async function base64(blob: Blob): Promise<string> {
  const reader = new FileReader();
  reader.readAsDataURL(blob);
  await new Promise((resolve, reject) => {
    reader.onload = resolve;
    reader.onerror = () => reject(reader.error ?? new Error('The picture could not be read.'));
  });
  return String(reader.result).replace(/^[^,]*,/, '');
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
