export {
  FaultyDefinitions,
  type LanOptions,
  type ServeOptions,
  type Serving,
  serve,
} from './http/serve.ts';
export { type DataPlace, dataPlace } from './workshop/data-place.ts';
