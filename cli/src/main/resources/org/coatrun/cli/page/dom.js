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

/** Whether something is known. */
export const known = (value) => value !== null && value !== undefined && value !== "";

/** Does a thing once a burst of calls has ended. */
export function afterBurst(milliseconds, action) {
  let timer = 0;
  return () => { clearTimeout(timer); timer = setTimeout(action, milliseconds); };
}
