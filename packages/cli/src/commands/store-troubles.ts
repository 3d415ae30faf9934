import { type BackupFault, BadBackup, type FaultCode, StoreFault } from '@brinewright/server/store';
import { type Message, message } from '@brinewright/words';
import { type Call, complain, printJson } from '../call.ts';
import { exit } from '../exit.ts';

/** Loaded with the server only, for what it knows of stores. */

/** Says what is wrong with a store or a backup; undefined where the error is neither. */
export const tellStoreTrouble = (call: Call, error: unknown): number | undefined => {
  if (error instanceof BadBackup) return tellBadBackup(call, error);
  return error instanceof StoreFault ? tellFault(call, error) : undefined;
};

const tellFault = (call: Call, { code, where }: StoreFault): number => {
  const [what, mend] = [message(`cli.fault.${code}`, { where }), message(`cli.fault.${code}.mend`)];
  return tell(call, { code, where }, what, mend);
};

const tellBadBackup = (call: Call, { path, faults }: BadBackup): number =>
  tell(
    call,
    { code: 'bad-backup', where: path, faults },
    message('cli.restore.bad', { file: path }),
    ...faults.slice(0, mostShown).map(badnessOf),
    ...(faults.length > mostShown
      ? [message('cli.restore.bad.more', { count: faults.length - mostShown })]
      : []),
    message('cli.restore.bad.mend'),
  );

const mostShown = 5;

type Fault = {
  readonly code: FaultCode | 'bad-backup';
  readonly where: string;
  readonly faults?: readonly BackupFault[];
};

const tell = (call: Call, fault: Fault, ...messages: readonly Message[]): number => {
  if (call.json) printJson(call, { fault: { ...fault, messages: messages.map(call.speech.say) } });
  complain(call, ...messages);
  return exit.faulty;
};

const badnessOf = ({ kind, ...values }: BackupFault): Message => message(`cli.restore.bad.${kind}`, values);
