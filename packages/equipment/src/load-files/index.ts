export { type DefinitionFile, filesUnder } from './files-under.ts';
export {
  compileFiles,
  type DefinitionFiles,
  loadEquipment,
  readDefinitions,
  shippedDefinitions,
} from './load-equipment.ts';
