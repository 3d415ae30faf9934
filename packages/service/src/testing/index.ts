export { arbitraryVisit } from './arbitrary-visit.ts';
export { shippedEquipment } from './shipped.ts';
