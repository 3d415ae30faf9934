export const papersEn = {} as const satisfies Record<string, string>;
