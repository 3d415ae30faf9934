export const equipmentEn = {} as const satisfies Record<string, string>;
