const TURN = { ArrowLeft: [0.1, 0], ArrowRight: [-0.1, 0], ArrowUp: [0, 0.1], ArrowDown: [0, -0.1] };
const NEARER = { "+": 0.85, "=": 0.85, "-": 1.18 };

/** Clicks and keys on the view. */
export function wireCanvas(canvas, page) {
  let down = null;
  // A second finger turns a tap into a pinch; a finger is less steady than a mouse.
  canvas.addEventListener("pointerdown", (e) => { down = e.isPrimary ? [e.clientX, e.clientY] : null; });
  canvas.addEventListener("pointerup", (e) => {
    if (!page.scene || !down || Math.hypot(e.clientX - down[0], e.clientY - down[1]) > (e.pointerType === "mouse" ? 4 : 12)) return;
    const n = page.scene.pick(e.clientX, e.clientY);
    page.model.choose(n < 0 ? null : page.model.elements[n], page.model.several || e.ctrlKey || e.metaKey || e.shiftKey);
  });
  canvas.addEventListener("keydown", (e) => {
    if (!page.scene || (!TURN[e.key] && !NEARER[e.key] && e.key !== "Home")) return;
    e.preventDefault();
    if (e.key === "Home") { page.scene.fit(); return; }
    const [about, up] = TURN[e.key] || [0, 0];
    if (e.shiftKey && TURN[e.key]) page.scene.pan(-about, up);
    else page.scene.turn(about, up, NEARER[e.key] || 1);
  });
}
