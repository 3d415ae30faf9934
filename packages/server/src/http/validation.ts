import { readData, schemaIssues } from '@brinewright/equipment';
import type { FastifySchemaCompiler } from 'fastify';
import type { z } from 'zod';
import { ProblemError } from './problem/problems.ts';

/** Messages are checked by our own schemas; what is wrong is said as it is said of a document. */
export const checkMessages: FastifySchemaCompiler<z.ZodType> =
  ({ schema, httpPart }) =>
  (data) => {
    const read = schema.safeParse(data);
    if (read.success) return { value: read.data };
    const found = schemaIssues(read.error, schema, readData(httpPart ?? 'body', data));
    return { error: new ProblemError('invalid', { issues: found.map(({ place: _, ...issue }) => issue) }) };
  };
