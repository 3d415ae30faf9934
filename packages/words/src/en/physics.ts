export const physicsEn = {} as const satisfies Record<string, string>;
