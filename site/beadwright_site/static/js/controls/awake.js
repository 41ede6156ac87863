// @ts-check
/** Keeps the screen on while something runs. A page out of sight loses it and takes it again. */
export class Awake {
  /** @type {WakeLockSentinel | undefined} */
  #lock;
  #wanted = false;

  /** @param {AbortSignal} signal */
  constructor(signal) {
    document.addEventListener("visibilitychange", () => void this.#take(), { signal });
    signal.addEventListener("abort", () => this.want(false));
  }

  /** @param {boolean} on */
  want(on) {
    if (this.#wanted === on) return;
    this.#wanted = on;
    if (on) return void this.#take();
    void this.#lock?.release().catch(() => null);
    this.#lock = undefined;
  }

  async #take() {
    if (!this.#wanted || document.hidden || !("wakeLock" in navigator)) return;
    try {
      const lock = await navigator.wakeLock.request("screen");
      await this.#lock?.release().catch(() => null);
      if (this.#wanted) this.#lock = lock;
      else await lock.release();
    } catch {
      // low battery: the phone decides
    }
  }
}
