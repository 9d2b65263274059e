/** What of the page a link carries: kept in the fragment, so that it never leaves the machine. */
export function readState() {
  const state = {};
  for (const pair of location.hash.slice(1).split("&")) {
    const [key, value] = pair.split("=");
    if (value !== undefined) {
      try { state[key] = decodeURIComponent(value); } catch { /* a mangled link: leave the part out */ }
    }
  }
  return state;
}

export function linkTo(state) {
  const pairs = Object.entries(state).filter(([, v]) => v !== "" && v !== null && v !== undefined);
  return `${location.href.split("#")[0]}#${pairs.map(([k, v]) => `${k}=${encodeURIComponent(v)}`).join("&")}`;
}
