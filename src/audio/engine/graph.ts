import type { Seconds } from '../../core/index.ts';
import { softClipCurve, INPUT_RANGE } from './soft-clip.ts';
import { Context, Convolver, Gain, Panner, setContext, WaveShaper } from './tone.ts';

/** How much of the drums goes into the room. */
const ROOM_SEND = 0.2;
/** How long sound takes to go when it is stopped: too short to be heard as a fade, long enough not to click. */
const FADE: Seconds = 0.015;

/** Where sounds go in and how they come out: places between left and right, one room, a soft clip. */
export interface Graph {
  /** The input of a place from −1 (left) to 1 (right), heard in the room. */
  drum(pan: number): AudioNode;
  /** The input of the metronome: in the middle, without the room. */
  readonly click: AudioNode;
  /** What goes to the loudspeaker. */
  readonly output: AudioNode;
  /** Puts the drums into a room, given its impulse response. */
  addRoom(response: AudioBuffer): void;
  /** Lets everything fade, and gives back when it is silent. */
  fadeOut(now: Seconds): Seconds;
  /** Full level from then on. */
  fadeIn(when: Seconds): void;
}

/** Tone's context around ours. It drives no timers of Tone's own: every time is given in seconds. */
function toneContext(context: BaseAudioContext): Context {
  const tone = new Context({ context: context as AudioContext, clockSource: 'offline', lookAhead: 0 });
  setContext(tone);
  return tone;
}

function openSoftClip(context: Context): { input: Gain; output: WaveShaper } {
  const shaper = new WaveShaper({ context });
  shaper.curve = softClipCurve();
  return { input: new Gain({ context, gain: 1 / INPUT_RANGE }).connect(shaper), output: shaper };
}

function openRoom(context: Context, response: AudioBuffer): { input: Gain; output: Convolver } {
  const room = new Convolver({ context, normalize: false });
  room.buffer = response as unknown as Convolver['buffer'];
  return { input: new Gain({ context, gain: ROOM_SEND }).connect(room), output: room };
}

/** Builds the way from the drums to the loudspeaker; there is no room in it until one is added. */
export function openGraph(native: BaseAudioContext): Graph {
  const context = toneContext(native);
  const clip = openSoftClip(context);
  const fader = new Gain({ context, gain: 1 }).connect(clip.input);
  const drums = new Gain({ context }).connect(fader);
  const click = new Panner({ context, pan: 0 }).connect(fader);
  const places = new Map<number, Panner>();
  clip.output.connect(native.destination);
  return {
    click: click.input as AudioNode,
    output: clip.output.output as AudioNode,
    drum(pan) {
      const place = places.get(pan) ?? new Panner({ context, pan }).connect(drums);
      places.set(pan, place);
      return place.input as AudioNode;
    },
    addRoom(response) {
      const room = openRoom(context, response);
      drums.connect(room.input);
      room.output.connect(fader);
    },
    fadeOut(now) {
      fader.gain
        .cancelScheduledValues(now)
        .setValueAtTime(1, now)
        .linearRampToValueAtTime(0, now + FADE);
      return now + FADE;
    },
    fadeIn(when) {
      fader.gain.cancelScheduledValues(when).setValueAtTime(1, when);
    },
  };
}
