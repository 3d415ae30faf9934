import type { AppDatabase } from './database.ts';

export type KeptPhoto = { readonly file: string; readonly bytes: number; readonly type: string };

const longestSide = 1600;

/**
 * A photo is drawn anew at a size fit for a record, which also leaves out where it was taken, and named by its content.
 * @throws DOMException where it is no picture, or the device has no room
 */
export const keepPhoto = async (database: AppDatabase, photo: Blob, now: string): Promise<KeptPhoto> => {
  const smaller = await drawnAnew(photo);
  const bytes = await smaller.arrayBuffer();
  const hash = hexOf(await crypto.subtle.digest('SHA-256', bytes));
  await database.files.put({
    hash,
    bytes,
    type: smaller.type,
    size: bytes.byteLength,
    state: 'waiting',
    kept: now,
  });
  return { file: hash, bytes: bytes.byteLength, type: smaller.type };
};

const drawnAnew = async (photo: Blob): Promise<Blob> => {
  const picture = await createImageBitmap(photo, { imageOrientation: 'from-image' });
  const { width, height } = sizeWithin(picture.width, picture.height);
  const canvas = new OffscreenCanvas(width, height);
  canvas.getContext('2d')?.drawImage(picture, 0, 0, width, height);
  picture.close();
  return canvas.convertToBlob({ type: 'image/jpeg', quality: 0.82 });
};

/** The longest side at most 1,600 px; a smaller picture stays as it is. */
export const sizeWithin = (
  width: number,
  height: number,
): { readonly width: number; readonly height: number } => {
  const scale = Math.min(1, longestSide / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
};

const hexOf = (buffer: ArrayBuffer): string =>
  [...new Uint8Array(buffer)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
