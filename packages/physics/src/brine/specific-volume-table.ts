/*
  Specific volume of sodium chloride solutions at 100 kPa, cm3/g: Rogers & Pitzer (1982), J. Phys. Chem. Ref. Data 11,
  15, seen in a handbook reprint. The same numbers stand in checks/data/nacl-specific-volume.csv; a check compares each.
*/

/** mol of salt per kg of water. */
export const molalities: readonly number[] = [0.1, 0.25, 0.5, 0.75, 1, 2, 3, 4, 5];

export type SpecificVolumes = { readonly celsius: number; readonly volumes: readonly number[] };

export const specificVolumes: readonly SpecificVolumes[] = [
  {
    celsius: 0,
    volumes: [0.995732, 0.989259, 0.978889, 0.968991, 0.959525, 0.925426, 0.896292, 0.870996, 0.848646],
  },
  {
    celsius: 10,
    volumes: [0.995998, 0.989781, 0.979804, 0.970256, 0.961101, 0.927905, 0.899262, 0.874201, 0.851958],
  },
  {
    celsius: 20,
    volumes: [0.99762, 0.991564, 0.981833, 0.972505, 0.963544, 0.930909, 0.902565, 0.877643, 0.855469],
  },
  {
    celsius: 25,
    volumes: [0.998834, 0.992832, 0.983185, 0.973932, 0.965038, 0.93259, 0.904339, 0.879457, 0.857301],
  },
  {
    celsius: 30,
    volumes: [1.000279, 0.994319, 0.984735, 0.975539, 0.966694, 0.934382, 0.906194, 0.881334, 0.859185],
  },
  {
    celsius: 40,
    volumes: [1.003796, 0.997883, 0.988374, 0.979243, 0.970455, 0.938287, 0.910145, 0.885276, 0.863108],
  },
  {
    celsius: 50,
    volumes: [1.008064, 1.002161, 0.992668, 0.983551, 0.974772, 0.942603, 0.914411, 0.889473, 0.867241],
  },
  { celsius: 60, volumes: [1.013, 1.0071, 0.9976, 0.9885, 0.9797, 0.9474, 0.9191, 0.894, 0.8716] },
  { celsius: 70, volumes: [1.0186, 1.0127, 1.0031, 0.9939, 0.9851, 0.9526, 0.924, 0.8987, 0.8762] },
  { celsius: 80, volumes: [1.0249, 1.0188, 1.0092, 0.9999, 0.9909, 0.9581, 0.9293, 0.9037, 0.8809] },
];
