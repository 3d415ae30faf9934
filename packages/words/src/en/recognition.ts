export const recognitionEn = {} as const satisfies Record<string, string>;
