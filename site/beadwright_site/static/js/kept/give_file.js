// @ts-check
/** How the app's own files end, so that a phone knows which app opens them. */
export const ENDING = ".beadwright";

/**
 * Hand over a file: to the phone's share sheet where it takes files, else as a download.
 * @param {File} file @returns {Promise<string>} what to say
 */
export async function giveFile(file) {
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file] });
      return "Handed over";
    } catch (error) {
      if (error instanceof DOMException && error.name === "AbortError") return "Not handed over";
    }
  }
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  return "Saved";
}
