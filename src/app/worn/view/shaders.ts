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
void main() {
  facing = vec3(dot(rows[0].xyz, normal), dot(rows[1].xyz, normal), dot(rows[2].xyz, normal));
  value = band;
  gl_Position = onScreen(seen(place));
}`;

export const SOLID_FRAGMENT = `#version 300 es
precision highp float;
in vec3 facing;
in float value;
uniform bool banded;
uniform vec3 plain;
uniform vec3 bands[7];
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
  float light = 0.5 + 0.5 * max(0.0, dot(n, normalize(vec3(-0.35, 0.5, 0.8))));
  colour = vec4(base * light, 1.0);
}`;

export const STROKE_VERTEX = `#version 300 es
precision highp float;
layout(location = 0) in vec3 place;
layout(location = 1) in vec3 other;
layout(location = 2) in float side;
${PLACED}
uniform float width;
void main() {
  vec3 s = seen(place);
  vec2 along = seen(other).xy - s.xy;
  vec2 unit = length(along) > 1e-6 ? normalize(along) : vec2(0.0, 1.0);
  s.xy += side * width / size.y * vec2(-unit.y, unit.x);
  gl_Position = onScreen(s);
}`;

export const STROKE_FRAGMENT = `#version 300 es
precision highp float;
uniform vec3 colour;
out vec4 shown;
void main() { shown = vec4(colour, 1.0); }`;
