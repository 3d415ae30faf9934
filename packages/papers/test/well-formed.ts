/** What is wrong with a piece of XML: tags that do not match, stray signs, attributes without quotes. Empty when fine. */
export const xmlProblems = (xml: string): readonly string[] => {
  const open: string[] = [];
  const problems: string[] = [];
  const pieces = xml.matchAll(/<(\/?)([a-zA-Z][\w-]*)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>|([^<]+)|(<)/gu);
  for (const [all, closes, name, , single, text, stray] of pieces) {
    if (stray !== undefined) problems.push(`stray <`);
    else if (text !== undefined) problems.push(...strayAmpersands(text));
    else if (closes === '/') {
      const last = open.pop();
      if (last !== name) problems.push(`${all} closes ${last ?? 'nothing'}`);
    } else if (single !== '/' && name !== undefined) open.push(name);
  }
  return [...problems, ...open.map((name) => `<${name}> stays open`)];
};

const strayAmpersands = (text: string): readonly string[] =>
  [...text.matchAll(/&(?!(?:amp|lt|gt|quot|#\d+);)|>/gu)].map(
    () => `stray sign in “${text.trim().slice(0, 40)}”`,
  );
