/** The family of a unit that nobody has described; the engine's own word for it, without the engine. */
export const undescribed = 'undescribed';
