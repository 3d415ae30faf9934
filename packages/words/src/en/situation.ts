export const situationEn = {} as const satisfies Record<string, string>;
