import { describe, expect, it } from 'vitest';
import { beadSizes, calibrateByPail } from './pail-calibration.ts';
import { expansionRichardsonZaki } from './richardson-zaki.ts';

const site = {
  method: 'richardson-zaki',
  particleDensity: 1280,
  voidage: 0.38,
  density: 999.7,
  viscosity: 1.306e-3,
  superficialVelocity: 3.4e-3,
  bedDepth: 0.86,
  freeHeight: 0.42,
  assumed: 6e-4,
} as const;

const rise = (diameter: number): number =>
  expansionRichardsonZaki.compute({ ...site, diameter }).expansion * site.bedDepth;

describe('bead size from a pail under the drain', () => {
  it('puts the bed just at the free height when fines come over', () => {
    const { diameter } = calibrateByPail({ ...site, seen: 'fines' });
    expect(rise(diameter)).toBeCloseTo(site.freeHeight, 9);
  });

  it('keeps a size that already explains what was seen', () => {
    const rested = { ...site, superficialVelocity: 2e-3 };
    expect(calibrateByPail({ ...rested, seen: 'nothing' }).diameter).toBe(site.assumed);
  });

  it('makes the bead bigger when nothing came although much was expected', () => {
    const brisk = { ...site, superficialVelocity: 3.8e-3 };
    expect(calibrateByPail({ ...brisk, seen: 'nothing' }).diameter).toBeGreaterThan(site.assumed);
  });

  it('makes the bead smaller when beads came although none were expected', () => {
    const gentle = { ...site, superficialVelocity: 3e-3 };
    expect(calibrateByPail({ ...gentle, seen: 'beads' }).diameter).toBeLessThan(site.assumed);
  });

  it('stops at the limits and says that no size explains beads at a trickle', () => {
    const trickle = calibrateByPail({ ...site, superficialVelocity: 5e-4, seen: 'beads' });
    expect(trickle).toEqual({ method: 'richardson-zaki', diameter: beadSizes.from });
  });

  it('stops at the limits and says that no size explains nothing at a torrent', () => {
    const torrent = calibrateByPail({ ...site, superficialVelocity: 2e-2, seen: 'nothing' });
    expect(torrent).toEqual({ method: 'richardson-zaki', diameter: beadSizes.to });
  });

  it('any size explains beads at a torrent', () => {
    const torrent = calibrateByPail({ ...site, superficialVelocity: 2e-2, seen: 'beads' });
    expect(torrent.explains).toEqual(beadSizes);
    expect(torrent.diameter).toBe(site.assumed);
  });
});
