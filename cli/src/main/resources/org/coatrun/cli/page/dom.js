const SVG = "http://www.w3.org/2000/svg";

function fill(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes || {})) {
    if (name.startsWith("on")) element.addEventListener(name.slice(2), value);
    else if (value === true) element.setAttribute(name, "");
    else if (value !== false && value !== undefined && value !== null) element.setAttribute(name, value);
  }
  element.append(...children.filter((c) => c !== undefined && c !== null && c !== false));
  return element;
}

/** A DOM element: text from the model only ever becomes text. */
export function h(tag, attributes, ...children) {
  return fill(document.createElement(tag), attributes, children);
}

/** The same of a drawing. */
export function svg(tag, attributes, ...children) {
  return fill(document.createElementNS(SVG, tag), attributes, children);
}

export const byId = (id) => document.getElementById(id);

/** The bytes that a text carries in base64. */
export function bytesOf(base64) {
  const text = base64.trim();
  if (Uint8Array.fromBase64) return Uint8Array.fromBase64(text);
  const binary = atob(text), bytes = new Uint8Array(binary.length);
  for (let i = 0; i < binary.length; i++) bytes[i] = binary.charCodeAt(i);
  return bytes;
}

/** Once what was drawn is in sight; in a hidden page, soon. */
export const afterPaint = () => new Promise((go) => {
  requestAnimationFrame(() => setTimeout(go));
  setTimeout(go, 200);
});

/** Whether something is known. */
export const known = (value) => value !== null && value !== undefined && value !== "";

/** Does a thing once a burst of calls has ended. */
export function afterBurst(milliseconds, action) {
  let timer = 0;
  return () => { clearTimeout(timer); timer = setTimeout(action, milliseconds); };
}
