/*
 * A source line names one page or example; several lines may come from one work. The count that people see is of works,
 * each once, and lines that name none (definitions, elementary arithmetic, geometry of our own) add nothing to it.
 */
const works: readonly (readonly [pattern: RegExp, work: string])[] = [
  [/Rogers & Pitzer/u, 'Rogers and Pitzer (1982), volumetric properties of sodium chloride solutions'],
  [/Sparrow/u, 'Sparrow (2003), sodium chloride solutions'],
  [/IAPWS-IF97/u, 'IAPWS Industrial Formulation 1997'],
  [/IAPWS/u, 'IAPWS-95 and IAPWS R12-08'],
  [/Salt Institute/u, 'Salt Institute, solubility of salt'],
  [/Poradnik/u, 'Poradnik fizykochemiczny (1974)'],
  [/Hilderbrand/u, 'Hilderbrand (1999), salt brines'],
  [/NIST SP 811/u, 'NIST SP 811 (2008)'],
  [/Ohio EPA/u, 'Ohio EPA, ambient ground water'],
  [/USGS 05079250/u, 'USGS, County Ditch 65'],
  [/Hem \(1989\)/u, 'Hem (1989), Water-Supply Paper 2254'],
  [/Stuyfzand/u, 'Stuyfzand (1987)'],
  [/Davis/u, 'Davis (2010), Water and Wastewater Engineering'],
  [/MWH/u, 'MWH Water Treatment (2012)'],
  [/ENVE 303/u, 'ENVE 303 tutorial (2020-21)'],
  [/Spellman/u, 'Spellman (2004), Mathematics Manual'],
  [/Virginia 12 VAC/u, 'Virginia and Illinois state rules'],
  [/UFC 3-240/u, 'UFC 3-240-13FN (2005)'],
  [/Akgiray/u, 'Akgiray and Saatçı (2001)'],
  [/Wen & Yu/u, 'Wen and Yu (1966)'],
  [/Richardson & Zaki/u, 'Richardson and Zaki (1954), drag of Barati (2014)'],
  [/Ergun \(1952\)/u, 'Ergun (1952)'],
  [/Colebrook/u, 'Colebrook (1939)'],
  [/ISO 5167/u, 'ISO 5167-2:2003'],
  [/Gosline|liquid_jet_pump/u, 'Gosline and O’Brien (1934), Cunningham (1957)'],
  [/JCGM 106|GUM/u, 'JCGM 100 and 106'],
  [/Ottosen|Kadane/u, 'Ottosen and Jensen (2012), after Kadane and Simon (1977)'],
  [/Hadley|newsvendor/u, 'Hadley and Whitin (1963)'],
];

export const workOf = (source: string): string | undefined =>
  works.find(([pattern]) => pattern.test(source))?.[1];
