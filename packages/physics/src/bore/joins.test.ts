import { describe, expect, it } from 'vitest';
import { bodyFromPorts, joined, leakOf } from './body.ts';
import { boreFromJoins } from './joins.ts';

const ports = 'OUTSIDE IN TOP DR BOT OUT IN BOT'.split(' ');

describe('open seals from joins', () => {
  it('follow by adjacency where there is one way only', () => {
    const { stops, problems } = boreFromJoins({
      ports,
      stops: [
        {
          stop: 'service',
          joins: [
            ['IN', 'TOP'],
            ['BOT', 'OUT'],
          ],
        },
        {
          stop: 'brine',
          joins: [
            ['BOT', 'DR'],
            ['IN', 'OUT'],
          ],
        },
        {
          stop: 'fast-rinse',
          joins: [
            ['IN', 'TOP', 'OUT'],
            ['DR', 'BOT'],
          ],
        },
      ],
    });
    expect(problems).toEqual([]);
    expect(stops.map(({ open, settled }) => [open, settled])).toEqual([
      [[2, 5], 'only'],
      [[4, 6], 'only'],
      [[2, 4, 6], 'only'],
    ]);
  });

  it('list every choice where a port stands twice, fewest seals first', () => {
    const backwash = {
      stop: 'backwash',
      joins: [
        ['IN', 'BOT', 'OUT'],
        ['TOP', 'DR'],
      ],
    };
    const [stop] = boreFromJoins({ ports, stops: [backwash] }).stops;
    expect(stop?.choices).toEqual([
      [3, 5, 6],
      [3, 5, 7],
      [3, 6, 7],
      [3, 5, 6, 7],
    ]);
    expect(stop).toMatchObject({ open: [3, 5, 6], settled: 'first-choice' });
  });

  it('are settled by what the definition says is open', () => {
    const backwash = {
      stop: 'backwash',
      joins: [
        ['IN', 'BOT', 'OUT'],
        ['TOP', 'DR'],
      ],
      open: [7, 3, 6],
    };
    const [stop] = boreFromJoins({ ports, stops: [backwash] }).stops;
    expect(stop).toMatchObject({ open: [3, 6, 7], settled: 'given' });
  });

  it('an open that joins something else is reported with what it does join', () => {
    const brine = { stop: 'brine', joins: [['BOT', 'DR']], open: [3, 4] };
    expect(boreFromJoins({ ports, stops: [brine] })).toMatchObject({
      stops: [],
      problems: [
        {
          kind: 'open-does-not-serve',
          open: [3, 4],
          wanted: [['BOT', 'DR']],
          joined: [['BOT', 'DR', 'TOP']],
        },
      ],
    });
  });

  it('ports that are not neighbours are reported, with how far they get', () => {
    const wrong = {
      stop: 'service',
      joins: [
        ['IN', 'TOP'],
        ['DR', 'OUT'],
      ],
    };
    expect(boreFromJoins({ ports, stops: [wrong] }).problems).toEqual([
      { kind: 'not-neighbours', stop: 'service', wanted: ['DR', 'OUT'], linked: [] },
    ]);
    const partly = { stop: 'service', joins: [['IN', 'TOP', 'OUT']] };
    expect(boreFromJoins({ ports: ['IN', 'TOP', 'DR', 'OUT'], stops: [partly] }).problems).toEqual([
      { kind: 'not-neighbours', stop: 'service', wanted: ['IN', 'OUT', 'TOP'], linked: [['IN', 'TOP']] },
    ]);
  });

  it('strange ports and seals are reported by name', () => {
    const stops = [
      { stop: 'service', joins: [['IN', 'TOPP']] },
      { stop: 'brine', joins: [['BOT', 'DR']], open: [4, 12] },
    ];
    expect(boreFromJoins({ ports, stops }).problems).toEqual([
      { kind: 'unknown-port', stop: 'service', port: 'TOPP' },
      { kind: 'unknown-seal', stop: 'brine', seal: 12 },
    ]);
  });
});

describe('a bore without lengths', () => {
  it('joins a port that stands twice by the casting', () => {
    expect(bodyFromPorts(ports).passages).toEqual([
      ['IN1', 'IN2'],
      ['BOT1', 'BOT2'],
    ]);
  });

  it('a torn seal joins the ports on both sides of it', () => {
    expect(leakOf(bodyFromPorts(ports), 1)).toEqual({
      seal: 1,
      chambers: ['OUTSIDE', 'IN1'],
      ports: ['OUTSIDE', 'IN'],
    });
    expect(() => leakOf(bodyFromPorts(ports), 8)).toThrow(/no seal 8/);
  });

  it('joins nothing while every seal is shut', () => {
    expect(joined(bodyFromPorts(ports), [])).toEqual([]);
  });
});
