import { Readable } from 'node:stream';
import { stringify } from 'csv-stringify';
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { bundleText } from '../../workshop/bundle.ts';
import { isTableName, type Table, tableNames, tables } from '../../workshop/tables.ts';
import { ProblemError } from '../problem/problems.ts';
import type { ApiOptions } from './workshop-api.ts';

const params = z.strictObject({ file: z.string() });

/** Everything in the record, to take away: all entries as a bundle that import reads, and tables for a spreadsheet. */
export const exportRoutes: FastifyPluginAsyncZod<ApiOptions> = async (app, { workshop }) => {
  app.get('/export.json', { schema: { tags: ['export'] } }, async (_, reply) => {
    const { store, company } = workshop();
    await store.state(company);
    return reply
      .headers(asAttachment('application/json; charset=utf-8', 'export.json'))
      .send(Readable.from(bundleText(store, company)));
  });

  app.get('/export/:file', { schema: { tags: ['export'], params } }, async (request, reply) => {
    const name = request.params.file.replace(/\.csv$/u, '');
    if (!request.params.file.endsWith('.csv') || !isTableName(name))
      throw new ProblemError('no-such-table', { values: { known: tableNames.join(', ') } });
    const { columns, rows }: Table = tables[name];
    const here = workshop();
    await here.state();
    const csv = stringify({ header: true, columns: [...columns], escape_formulas: true, bom: true });
    const source = Readable.from(rows(here));
    source.on('error', (error) => csv.destroy(error));
    return reply.headers(asAttachment('text/csv; charset=utf-8', `${name}.csv`)).send(source.pipe(csv));
  });
};

const asAttachment = (type: string, file: string) => ({
  'content-type': type,
  'content-disposition': `attachment; filename="brinewright-${file}"`,
});
