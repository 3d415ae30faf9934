import type { SourceStatus } from './equation.ts';

/** Where an equation or a value comes from. Citations stay in the language of their source. */
export type Source = { readonly cite: string; readonly status: SourceStatus };

export const sources = {
  'common-practice': { cite: 'Common practice of the trade, no source', status: 'common-practice' },
  ours: { cite: 'Our own decision', status: 'ours' },
  memory: { cite: 'From memory, not confirmed', status: 'memory' },
  definition: { cite: 'By definition', status: 'seen' },
  'mass-balance': { cite: 'Conservation of mass and charge', status: 'seen' },
  geometry: { cite: 'Geometry', status: 'seen' },
  visit: { cite: 'Told, read or measured on this visit', status: 'seen' },
  'plumbing-code-nj-2018': {
    cite: 'New Jersey plumbing code 2018, chapter 9, indirect waste: air gap',
    status: 'seen',
  },
  'ergun-1952': {
    cite: 'Ergun, S. (1952) Fluid flow through packed columns, Chem. Eng. Prog. 48, 89-94',
    status: 'second-hand',
  },
  'akgiray-saatci-2001': {
    cite: 'Akgiray, Ö. and Saatçı, A. M. (2001) A new look at filter backwash hydraulics, Water Supply 1(2), 65 (abstract)',
    status: 'second-hand',
  },
  'richardson-zaki-1954': {
    cite: 'Richardson, J. F. and Zaki, W. N. (1954) Sedimentation and fluidisation, Trans. Inst. Chem. Eng. 32, 35-53',
    status: 'memory',
  },
  'barati-2014': {
    cite: 'Barati, R., Neyshabouri, S. A. A. S. and Ahmadi, G. (2014) Powder Technology 257, 11-19, as written out in the fluids library',
    status: 'second-hand',
  },
  'wen-yu-1966': {
    cite: 'Wen, C. Y. and Yu, Y. H. (1966) A generalized method for predicting the minimum fluidization velocity, AIChE J. 12, 610-612',
    status: 'second-hand',
  },
  'davis-2010': {
    cite: 'Davis, M. L. (2010) Water and Wastewater Engineering, McGraw-Hill, Table 11-2 and Example 11-2',
    status: 'seen',
  },
  'mwh-2012': {
    cite: 'Crittenden et al. (2012) MWH Water Treatment, 3rd ed., solutions to problems 11-1 and 11-4',
    status: 'seen',
  },
  'colebrook-1939': {
    cite: 'Colebrook, C. F. (1939) Turbulent flow in pipes, J. Inst. Civ. Eng. 11, 133-156',
    status: 'second-hand',
  },
  'darcy-weisbach': { cite: 'Darcy and Weisbach, as in any textbook of fluid mechanics', status: 'memory' },
  'bernoulli-orifice': {
    cite: 'Bernoulli with a discharge coefficient, as in any textbook of fluid mechanics',
    status: 'memory',
  },
  'iso-5167-2': {
    cite: 'ISO 5167-2:2003 Orifice plates, as quoted in the fluids library',
    status: 'second-hand',
  },
  'cunningham-1957': {
    cite: 'Gosline and O’Brien (1934); Cunningham (1957); ESDU 85032, as written out in the fluids library',
    status: 'second-hand',
  },
  'jcgm-100': {
    cite: 'JCGM 100:2008 Guide to the expression of uncertainty in measurement',
    status: 'memory',
  },
  bayes: { cite: 'Bayes’ rule', status: 'seen' },
  newsvendor: { cite: 'The newsvendor problem, as in any textbook of operations research', status: 'memory' },
  'hadley-whitin-1963': {
    cite: 'Hadley, G. and Whitin, T. M. (1963) Analysis of Inventory Systems; Feeney and Sherbrooke (1966)',
    status: 'memory',
  },
  'iapws-sr6-08': {
    cite: 'IAPWS SR6-08(2011) Properties of Liquid Water at 0.1 MPa',
    status: 'second-hand',
  },
  'iapws-if97': {
    cite: 'IAPWS R7-97(2012) Industrial Formulation 1997, saturation-pressure equation',
    status: 'second-hand',
  },
  'rogers-pitzer-1982': {
    cite: 'Rogers, P. S. Z. and Pitzer, K. S. (1982) Volumetric properties of aqueous sodium chloride solutions, J. Phys. Chem. Ref. Data 11, 15 (handbook reprint)',
    status: 'seen',
  },
  'salt-institute': { cite: 'Salt Institute, Solubility of Salt at Various Temperatures', status: 'seen' },
  'sparrow-2003': {
    cite: 'Sparrow, B. S. (2003) Empirical equations for the thermodynamic properties of aqueous sodium chloride, Desalination 159, 161',
    status: 'second-hand',
  },
  'hilderbrand-1999': {
    cite: 'Hilderbrand, K. (1999) Preparation of Salt Brines for the Fishing Industry, Oregon State University Extension ORESU-H-99-002',
    status: 'seen',
  },
  'potassium-chloride-pages': {
    cite: 'Solubility of potassium chloride: general chemistry pages at 5, 10 and 20 °C, the rest recalled',
    status: 'memory',
  },
  'al-ghafri-2012': {
    cite: 'Al Ghafri, S., Maitland, G. C. and Trusler, J. P. M. (2012) Densities of aqueous MgCl2, CaCl2, KI, NaCl, KCl, AlCl3, J. Chem. Eng. Data 57, 1288-1304',
    status: 'second-hand',
  },
  'standard-methods-2340': {
    cite: 'Standard Methods for the Examination of Water and Wastewater, 2340 B Hardness by Calculation',
    status: 'second-hand',
  },
  'standard-methods-1030': {
    cite: 'Standard Methods for the Examination of Water and Wastewater, 1030 E Checking Correctness of Analyses',
    status: 'second-hand',
  },
  'standard-methods-2510': {
    cite: 'Standard Methods for the Examination of Water and Wastewater, 2510 B Conductivity',
    status: 'memory',
  },
  'mccleskey-2012': {
    cite: 'McCleskey, R. B., Nordstrom, D. K., Ryan, J. N. and Ball, J. W. (2012) A new method of calculating electrical conductivity with applications to natural waters, Geochim. Cosmochim. Acta 77, 369-382',
    status: 'second-hand',
  },
  'ufc-3-240-13fn': {
    cite: 'UFC 3-240-13FN (25 May 2005) Industrial Water Treatment Operation and Maintenance, 2-2.5.1.2',
    status: 'seen',
  },
  'davis-2010-softening': {
    cite: 'Davis, M. L. (2010) Water and Wastewater Engineering, McGraw-Hill, chapter 8',
    status: 'seen',
  },
  'enve-303': { cite: 'ENVE 303, 2020-21 Fall, Tutorial 8 with answers', status: 'seen' },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof sources;
