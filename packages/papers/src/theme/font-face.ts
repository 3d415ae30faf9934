/** Only a font in base64 goes into the style sheet: nothing else can leave its quotes. */
const isFont = (uri: string): boolean => /^data:(?:font|application)\/[\w.+-]+;base64,[\w+/=]+$/u.test(uri);

/** The typeface carried along in the file; nothing where none is given. */
export const fontFace = (uri: string | undefined): string =>
  uri !== undefined && isFont(uri)
    ? `@font-face{font-family:"Atkinson Hyperlegible Next Variable";src:url("${uri}") format("woff2");font-weight:200 800;font-display:swap}`
    : '';
