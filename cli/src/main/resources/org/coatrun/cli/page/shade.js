/** What stands in the fourth byte of an element's paint, 0 if it is hidden; its hatch is in the bits above. */
const CHOSEN = 4, THROUGH = 8, HATCH = 16;

export const codeOf = ({ hatch, chosen, through }) => 1 + HATCH * hatch + (chosen ? CHOSEN : 0) + (through ? THROUGH : 0);

export const isThrough = (code) => ((code - 1) & THROUGH) !== 0 && ((code - 1) & CHOSEN) === 0;

/** How elements are coloured: colour, hatch and visibility of each stand in a small texture. */
export const VERTEX = `
in float owner; in float state;
uniform sampler2D palette; uniform float side;
flat out vec4 paint; flat out float face; out vec3 place; out vec3 eye;
void main() {
  float row = floor((owner + 0.5) / side);
  paint = texelFetch(palette, ivec2(int(owner - row * side + 0.5), int(row)), 0);
  face = state;
  place = position;
  vec4 seen = modelViewMatrix * vec4(position, 1.0);
  eye = seen.xyz;
  gl_Position = paint.a < 0.5 / 255.0 ? vec4(2.0, 2.0, 2.0, 1.0) : projectionMatrix * seen;
}`;

const HEAD = `
precision highp float;
flat in vec4 paint; flat in float face; in vec3 place; in vec3 eye; out vec4 colour;
uniform vec4 cut; uniform bool hatched; uniform bool faces; uniform vec3 paper; uniform vec3 ink;
float code() { return floor(paint.a * 255.0 + 0.5); }
bool isChosen() { return mod(code() - 1.0, 8.0) > 3.5; }
bool isThrough() { return mod(code() - 1.0, 16.0) > 7.5; }
`;

/** Light stays within 0.85 and 1, so that a scale keeps its order. */
export const FRAGMENT = `${HEAD}
void main() {
  if (dot(cut.xyz, place) > cut.w) discard;
  if (isThrough() && !isChosen() && mod(floor(gl_FragCoord.x) + mod(floor(gl_FragCoord.y), 4.0), 4.0) + mod(floor(gl_FragCoord.y), 2.0) > 0.5) discard;
  vec3 n = normalize(cross(dFdx(eye), dFdy(eye)));
  float light = 0.85 + 0.15 * abs(dot(n, normalize(vec3(0.3, 0.5, 0.8))));
  vec3 c = paint.rgb;
  if (hatched) {
    float h = floor((code() - 1.0) / 16.0);
    float way = mod(h, 4.0);
    float t = way < 0.5 ? gl_FragCoord.x : way < 1.5 ? gl_FragCoord.y
      : way < 2.5 ? gl_FragCoord.x + gl_FragCoord.y : gl_FragCoord.x - gl_FragCoord.y;
    if (h > 0.5 && mod(t, h > 4.5 ? 5.0 : 10.0) < 1.5) c = mix(c, paper, 0.65);
  }
  if (faces && face > 0.5) {
    c = mix(c, paper, 0.75);
    if (mod(gl_FragCoord.x + gl_FragCoord.y, 8.0) < 1.5) c *= 0.6;
  }
  if (isChosen()) c = mix(c, vec3(0.95, 0.1, 0.35), 0.75);
  colour = vec4(c * light, 1.0);
}`;

export const EDGE_FRAGMENT = `${HEAD}
void main() {
  if (dot(cut.xyz, place) > cut.w) discard;
  float far = clamp(-eye.z / 150.0, 0.0, 0.6);
  if (isThrough() && !isChosen()) {
    if (mod(floor(gl_FragCoord.x) + floor(gl_FragCoord.y), 2.0) > 0.5 || mod(floor(gl_FragCoord.x), 4.0) > 1.5) discard;
    colour = vec4(mix(paper, ink, 0.4), 1.0);
    return;
  }
  colour = vec4(isChosen() ? mix(vec3(0.75, 0.0, 0.25), ink, 0.2) : mix(mix(paint.rgb, ink, 0.55), paint.rgb, far), 1.0);
}`;
