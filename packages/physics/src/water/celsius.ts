export const celsiusZero = 273.15;

export const toCelsius = (temperature: number): number => temperature - celsiusZero;
