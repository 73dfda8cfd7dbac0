import { graphlib, layout } from '@dagrejs/dagre';
import type { BlockedAnswer, Cause } from '../../domain/model/answer.ts';
import { causeLine } from '../say/blocked.ts';
import { day } from '../say/words.ts';
import { ACT, INK, RULE, sheet, text, wrapped } from './paper.ts';

const LETTERS = 24;
const [BOX, LINE, PAD, MARGIN] = [230, 20, 12, 24];
/** More causes than this are no picture any more; the words still say them all. */
const MOST = 60;
const MOST_USUAL = 8;

interface Box { lines: string[]; act: boolean; usual?: boolean }

/**
 * What holds up a part: what must come first stands left of what waits on it. Boxes with something to do are tinted and have a heavy edge.
 * What only the trade's usual order puts before it is dashed. `at`: ISO, for "tomorrow".
 */
export function drawHoldingUp(answer: BlockedAnswer, at: string): string {
  const graph = new graphlib.Graph({ multigraph: false });
  graph.setGraph({ rankdir: 'RL', nodesep: 18, ranksep: 46, marginx: MARGIN, marginy: MARGIN });
  graph.setDefaultEdgeLabel(() => ({}));
  const boxes = new Map<string, Box>();
  const add = (id: string, words: string[], act: boolean, usual = false): void => {
    const lines = words.flatMap(w => wrapped(w, LETTERS));
    boxes.set(id, { lines, act, usual });
    graph.setNode(id, { width: BOX, height: lines.length * LINE + 2 * PAD });
  };
  add('part', [answer.part], false);
  const grow = (causes: readonly Cause[], of: string): void => causes.forEach(c => {
    const id = `${c.cause}:${c.what}`;
    if (!boxes.has(id) && boxes.size >= MOST) return;
    const known = boxes.has(id);
    const line = causeLine(c, { at });
    const from = c.clears && !line.includes(day(c.clears, at)) ? [`(${day(c.clears, at)} at the earliest)`] : [];
    if (!known) add(id, [line, ...(c.act && !c.causes.length ? [`→ ${c.act}`] : []), ...from], Boolean(c.act) && !c.causes.length);
    graph.setEdge(of, id);
    if (!known) grow(c.causes, id);
  });
  grow(answer.causes, 'part');
  for (const { first } of (answer.usual ?? []).slice(0, MOST_USUAL)) {
    const id = `usual:${first}`;
    add(id, [`usually ${first} first`], false, true);
    graph.setEdge('part', id);
  }
  layout(graph);
  return rendered(graph, boxes, `What holds up the ${answer.part}`);
}

function rendered(graph: graphlib.Graph, boxes: Map<string, Box>, title: string): string {
  const lines = graph.edges().map((e: { v: string; w: string }) => {
    const points = (graph.edge(e) as unknown as { points: { x: number; y: number }[] }).points;
    return `<polyline points="${points.map(p => `${p.x.toFixed(1)},${p.y.toFixed(1)}`).join(' ')}" fill="none" stroke="${RULE}" stroke-width="2"/>`;
  });
  const drawn = [...boxes].map(([id, box]) => {
    const n = graph.node(id);
    const [x, y] = [n.x - n.width / 2, n.y - n.height / 2];
    const words = box.lines.map((l, i) => text(n.x, y + PAD + LINE * (i + 0.75), l, `text-anchor="middle"${id === 'part' ? ' font-weight="bold"' : ''}`));
    return `<rect x="${x.toFixed(1)}" y="${y.toFixed(1)}" width="${n.width}" height="${n.height}" fill="${box.act ? ACT : '#fff'}" stroke="${INK}" stroke-width="${box.act ? 2.5 : 1}"${box.usual ? ' stroke-dasharray="6 4"' : ''}/>${words.join('')}`;
  });
  const { width = 300, height = 100 } = graph.graph();
  return sheet(width, height, title, lines.join('') + drawn.join(''));
}
