export const planEn = {} as const satisfies Record<string, string>;
