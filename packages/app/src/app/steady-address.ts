/**
 * Where the app lies, from the page's base; links of the page are put in full and the base is taken away, because with
 * one some browsers look for the patterns of drawings elsewhere.
 */
export const steadyAddress = (): string => {
  const address = document.baseURI;
  for (const link of document.querySelectorAll('link')) link.href = new URL(link.href, address).href;
  document.querySelector('base')?.remove();
  return address;
};
