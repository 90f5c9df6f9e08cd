import fc from 'fast-check';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createPlayer, type PlayerEvent, type PlayRequest } from '../../src/audio/index.ts';
import { LoadError } from '../../src/audio/load-again.ts';
import { AudioOutput } from '../../src/audio/output.ts';
import type { Sequencer } from '../../src/audio/engine/sequencer.ts';
import { runs } from '../helpers/arbitrary.ts';
import { requestOf } from './requests.ts';

/** What does not work now. */
type Broken = 'nothing' | 'output' | 'code' | 'code never' | 'sounds' | 'resume' | 'clock' | 'graph';

/** Every context of a test; what is broken is so for all of them. */
const world = { broken: 'nothing' as Broken, contexts: [] as FakeContext[] };

class FakeContext extends EventTarget {
  state: AudioContextState = 'suspended';
  readonly #born = Date.now();

  constructor() {
    super();
    if (world.broken === 'output') throw new DOMException('no more contexts', 'NotSupportedError');
    world.contexts.push(this);
  }

  get currentTime(): number {
    return world.broken === 'clock' ? 1 : (Date.now() - this.#born) / 1000;
  }

  async resume(): Promise<void> {
    if (world.broken !== 'resume') this.become('running');
  }

  async suspend(): Promise<void> {
    this.become('suspended');
  }

  async close(): Promise<void> {
    this.become('closed');
  }

  become(state: AudioContextState): void {
    if (this.state === 'closed' || this.state === state) return;
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }
}

/** Stands for what plays on a context; it plays nothing. */
function fakeSequencer(): Sequencer {
  const sequencer = {
    prepare: async () => {
      if (world.broken === 'sounds') throw new Error('the worker for sounds does not answer');
    },
    start: () => {
      if (world.broken === 'graph') throw new RangeError('no gain');
    },
    change: () => undefined,
    scheduleAhead: () => undefined,
    stop: () => undefined,
    position: () => undefined,
    dispose: () => undefined,
  };
  return sequencer as unknown as Sequencer;
}

async function openFake(): Promise<Sequencer> {
  if (world.broken === 'code never') await new Promise(() => undefined);
  if (world.broken === 'code') throw new LoadError('sequencer.js did not load');
  return fakeSequencer();
}

const REQUEST: PlayRequest = requestOf('R L R L', { meter: '4/4', grid: 1 });

function newPlayer(output = new AudioOutput(openFake)) {
  const player = createPlayer(output);
  const events: PlayerEvent[] = [];
  player.on((event) => events.push(event));
  return { player, events, last: () => events.at(-1) };
}

/** Long enough for whatever stands still to be given up, and for a loudspeaker nobody wants to go to sleep. */
const awhile = () => vi.advanceTimersByTimeAsync(6000);

beforeEach(() => {
  vi.useFakeTimers();
  Object.assign(world, { broken: 'nothing', contexts: [] });
  vi.stubGlobal('AudioContext', FakeContext);
  vi.stubGlobal('document', Object.assign(new EventTarget(), { visibilityState: 'visible' }));
  vi.stubGlobal('window', new EventTarget());
});

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const REASONS = {
  output: 'no-output',
  code: 'loading',
  'code never': 'loading',
  sounds: 'sounds',
  resume: 'suspended',
  clock: 'no-device',
  graph: 'failed',
} as const satisfies Record<Exclude<Broken, 'nothing'>, string>;

test.each(Object.entries(REASONS))(
  'where %s is broken the reason is "%s", and the next press plays',
  async (broken, reason) => {
    world.broken = broken as Broken;
    const { player, last } = newPlayer();
    player.play(REQUEST);
    await awhile();
    expect(last()).toEqual({ state: 'silent', reason });
    world.broken = 'nothing';
    player.play(REQUEST);
    await vi.advanceTimersByTimeAsync(100);
    expect(last()).toEqual({ state: 'playing' });
  },
);

test('a request that is still to come is played when it is there; another one that comes first is played instead', async () => {
  const { player, events } = newPlayer();
  const { promise, resolve } = Promise.withResolvers<PlayRequest>();
  player.play(promise);
  await vi.advanceTimersByTimeAsync(100);
  expect(events).toEqual([{ state: 'opening' }]);
  player.change({ ...REQUEST, bpm: 90 });
  resolve(REQUEST);
  await vi.advanceTimersByTimeAsync(100);
  expect(events).toEqual([{ state: 'opening' }, { state: 'playing' }]);
});

test('a request that does not arrive is told as such, one that is none as a failure', async () => {
  const { player, last } = newPlayer();
  player.play(Promise.reject(new LoadError('engine.js did not load')));
  await vi.advanceTimersByTimeAsync(10);
  expect(last()).toEqual({ state: 'silent', reason: 'loading' });
  player.play(Promise.reject(new RangeError('tempo')));
  await vi.advanceTimersByTimeAsync(10);
  expect(last()).toEqual({ state: 'silent', reason: 'failed' });
});

test('what an earlier press was waiting for does not play after a stop, nor in place of a later press', async () => {
  const { player, last } = newPlayer();
  const early = Promise.withResolvers<PlayRequest>();
  player.play(early.promise);
  player.stop();
  early.resolve(REQUEST);
  await awhile();
  expect(last()).toEqual({ state: 'stopped' });
  expect(world.contexts.map(({ state }) => state)).toEqual(['suspended']);
});

test('whatever happens in whatever order, one player sounds at most, nothing is left running, and it plays again', async () => {
  const act = fc.oneof(
    fc.record({
      do: fc.constantFrom('press', 'press later', 'press in vain', 'stop', 'change'),
      who: fc.constantFrom(0, 1),
    }),
    fc.record({ do: fc.constantFrom('close', 'suspend', 'resume', 'wait', 'wait long') }),
    fc.record({ do: fc.constant('break'), what: fc.constantFrom('nothing', ...Object.keys(REASONS)) }),
  );
  await fc.assert(
    fc.asyncProperty(fc.array(act, { maxLength: 20 }), async (acts) => {
      Object.assign(world, { broken: 'nothing', contexts: [] });
      const output = new AudioOutput(openFake);
      const players = [newPlayer(output), newPlayer(output)];
      const active = () => players.filter(({ player }) => ['opening', 'playing'].includes(player.state));
      for (const one of acts) {
        const { player } = players['who' in one ? one.who : 0];
        if (one.do === 'press') player.play(REQUEST);
        if (one.do === 'press later') player.play(new Promise((resolve) => setTimeout(() => resolve(REQUEST), 1000)));
        if (one.do === 'press in vain') player.play(Promise.reject(new LoadError('gone')));
        if (one.do === 'stop') player.stop();
        if (one.do === 'change') player.change({ ...REQUEST, bpm: 90 });
        if (one.do === 'close') world.contexts.at(-1)?.become('closed');
        if (one.do === 'suspend') world.contexts.at(-1)?.become('suspended');
        if (one.do === 'resume') await world.contexts.at(-1)?.resume();
        if (one.do === 'wait') await vi.advanceTimersByTimeAsync(300);
        if (one.do === 'wait long') await awhile();
        if ('what' in one) world.broken = one.what as Broken;
        expect(active().length).toBeLessThanOrEqual(1);
        expect(world.contexts.filter(({ state }) => state !== 'closed').length).toBeLessThanOrEqual(1);
      }
      world.broken = 'nothing';
      players.forEach(({ player }) => player.stop());
      await awhile();
      expect(world.contexts.map(({ state }) => state)).not.toContain('running');
      const [{ player, last }] = players;
      player.play(REQUEST);
      await awhile();
      // What was stopped before it was given up is given up now.
      if (last()?.state === 'silent') player.play(REQUEST);
      await vi.advanceTimersByTimeAsync(100);
      expect(last()).toEqual({ state: 'playing' });
      player.dispose();
    }),
    runs(200),
  );
});
