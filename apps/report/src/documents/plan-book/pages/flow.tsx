import type { VNode } from 'preact';
import type { FlowItem, FlowPart } from '../../../layout/book.js';
import { SheetHead } from '../../../parts/parts.js';
import type { TableSpec } from '../../../parts/table.js';
import { common } from '../../../words/en/common.js';
import { fill } from '../../../words/fill.js';

export const block = (node: VNode, keepWithNext = false): FlowItem => ({ kind: 'block', node, keepWithNext });
export const table = (spec: TableSpec | null): FlowItem[] => (spec === null || spec.rows.length === 0 ? [] : [{ kind: 'table', spec }]);

export function flow(name: string, title: string, items: readonly FlowItem[], status?: string): FlowPart {
  return {
    kind: 'flow',
    name,
    title,
    items,
    head: (part, parts) => (
      <SheetHead
        id={part === 1 ? name : `${name}-${part}`}
        title={part === 1 ? title : `${title} (${common.continued})`}
        status={
          status === undefined && parts === 1 ? undefined : (
            <span>{[...(status === undefined ? [] : [status]), ...(parts > 1 ? [fill(common.partOf, { part, parts })] : [])].join(', ')}</span>
          )
        }
      />
    ),
  };
}

export const Said = ({ title, sentences }: { title: string; sentences: readonly string[] }): VNode => (
  <div>
    <h3>{title}</h3>
    {sentences.map((s) => (
      <p>{s}</p>
    ))}
  </div>
);
