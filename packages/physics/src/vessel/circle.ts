/** Area of a circle from its diameter. */
export const circle = (diameter: number): number => (Math.PI / 4) * diameter ** 2;
