import {
  type Bore,
  type BoreLengths,
  boreFromJoins,
  boreFromLengths,
  leaksWhileShut,
  type PortGroup,
  type Span,
  type StopShift,
  stateAt,
  statesAtStops,
  transit,
} from '@brinewright/physics';
import { field, listIn, numberIn, numbersIn, textIn, textsIn } from '../json-access.ts';
import { isObject, readJson } from '../read-data.ts';
import type { Claim } from '../row.ts';

const mm = 1e-3;

const spanOf = (value: unknown): Span => {
  const [from, to] = Array.isArray(value) ? value : [];
  if (typeof from !== 'number' || typeof to !== 'number') throw new Error('two lengths expected');
  return [from * mm, to * mm];
};

const pairOf = (value: unknown): readonly [string, string] => {
  const [a, b] = Array.isArray(value) ? value : [];
  if (typeof a !== 'string' || typeof b !== 'string') throw new Error('two names expected');
  return [a, b];
};

/** The rule of both files, which state it in words: 4 mm past a seal to open, 2 mm of land to close. */
const rule = { reach: 4 * mm, cover: 2 * mm };

const lengthsOf = (body: unknown, piston: unknown): BoreLengths => ({
  chambers: listIn(body, 'chambers').map((chamber) => ({
    id: textIn(chamber, 'id'),
    port: textIn(chamber, 'port'),
    from: numberIn(chamber, 'from_mm') * mm,
    to: numberIn(chamber, 'to_mm') * mm,
  })),
  seals: listIn(body, 'seals').map((seal) => ({
    id: numberIn(seal, 'id'),
    at: numberIn(seal, 'at_mm') * mm,
  })),
  fixedPassages: listIn(body, 'fixed_passages').map(pairOf),
  piston: {
    grooves: listIn(piston, 'grooves_mm').map(spanOf),
    length: spanOf(field(piston, 'length_mm')),
  },
  rule,
});

const boreOf = (body: unknown, variant: unknown): Bore => {
  const result = boreFromLengths(lengthsOf(body, field(variant, 'piston')));
  if (!result.ok) throw new Error(result.problems.map((problem) => problem.kind).join(', '));
  return result.bore;
};

const stopsOf = (value: unknown): readonly StopShift[] =>
  listIn(value, 'positions').map((position) => ({
    stop: textIn(position, 'name'),
    shift: numberIn(position, 'shift_mm') * mm,
  }));

const groupsText = (groups: readonly PortGroup[]): string =>
  groups.map((group) => group.join('+')).join(' | ');

/** 'TOP+IN | OUT+BOT' or a list of such groups, in order of name. */
const sortedGroups = (value: unknown): string => {
  const groups = typeof value === 'string' ? value.split(' | ') : Array.isArray(value) ? value : [];
  return groups
    .map((group: unknown) => String(group).split('+').sort().join('+'))
    .sort()
    .join(' | ');
};

type Told = { readonly file: string; readonly variant: string };

const claim = ({ file, variant }: Told, what: string, computed: string, expected: string): Claim => ({
  id: `${file} ${variant} ${what}`,
  title: `Sliding piston, ${variant}`,
  source: `${file}.json: invented geometry, computed from its lengths before this code`,
  mark: 'computed',
  computed,
  expected,
  tolerance: { abs: 0 },
});

const leakText = (seal: number, chambers: readonly string[]): string => `${seal}: ${chambers.join('-')}`;

const stopClaims = (told: Told, bore: Bore, variant: unknown): readonly Claim[] =>
  listIn(variant, 'connectivity').flatMap((row) => {
    const stop = textIn(row, 'position');
    const state = stateAt(bore, numberIn(row, 'shift_mm') * mm);
    const leaks = leaksWhileShut(bore.body, state.open);
    return [
      claim(told, `${stop} open`, state.open.join(' '), numbersIn(row, 'open_seals').join(' ')),
      claim(told, `${stop} joined`, groupsText(state.joined), sortedGroups(field(row, 'joined_ports'))),
      claim(
        told,
        `${stop} torn`,
        leaks.map((leak) => leakText(leak.seal, leak.chambers)).join(', '),
        listIn(row, 'damaged_seal_opens')
          .map((leak) => leakText(numberIn(leak, 'seal'), textsIn(leak, 'leak_between')))
          .join(', '),
      ),
    ];
  });

/** Both files list stretches; one of them leaves the end of each to the next one's beginning. */
const transitClaims = (told: Told, bore: Bore, variant: unknown, stroke: number): readonly Claim[] => {
  const ours = transit(bore, [0, stroke * mm]);
  const rows = listIn(variant, 'transit');
  const endOf = (row: unknown): boolean => isObject(row) && 'to_mm' in row;
  const listed = rows.map((row, place) => {
    const stretch = ours[place];
    const text = (from: number, to: number, groups: string): string =>
      endOf(row) ? `${from} to ${to} mm: ${groups}` : `from ${from} mm: ${groups}`;
    const to = endOf(row) ? numberIn(row, 'to_mm') : 0;
    const computed =
      stretch === undefined
        ? 'none'
        : text(Math.round(stretch.from / mm), Math.round(stretch.to / mm), groupsText(stretch.joined));
    const expected = text(numberIn(row, 'from_mm'), to, sortedGroups(field(row, 'joined_ports')));
    return claim(told, `transit ${place + 1}`, computed, expected);
  });
  return [claim(told, 'transit stretches', String(ours.length), String(rows.length)), ...listed];
};

const wrongBuildClaims = (
  file: string,
  bores: ReadonlyMap<string, Bore>,
  content: unknown,
): readonly Claim[] =>
  listIn(content, 'wrong_builds').flatMap((build) => {
    const bore = bores.get(textIn(build, 'piston'));
    if (bore === undefined) throw new Error(`no piston ${textIn(build, 'piston')}`);
    const told = { file, variant: `${textIn(build, 'piston')} sleeve ${numberIn(build, 'sleeve_mm')}` };
    const states = statesAtStops(bore, stopsOf(content), numberIn(build, 'displaced_mm') * mm);
    return listIn(build, 'positions').flatMap((row, place) => {
      const state = states[place];
      const at = `${textIn(row, 'position')} wrong`;
      const texts = (name: string): string => numbersIn(row, name).join(' ');
      return [
        claim(told, `${at} reached`, state?.reached.join(' ') ?? '', texts('seals_reached_by_a_groove')),
        claim(told, `${at} open`, state?.open.join(' ') ?? '', texts('seals_fully_open')),
        claim(
          told,
          `${at} joined`,
          groupsText(state?.joined ?? []),
          sortedGroups(field(row, 'joined_ports')),
        ),
      ];
    });
  });

/** Open seals found from the joins alone: the file's set must be among the choices, and be the one where there is one. */
const joinClaims = (told: Told, body: unknown, variant: unknown): readonly Claim[] => {
  const rows = listIn(variant, 'connectivity');
  const { stops } = boreFromJoins({
    ports: listIn(body, 'chambers').map((chamber) => textIn(chamber, 'port')),
    stops: rows.map((row) => ({
      stop: textIn(row, 'position'),
      joins: textsIn(row, 'joined_ports').map((group) => group.split('+')),
    })),
  });
  return rows.map((row, place) => {
    const wanted = numbersIn(row, 'open_seals').join(' ');
    const found = stops[place]?.choices.map((choice) => choice.join(' ')) ?? [];
    return claim(
      told,
      `${textIn(row, 'position')} from joins`,
      found.find((set) => set === wanted) ?? found.join(' or '),
      wanted,
    );
  });
};

/** The choices that the file names in words for the raw-pass backwash. */
const choiceClaim = (file: string, content: unknown): Claim => {
  const variant = listIn(content, 'variants').find((row) => textIn(row, 'variant') === 'raw-pass');
  const row = listIn(variant, 'connectivity').find((stop) => textIn(stop, 'position') === 'backwash');
  const joins = textsIn(row, 'joined_ports').map((group) => group.split('+'));
  const ports = listIn(content, 'chambers').map((chamber) => textIn(chamber, 'port'));
  const { stops } = boreFromJoins({ ports, stops: [{ stop: 'backwash', joins }] });
  const inWords =
    textIn(content, 'choice')
      .split(';')[0]
      ?.match(/\d(,\d)+/g) ?? [];
  const found = stops[0]?.choices.map((choice) => choice.join()) ?? [];
  return claim({ file, variant: 'raw-pass' }, 'backwash choices', found.join(' or '), inWords.join(' or '));
};

const convertible = (): readonly Claim[] => {
  const file = 'valve-geometry-convertible';
  const content = readJson(`${file}.json`);
  const variants = listIn(content, 'variants');
  const bores = new Map(variants.map((variant) => [textIn(variant, 'variant'), boreOf(content, variant)]));
  const stroke = numberIn(content, 'stroke_mm');
  return [
    ...variants.flatMap((variant) => {
      const told = { file, variant: textIn(variant, 'variant') };
      const bore = boreOf(content, variant);
      return [
        ...stopClaims(told, bore, variant),
        ...transitClaims(told, bore, variant, stroke),
        ...joinClaims(told, content, variant),
      ];
    }),
    ...wrongBuildClaims(file, bores, content),
    choiceClaim(file, content),
  ];
};

/** Each variant of this file is a body of its own. */
const apart = (): readonly Claim[] => {
  const file = 'valve-geometry-example';
  return listIn(readJson(`${file}.json`), 'variants').flatMap((variant) => {
    const told = { file, variant: textIn(variant, 'variant') };
    const bore = boreOf(variant, variant);
    return [
      ...stopClaims(told, bore, variant),
      ...transitClaims(told, bore, variant, numberIn(variant, 'stroke_mm')),
      ...joinClaims(told, variant, variant),
    ];
  });
};

/** Ports joined by a sliding piston, from lengths and from joins. */
export const rows = (): readonly Claim[] => [...convertible(), ...apart()];
