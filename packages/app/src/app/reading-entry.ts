/*
 * Where features meet: finding the fault and proving both take readings, and features do not import one another.
 */
export type { ReadingInput } from '../features/readings/reading-input.ts';
export { writtenReading } from '../features/readings/reading-input.ts';
export { ReadingScreen, type ReadingScreenProps } from '../features/readings/screens/reading-screen.tsx';
