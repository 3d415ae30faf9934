/** A number as the link holds it; nothing where the field is empty. */
export const textOf = (figure: string, unit: string): string | undefined =>
  figure.trim() === '' ? undefined : `${figure.trim().replace(',', '.')} ${unit}`.trim();
