// @ts-check
/** Something that went wrong, by kind; `fault_words.js` holds the sentence for each kind. */
export class Fault extends Error {
  /**
   * @param {string} kind one of the keys of WORDS in fault_words.js
   * @param {string} [detail] the file or message, for the panel's small print
   */
  constructor(kind, detail = "") {
    super(detail ? `${kind}: ${detail}` : kind);
    this.name = "Fault";
    this.kind = kind;
    this.detail = detail;
  }
}

/** @param {unknown} error @returns {Fault} */
export function asFault(error) {
  if (error instanceof Fault) return error;
  return new Fault("broken", error instanceof Error ? error.message : String(error));
}
