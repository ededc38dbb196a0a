// The programs of the WebGL view. `rows` are the three rows of the projection, in units of the picture's half height.

const PLACED = `
uniform vec4 rows[3];
uniform vec2 size;
uniform float ahead;
vec3 seen(vec3 place) {
  vec4 p = vec4(place, 1.0);
  return vec3(dot(rows[0], p), dot(rows[1], p), dot(rows[2], p));
}
vec4 onScreen(vec3 s) { return vec4(s.x * size.y / size.x, s.y, -0.06 * (s.z + ahead), 1.0); }
`;

export const SOLID_VERTEX = `#version 300 es
precision highp float;
layout(location = 0) in vec3 place;
layout(location = 1) in vec3 normal;
layout(location = 2) in float band;
${PLACED}
out vec3 facing;
out float value;
out float height;
void main() {
  height = place.z;
  facing = vec3(dot(rows[0].xyz, normal), dot(rows[1].xyz, normal), dot(rows[2].xyz, normal));
  value = band;
  gl_Position = onScreen(seen(place));
}`;

export const SOLID_FRAGMENT = `#version 300 es
precision highp float;
in vec3 facing;
in float value;
in float height;
uniform bool banded;
uniform vec3 plain;
uniform vec3 bands[7];
uniform vec3 ground;
uniform vec2 shown;
uniform float fading;
out vec4 colour;
void main() {
  vec3 n = normalize(facing);
  if (n.z < 0.0) n = -n;
  vec3 base = plain;
  if (banded) {
    base = bands[int(clamp(floor(value), 0.0, 6.0))];
    float away = abs(value - round(value)) / max(fwidth(value), 1e-4);
    if (value > 0.5 && value < 6.5 && away < 0.7) base *= 0.55;
  }
  float light = 0.46 + 0.46 * max(0.0, dot(n, normalize(vec3(-0.4, 0.55, 0.75)))) + 0.1 * n.z;
  float beyond = max(height - shown.y, shown.x - height);
  colour = vec4(mix(base * light, ground, smoothstep(0.0, 1.0, beyond / fading)), 1.0);
}`;

export const STROKE_VERTEX = `#version 300 es
precision highp float;
layout(location = 0) in vec3 from;
layout(location = 1) in vec3 to;
${PLACED}
uniform float width;
// How far along the stroke, and on which side.
const vec2 CORNERS[6] = vec2[6](
  vec2(0.0, 1.0), vec2(0.0, -1.0), vec2(1.0, -1.0), vec2(1.0, -1.0), vec2(1.0, 1.0), vec2(0.0, 1.0)
);
void main() {
  vec3 s = seen(from);
  vec3 e = seen(to);
  vec2 along = e.xy - s.xy;
  vec2 unit = length(along) > 1e-6 ? normalize(along) : vec2(0.0, 1.0);
  vec2 corner = CORNERS[gl_VertexID];
  vec3 at = mix(s, e, corner.x);
  at.xy += corner.y * width / size.y * vec2(-unit.y, unit.x);
  gl_Position = onScreen(at);
}`;

export const STROKE_FRAGMENT = `#version 300 es
precision highp float;
uniform vec4 colour;
out vec4 shown;
void main() { shown = colour; }`;

export const EYELET_VERTEX = `#version 300 es
precision highp float;
layout(location = 0) in vec3 place;
${PLACED}
uniform float width;
void main() {
  gl_Position = onScreen(seen(place));
  gl_PointSize = width;
}`;

/** A ring round a hole. */
export const EYELET_FRAGMENT = `#version 300 es
precision highp float;
uniform vec3 ring;
uniform vec3 hole;
out vec4 shown;
void main() {
  float r = length(gl_PointCoord - 0.5) * 2.0;
  if (r > 1.0) discard;
  shown = vec4(r > 0.5 ? ring : hole, 1.0);
}`;
