import type { Equation } from '../meta/equation.ts';
import { colebrook, laminarFriction } from './friction.ts';
import { jetPump, jetPumpDrive, jetPumpNozzleFlow } from './jet-pump.ts';
import { leakFlow, orificeDiameter, orificeFlow } from './orifice.ts';
import { orificeExpansibility, orificePlate } from './orifice-plate.ts';
import { pipeLoss } from './pipe-loss.ts';

export const hydraulicsEquations: readonly Equation[] = [
  colebrook,
  laminarFriction,
  pipeLoss,
  orificeFlow,
  orificeDiameter,
  leakFlow,
  orificePlate,
  orificeExpansibility,
  jetPump,
  jetPumpDrive,
  jetPumpNozzleFlow,
];
