export const repairEn = {} as const satisfies Record<string, string>;
