// @ts-check
/* Dark or daylight: as the phone has it, or as last tapped. */
const KEY = "beadwright theme";
const root = document.documentElement;
const light = matchMedia("(prefers-color-scheme: light)");

function read() {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}

/** @param {string} theme */
function write(theme) {
  try {
    localStorage.setItem(KEY, theme);
  } catch {
    // Storage blocked: it holds for this visit.
  }
}

const now = () => root.dataset["theme"] ?? (light.matches ? "daylight" : "dark");

function label() {
  for (const button of document.querySelectorAll("[data-theme-switch]")) {
    if (!(button instanceof HTMLElement)) continue;
    button.hidden = false;
    button.textContent = now() === "dark" ? "Daylight" : "Dark";
  }
}

const last = read();
if (last === "dark" || last === "daylight") root.dataset["theme"] = last;
label();
document.addEventListener("turbo:load", label);
light.addEventListener("change", label);
document.addEventListener("click", ({ target }) => {
  if (!(target instanceof Element) || !target.closest("[data-theme-switch]")) return;
  const theme = now() === "dark" ? "daylight" : "dark";
  root.dataset["theme"] = theme;
  write(theme);
  label();
});
