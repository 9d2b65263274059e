const TURN = { ArrowLeft: [0.1, 0], ArrowRight: [-0.1, 0], ArrowUp: [0, 0.1], ArrowDown: [0, -0.1] };
const NEARER = { "+": 0.85, "=": 0.85, "-": 1.18 };

/** How far a hand may slip and still mean the point that it went down on, in pixels. */
const SLIP = { mouse: 4, finger: 12 };

/** Clicks, taps and keys on the view. */
export function wireCanvas(canvas, page) {
  let down = null;
  // A second finger turns a tap into a pinch.
  canvas.addEventListener("pointerdown", (e) => {
    down = e.isPrimary && page.scene ? { x: e.clientX, y: e.clientY, from: page.scene.viewpoint } : null;
  });
  canvas.addEventListener("pointerup", (e) => {
    const slip = e.pointerType === "mouse" ? SLIP.mouse : SLIP.finger;
    if (!down || Math.hypot(e.clientX - down.x, e.clientY - down.y) > slip) return;
    // What slipped has turned the picture a little: what was meant is what stood there before.
    if (page.scene.viewpoint !== down.from) page.scene.viewpoint = down.from;
    const n = page.scene.pick(down.x, down.y, slip);
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
