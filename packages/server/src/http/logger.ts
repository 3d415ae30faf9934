import type { FastifyServerOptions } from 'fastify';

const levels = ['silent', 'fatal', 'error', 'warn', 'info', 'debug', 'trace'];

/** Only what goes wrong, unless the environment asks for more or for nothing. */
export const usualLevel = ({
  BRINEWRIGHT_LOG: asked = '',
}: Readonly<Record<string, string | undefined>>): string => (levels.includes(asked) ? asked : 'warn');

const toStandardError = (line: string): void => void process.stderr.write(line);

/**
 * Structured lines on standard error. Of a request only method, path and address are logged: no payload, no header,
 * nothing behind the question mark.
 */
export const loggerTo = (level: string, write = toStandardError): FastifyServerOptions['logger'] =>
  level === 'silent'
    ? false
    : {
        level,
        stream: { write },
        serializers: {
          req: ({ method, url, ip }) => ({ method, url: url.split('?')[0] ?? '', remoteAddress: ip }),
          res: ({ statusCode }) => ({ statusCode }),
        },
      };
