import { describe, expect, it } from 'vitest';
import { ensureSystemPackages, type Hand, installCommand, type SystemPackage } from './system-packages.ts';

/** A machine on which `apt-get install` works, or not. */
const machine = (given: { here: string[]; programs: string[]; isRoot: boolean; fails?: string }) => {
  const here = new Set(given.here);
  const ran: string[] = [];
  const hand: Hand = {
    isRoot: given.isRoot,
    has: (program) => given.programs.includes(program),
    say: () => undefined,
    run: (command, args) => {
      const line = [command, ...args].join(' ');
      ran.push(line);
      if (given.fails !== undefined && line.includes(given.fails)) return false;
      if (line.includes(' install ')) for (const name of args.slice(args.indexOf('install'))) here.add(name);
      return true;
    },
  };
  const wanted: SystemPackage[] = ['chromium', 'postgresql'].map((name) => ({
    name,
    isHere: () => here.has(name),
  }));
  return { missing: ensureSystemPackages(hand, wanted), ran };
};

describe('what the tests need of the system', () => {
  it('is left alone where it is there', () => {
    expect(machine({ here: ['chromium', 'postgresql'], programs: ['apt-get'], isRoot: true })).toEqual({
      missing: [],
      ran: [],
    });
  });

  it('is installed without a question by root, and only what is missing', () => {
    expect(machine({ here: ['chromium'], programs: ['apt-get'], isRoot: true })).toEqual({
      missing: [],
      ran: [
        'env DEBIAN_FRONTEND=noninteractive apt-get update -qq',
        'env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends postgresql',
      ],
    });
  });

  it('is installed through sudo where that asks for no password', () => {
    const { missing, ran } = machine({ here: [], programs: ['apt-get', 'sudo'], isRoot: false });
    expect(missing).toEqual([]);
    expect(ran.at(-1)).toMatch(/^sudo -n env \S+ apt-get install .* chromium postgresql$/u);
  });

  it.each([
    ['sudo would ask for a password', ['apt-get', 'sudo'], false, 'sudo -n true'],
    ['there is no sudo', ['apt-get'], false, undefined],
    ['there is no apt', [], true, undefined],
    ['the package lists cannot be fetched', ['apt-get'], true, 'update'],
  ])('stays missing where %s', (_title, programs, isRoot, fails) => {
    const { missing, ran } = machine({ here: ['chromium'], programs, isRoot, ...(fails ? { fails } : {}) });
    expect(missing).toEqual(['postgresql']);
    expect(ran.filter((line) => line.includes('install'))).toEqual([]);
  });

  it('is said with the command to type', () => {
    expect(installCommand(['chromium'])).toBe('sudo apt-get install --no-install-recommends chromium');
  });
});
