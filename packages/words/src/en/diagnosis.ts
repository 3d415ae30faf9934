export const diagnosisEn = {} as const satisfies Record<string, string>;
