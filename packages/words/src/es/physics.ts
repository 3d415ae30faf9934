import type { physicsEn } from '../en/physics.ts';
import type { Translation } from '../translation.ts';
export const physicsEs = {} as const satisfies Translation<typeof physicsEn>;
