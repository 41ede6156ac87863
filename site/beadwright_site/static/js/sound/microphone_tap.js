// @ts-check
/* Runs on the audio thread: hands on what the microphone hears, in blocks. Keeps nothing. */
const BLOCK = 2048;

class MicrophoneTap extends AudioWorkletProcessor {
  #block = new Float32Array(BLOCK);
  #filled = 0;

  /** @param {Float32Array[][]} inputs */
  process([input]) {
    const heard = input?.[0];
    if (!heard) return true;
    if (this.#filled + heard.length > BLOCK) this.#hand();
    this.#block.set(heard, this.#filled);
    this.#filled += heard.length;
    return true;
  }

  #hand() {
    this.port.postMessage(this.#block.slice(0, this.#filled));
    this.#filled = 0;
  }
}

registerProcessor("microphone-tap", MicrophoneTap);
