// Writes a sewn garment as plain data for other programs: the content of worn.json.

import {
  clothLength,
  type Draft,
  type FitFigures,
  otherWay,
  sectionPoints,
  tapeRound,
  type WornGarment,
  type WornHalf,
  wholeMesh,
  worstPlaces,
} from '../../engine';
import { rounded } from './rounded';

/**
 * The whole garment on its body in mm: x to the wearer's left, y down from the shoulder level, z forwards; strains as parts
 * of the length cut, shear in radians, contact in kPa (an estimate). `flat` has each triangle's corners on paper. Levels are those
 * the garment reaches all round: `garmentGirth` is the cloth along the level's line, `tape` a tape round garment and gap at the
 * body's level. There are no scores where the garment is not at rest. `rest.other` says how far, and where, the cloth lies elsewhere
 * in another rest of more energy; null where none was found.
 *
 * @param ms how long it took
 */
export function wornFile(worn: WornGarment, drafted: Draft, ms: number) {
  const { halves } = worn;
  const mesh = wholeMesh(halves);
  const other = otherWay(worn);
  const rests = halves.map(({ draped }) => draped.rest);
  const triangle = (t: number): readonly number[] => [0, 1, 2].map((k) => 3 * t + k);
  return {
    unit: 'mm',
    vertices: Array.from(mesh.standOff, (_, v) => {
      const [x = 0, y = 0, z = 0] = mesh.places.subarray(3 * v, 3 * v + 3);
      return [rounded(x), rounded(-z), rounded(y)];
    }),
    triangles: mesh.panels.map((_, t) => triangle(t).map((k) => mesh.triangles[k])),
    panelOf: mesh.panels.map(({ id }) => id),
    flat: mesh.panels.map((_, t) =>
      triangle(t).map((k) => Array.from(mesh.flat.subarray(2 * k, 2 * k + 2), rounded)),
    ),
    warpStrain: Array.from(mesh.warp, rounded),
    weftStrain: Array.from(mesh.weft, rounded),
    shear: Array.from(mesh.shear, rounded),
    standOff: Array.from(mesh.standOff, rounded),
    contact: Array.from(mesh.contact, rounded),
    levels: levelsOf(halves, drafted),
    scores: scoresOf(worn),
    rest: {
      residual: Math.max(...rests.map(({ residual }) => residual)),
      steps: rests.reduce((sum, { steps }) => sum + steps, 0),
      ms: Math.round(ms),
      atRest: rests.every(({ atRest }) => atRest),
      other: other && { ...other, apart: rounded(other.apart) },
    },
    body: { sections: sectionsOf(halves) },
  };
}

function levelsOf(halves: readonly WornHalf[], { proof }: Draft) {
  return proof.ledger
    .filter(({ sewnGirth }) => sewnGirth !== null)
    .flatMap(({ level: name, bodyGirth }) => {
      // A level sits at one height of the body on its left, and may sit at another on its right.
      const places = halves.flatMap((half) => {
        const [onBody, onPaper] = [half.body.levels, half.levels].map((list) =>
          list.find((each) => each.name === name),
        );
        return onBody && onPaper && 'z' in onBody && 'y' in onPaper
          ? [{ half, z: onBody.z, y: onPaper.y }]
          : [];
      });
      const [first] = places;
      if (!first) return [];
      const mean = (values: readonly number[]): number =>
        values.reduce((sum, value) => sum + value, 0) / values.length;
      const tapes = places.map(({ half, z }) => tapeRound(half.draped, z));
      return [
        {
          name,
          bodyGirth: rounded(bodyGirth),
          garmentGirth: rounded(2 * mean(places.map(({ half, y }) => clothLength(half.draped, y)))),
          tape: tapes.some((tape) => tape === null) ? null : rounded(mean(tapes.map((tape) => tape ?? 0))),
          y: rounded(-first.z),
        },
      ];
    });
}

function scoresOf({ notJudged, halves }: WornGarment) {
  if (notJudged !== null) return {};
  const scores = halves.map(
    ({ side, figures, levels }) =>
      [
        side,
        figures && { ...scoresFrom(figures), worst: worstPlaces(figures, levels).map(allRounded) },
      ] as const,
  );
  const [first] = scores;
  return first?.[0] === null ? (first[1] ?? {}) : Object.fromEntries(scores);
}

const scoresFrom = ({
  standOff,
  stretch,
  girth,
  gape,
  rise,
  apex,
  tapeShare,
  score,
  ...parts
}: FitFigures) => ({
  standOff: rounded(standOff),
  stretch: rounded(stretch),
  girth: rounded(girth),
  gape: rounded(gape),
  rise: rounded(rise),
  apex: apex === null ? null : rounded(apex),
  tapeShare: rounded(tapeShare),
  J: rounded(score),
  regions: parts.regions.map(allRounded),
  edges: parts.edges.map(allRounded),
  marks: parts.marks.map(allRounded),
});

const allRounded = (row: object): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(row).map(([name, value]: [string, unknown]) => [
      name,
      typeof value === 'number'
        ? rounded(value)
        : typeof value === 'object' && value !== null
          ? allRounded(value)
          : value,
    ]),
  );

/** Sections of the body at its levels as closed rings, the left half of a left body and the right half of a right one. */
function sectionsOf(halves: readonly WornHalf[]) {
  const [left, right = left] = halves;
  if (!left || !right) return [];
  return left.body.levels.map(({ name, z }, i) => {
    const ring = sectionPoints(left.body.surface, z);
    const other = sectionPoints(right.body.surface, right.body.levels[i]?.z ?? z);
    return {
      level: name,
      y: rounded(-z),
      points: ring.map((point, k) => {
        const { x, y } = point.x < 0 ? (other[k] ?? point) : point;
        return [rounded(x), rounded(y)];
      }),
    };
  });
}
