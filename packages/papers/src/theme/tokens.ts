/** The look in numbers. Every colour of a paper or drawing comes from here. */
type Tone = Readonly<Record<(typeof tones)[number], string>>;

const tones = [
  'bench',
  'sheet',
  'field',
  'ink',
  'ink-2',
  'line',
  'rule',
  'accent',
  'accent-fill',
  'on-accent',
  'accent-wash',
  'caution',
  'on-caution',
  'fail',
  'fail-wash',
  'raw-wash',
  'raw-mark',
  'treated-wash',
  'treated-mark',
  'brine-wash',
  'brine-mark',
  'drain-wash',
  'drain-mark',
  'metal',
  'metal-mark',
  'solid',
] as const;

const light: Tone = {
  bench: '#d8dfdf',
  sheet: '#f6f8f7',
  field: '#ffffff',
  ink: '#14222a',
  'ink-2': '#44545c',
  line: '#66767d',
  rule: '#bcc7c9',
  accent: '#0a675b',
  'accent-fill': '#0a675b',
  'on-accent': '#ffffff',
  'accent-wash': '#dbeae6',
  caution: '#f0b63a',
  'on-caution': '#14222a',
  fail: '#a02a1c',
  'fail-wash': '#f6e4e0',
  'raw-wash': '#c3d1dc',
  'raw-mark': '#2f4d63',
  'treated-wash': '#e3eff5',
  'treated-mark': '#4b83a3',
  'brine-wash': '#f1e3bf',
  'brine-mark': '#74560f',
  'drain-wash': '#dcd8d3',
  'drain-mark': '#5b5249',
  metal: '#e9edec',
  'metal-mark': '#7b8a90',
  solid: '#14222a',
};

const dark: Tone = {
  bench: '#05080a',
  sheet: '#0d1316',
  field: '#161f23',
  ink: '#e4ebe9',
  'ink-2': '#a9b7ba',
  line: '#7c8d93',
  rule: '#2c393e',
  accent: '#5fcfb9',
  'accent-fill': '#46b3a0',
  'on-accent': '#031b16',
  'accent-wash': '#12332d',
  caution: '#e2aa35',
  'on-caution': '#16130a',
  fail: '#ff917c',
  'fail-wash': '#391d18',
  'raw-wash': '#24394a',
  'raw-mark': '#8db2cf',
  'treated-wash': '#122731',
  'treated-mark': '#6fb3d2',
  'brine-wash': '#3b3213',
  'brine-mark': '#e2c568',
  'drain-wash': '#2d2a27',
  'drain-mark': '#b5aba0',
  metal: '#1e282d',
  'metal-mark': '#6d7f86',
  solid: '#aab8b8',
};

/** Ink on white: no washes, so pattern and word carry everything. */
const contrast: Tone = {
  bench: '#ffffff',
  sheet: '#ffffff',
  field: '#ffffff',
  ink: '#000000',
  'ink-2': '#1a1a1a',
  line: '#000000',
  rule: '#4a4a4a',
  accent: '#00443b',
  'accent-fill': '#00443b',
  'on-accent': '#ffffff',
  'accent-wash': '#ffffff',
  caution: '#ffffff',
  'on-caution': '#000000',
  fail: '#7d0f05',
  'fail-wash': '#ffffff',
  'raw-wash': '#ffffff',
  'raw-mark': '#000000',
  'treated-wash': '#ffffff',
  'treated-mark': '#000000',
  'brine-wash': '#ffffff',
  'brine-mark': '#000000',
  'drain-wash': '#ffffff',
  'drain-mark': '#000000',
  metal: '#ffffff',
  'metal-mark': '#000000',
  solid: '#000000',
};

const declared = (tone: Tone): string => tones.map((name) => `--${name}:${tone[name]}`).join(';');

const weights =
  '--w-fine:.75px;--w-rule:1px;--w-edge:1.75px;--w-cut:2.6px;--wt:420;--wt-value:560;--wt-strong:680';
const heavier =
  '--w-fine:1.25px;--w-rule:1.5px;--w-edge:2.5px;--w-cut:3.6px;--wt:520;--wt-value:640;--wt-strong:760';

const family =
  '"Atkinson Hyperlegible Next Variable","Atkinson Hyperlegible Next","Atkinson Hyperlegible",system-ui,sans-serif';

/** Light, dark by the device or by `data-theme`, contrast, and always light on paper. */
export const tokenCss = [
  `:root{--font:${family};${weights};${declared(light)};color-scheme:light}`,
  `:root[data-theme="dark"]{${declared(dark)};color-scheme:dark}`,
  `@media screen and (prefers-color-scheme:dark){:root:not([data-theme]){${declared(dark)};color-scheme:dark}}`,
  `:root[data-theme="contrast"]{${heavier};${declared(contrast)};color-scheme:light}`,
  `@media print{:root,:root[data-theme="dark"]{${declared({ ...light, bench: '#ffffff', sheet: '#ffffff' })};color-scheme:light}}`,
].join('\n');
