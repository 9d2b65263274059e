import { h } from "./dom.js";

/** Saves a text as a file of the reader's. */
export function saveFile(name, text, type) {
  const link = h("a", { href: URL.createObjectURL(new Blob([text], { type })), download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

/** Puts a text onto the clipboard, by the old way where the new one is refused; says how it went. */
export async function copyText(text) {
  try {
    await navigator.clipboard.writeText(text);
    return "copied";
  } catch {
    const area = h("textarea", { "aria-label": "text to copy" });
    area.value = text;
    document.body.append(area);
    area.select();
    const done = document.execCommand("copy");
    area.remove();
    return done ? "copied" : "this browser does not let a page copy";
  }
}
