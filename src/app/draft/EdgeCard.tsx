// Top edge and hem: a shape to start from, and every place of it as a number.

import {
  changeStyle,
  DRAFT,
  edgeShapeName,
  edgeShapeNamed,
  HEM_EDGES,
  type NamedEdge,
  setEdgeNode,
  TOP_EDGES,
} from '../../document';
import { EDGE_NODES, type EdgeNodeName, styleSpan, TOP_LEVELS, type TopLevel } from '../../engine';
import { Checkbox } from '../components/fields/Checkbox';
import { LengthField } from '../components/fields/LengthField';
import { useStyleNumber } from '../components/fields/useNumberEdit';
import { useDraft, useOpen, useStore } from '../store/storeContext';

const TEXTS = DRAFT.edges;

const EDGES = [
  { edge: 'topShape', title: TEXTS.topShape.title, named: TOP_EDGES },
  { edge: 'hemShape', title: TEXTS.hemShape.title, named: HEM_EDGES },
] as const;

type EdgeName = (typeof EDGES)[number]['edge'];

const EDGE_CODES = { topShape: 'top', hemShape: 'hem' } as const;

/** On a shouldered block the top edge is neckline and armhole, and shoulder and nape set the rest of them. */
const SHOULDERED_NODES: readonly EdgeNodeName[] = ['centreFront', 'underarm'];

export function EdgeCard() {
  const { savedDraft } = useOpen();
  const { pieces } = useDraft();
  const shouldered = pieces.some(({ edges }) => edges.some(({ role }) => role === 'shoulder'));
  const change = useStore((state) => state.change);
  return (
    <section className="edge-card" aria-label={TEXTS.title}>
      {EDGES.map(({ edge, title, named }) => (
        <div key={edge} className="edge-shape">
          <div className="edge-head">
            <h3>{title}</h3>
            {edge === 'topShape' && shouldered ? null : <ShapeChoice edge={edge} named={named} />}
            {edge === 'topShape' ? (
              <label className="choice">
                <span>
                  <span className="unseen">{`${TEXTS.topFrom.unseen} `}</span>
                  {TEXTS.topFrom.seen}
                </span>
                <select
                  value={savedDraft.style.topFrom}
                  onChange={(event) => {
                    const topFrom = TOP_LEVELS.find((level) => level === event.target.value) ?? 'overBust';
                    change({ code: 'topLineSet' }, (book) =>
                      changeStyle(book, (style) => ({ ...style, topFrom })),
                    );
                  }}
                >
                  {TOP_LEVELS.map((level: TopLevel) => (
                    <option key={level} value={level}>
                      {TEXTS.levelLine({ level })}
                    </option>
                  ))}
                </select>
              </label>
            ) : null}
          </div>
          <p className="hint">{edge === 'topShape' && shouldered ? TEXTS.shouldered : TEXTS[edge].hint}</p>
          <div className="edge-nodes">
            {(edge === 'topShape' && shouldered ? SHOULDERED_NODES : EDGE_NODES).map((node) => (
              <NodeField key={node} edge={edge} node={node} />
            ))}
          </div>
        </div>
      ))}
    </section>
  );
}

function ShapeChoice({ edge, named }: { edge: EdgeName; named: readonly NamedEdge[] }) {
  const { savedDraft } = useOpen();
  const change = useStore((state) => state.change);
  const name = edgeShapeName(savedDraft.style[edge], named);
  return (
    <label className="choice">
      <span className="unseen">{TEXTS[edge].shape}</span>
      <select
        value={name}
        onChange={(event) => {
          const shape = edgeShapeNamed(event.target.value, named);
          change({ code: 'edgeShapeSet', edge: EDGE_CODES[edge] }, (book) =>
            changeStyle(book, (style) => ({ ...style, [edge]: shape })),
          );
        }}
      >
        {named.map(({ name: each, label }) => (
          <option key={each} value={each}>
            {label}
          </option>
        ))}
        {name === 'free' ? <option value="free">{TEXTS.free}</option> : null}
      </select>
    </label>
  );
}

function NodeField({ edge, node }: { edge: EdgeName; node: EdgeNodeName }) {
  const { client, savedDraft } = useOpen();
  const edit = useStyleNumber();
  const change = useStore((state) => state.change);
  const { beyond, kind } = savedDraft.style[edge][node];
  return (
    <div className="edge-node">
      <span className="edge-node-name">{TEXTS.places[node]}</span>
      <LengthField
        compact={true}
        signed={true}
        span={styleSpan(`${edge}.${node}.beyond`)}
        label={TEXTS[edge].at({ node })}
        value={beyond}
        unit={client.unit}
        {...edit({ code: 'edgeNodeSet', edge: EDGE_CODES[edge], node }, (style, beyond) =>
          setEdgeNode(style, edge, node, { kind, beyond }),
        )}
      />
      <Checkbox
        small={true}
        on={kind === 'corner'}
        onSet={(corner) =>
          change({ code: 'edgeNodeSet', edge: EDGE_CODES[edge], node }, (book) =>
            changeStyle(book, (style) =>
              setEdgeNode(style, edge, node, { beyond, kind: corner ? 'corner' : 'smooth' }),
            ),
          )
        }
      >
        {TEXTS.corner}
        <span className="unseen"> {TEXTS[edge].inEdge({ node })}</span>
      </Checkbox>
    </div>
  );
}
