const QUANTUM = 128;

/**
 * Hands on everything that passes through the graph, with the number of its first frame. It counts the frames itself:
 * Chromium leaves `currentFrame` as it was, one quantum behind, whenever the page happens to hold the lock of the graph
 * (seen with 153, one quantum in some ten thousand on a busy machine).
 */
class Recorder extends AudioWorkletProcessor {
  frame = -QUANTUM;

  process([input]) {
    this.frame = Math.max(this.frame + QUANTUM, currentFrame);
    const channels = input.map((channel) => channel.slice());
    if (channels.length > 0) this.port.postMessage({ frame: this.frame, channels });
    return true;
  }
}

registerProcessor('recorder', Recorder);
