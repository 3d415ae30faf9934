export const unitsEn = {} as const satisfies Record<string, string>;
