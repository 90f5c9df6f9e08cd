/** Hands on everything that passes through the graph, with the number of its first frame. */
class Recorder extends AudioWorkletProcessor {
  process([input]) {
    const channels = input.map((channel) => channel.slice());
    if (channels.length > 0) this.port.postMessage({ frame: currentFrame, channels });
    return true;
  }
}

registerProcessor('recorder', Recorder);
