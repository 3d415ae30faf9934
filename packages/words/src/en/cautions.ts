export const cautionsEn = {} as const satisfies Record<string, string>;
