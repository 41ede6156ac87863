// @ts-check
/* The microphone, plain: no filter of the browser's. Nothing is recorded, nothing sent. */

const PLAIN = { echoCancellation: false, noiseSuppression: false, autoGainControl: false, channelCount: 1 };
const FAULTS = new Map([
  ["NotFoundError", "This phone has no microphone: tap or type the time."],
  ["NotAllowedError", "The microphone is refused: allow it in the browser's settings, or tap."],
  ["NotReadableError", "Another app holds the microphone: close it, or tap."],
]);

/** Why the microphone cannot be used, for the one who welds. @param {unknown} error */
export const faultOf = (error) =>
  FAULTS.get(error instanceof DOMException ? error.name : "") ?? "The microphone does not start: tap or type the time.";

export class Microphone {
  /** @type {MediaStream | undefined} */
  #stream;
  /** @type {AudioContext | undefined} */
  #context;
  #stopped = false;

  /** What the browser still does to the sound, or empty. */
  get filtered() {
    const set = this.#stream?.getAudioTracks()[0]?.getSettings() ?? {};
    const still = set.echoCancellation || set.noiseSuppression || set.autoGainControl;
    return still ? "This browser still filters the sound: check the first times by a watch." : "";
  }

  /**
   * Start it: to be called from a tap. Rejects with a sentence that says what went wrong.
   * @param {(samples: Float32Array) => void} take @param {() => void} onEnd the phone took it away
   * @returns {Promise<number>} samples a second
   */
  async start(take, onEnd) {
    if (!window.isSecureContext || !navigator.mediaDevices) {
      throw new Error("The microphone works at a secure address only (https): tap or type the time.");
    }
    try {
      this.#stream = await navigator.mediaDevices.getUserMedia({ audio: PLAIN });
      this.#stream.getAudioTracks()[0]?.addEventListener("ended", onEnd);
      const context = this.#context = new AudioContext();
      await context.audioWorklet.addModule(new URL("./microphone_tap.js", import.meta.url));
      const node = new AudioWorkletNode(context, "microphone-tap", { numberOfOutputs: 0 });
      node.port.onmessage = ({ data }) => take(data);
      context.createMediaStreamSource(this.#stream).connect(node);
      await context.resume();
      if (this.#stopped) this.stop(); // let go while the question was still on the screen
      return context.sampleRate;
    } catch (error) {
      this.stop();
      throw new Error(faultOf(error));
    }
  }

  stop() {
    this.#stopped = true;
    for (const track of this.#stream?.getTracks() ?? []) track.stop();
    void this.#context?.close().catch(() => null);
    this.#stream = this.#context = undefined;
  }
}
