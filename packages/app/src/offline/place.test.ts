import { describe, expect, test } from 'vitest';
import { placeOf } from './place.ts';

describe('where the app lies', () => {
  test('the part of the server before the app holds its API and names its database', () => {
    expect(placeOf('https://workshop.local:4443/own/app/')).toEqual({
      base: '/own/app',
      api: '/own/api',
      database: 'brinewright-own',
    });
  });

  test('two workshops of one server keep their records apart', () => {
    expect(placeOf('http://127.0.0.1/demo/app/').database).not.toBe(
      placeOf('http://127.0.0.1/own/app/').database,
    );
  });

  test('at the root of a server it works as well', () => {
    expect(placeOf('http://127.0.0.1:5173/')).toEqual({ base: '', api: '/api', database: 'brinewright' });
  });
});
