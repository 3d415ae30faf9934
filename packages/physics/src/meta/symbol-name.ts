/** The catalogue key under which an input or output is named: 'saltDose' → 'symbol.salt-dose'. */
export const symbolName = (name: string): string =>
  `symbol.${name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
