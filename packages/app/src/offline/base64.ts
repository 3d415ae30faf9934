const pieceLength = 32_768;

/** In pieces, because a call takes only so many arguments. */
export const toBase64 = (bytes: Uint8Array): string => {
  let text = '';
  for (let at = 0; at < bytes.length; at += pieceLength)
    text += String.fromCharCode(...bytes.subarray(at, at + pieceLength));
  return btoa(text);
};

export const fromBase64 = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
