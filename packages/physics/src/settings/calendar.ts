/** Seconds. The year is that of 365.25 days. */
export const day = 86_400;
export const year = 365.25 * day;
