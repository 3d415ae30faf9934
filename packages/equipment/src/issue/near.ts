/** Letters to insert, drop, change or swap with the next to get from one word to the other. */
export const editDistance = (a: string, b: string): number => {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i += 1) rows.push(nextRow(a, b, i, rows));
  return rows[a.length]?.[b.length] ?? 0;
};

const nextRow = (a: string, b: string, i: number, rows: readonly (readonly number[])[]): number[] => {
  const row = [i];
  const at = (r: number, c: number): number => rows[r]?.[c] ?? 0;
  for (let j = 1; j <= b.length; j += 1) {
    const same = a[i - 1] === b[j - 1] ? 0 : 1;
    const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
    const plain = Math.min(at(i - 1, j) + 1, (row[j - 1] ?? 0) + 1, at(i - 1, j - 1) + same);
    row.push(swapped ? Math.min(plain, at(i - 2, j - 2) + 1) : plain);
  }
  return row;
};

const longest = 60;

/** The known word that was probably meant, if one is close enough. */
export const nearest = (word: string, known: Iterable<string>): string | undefined => {
  if (word.length > longest) return undefined;
  const allowed = Math.max(1, Math.floor(word.length / 3));
  let best: { readonly word: string; readonly far: number } | undefined;
  for (const candidate of known) {
    if (Math.abs(candidate.length - word.length) > allowed) continue;
    const far = editDistance(word.toLowerCase(), candidate.toLowerCase());
    if (far <= allowed && (best === undefined || far < best.far)) best = { word: candidate, far };
  }
  return best?.word;
};
