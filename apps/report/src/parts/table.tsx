import type { ComponentChildren, VNode } from 'preact';

export interface Column {
  head: ComponentChildren;
  /** Millimetres, or null for the rest of the width. */
  widthMm: number | null;
  left?: boolean;
  /** Under the bars of a chart. */
  middle?: boolean;
  key?: boolean;
  /** Dates and sizes: never broken over two lines. */
  whole?: boolean;
}

export interface Row {
  cells: readonly ComponentChildren[];
  /** A heading row over the group that follows: its one cell spans the table. */
  group?: boolean;
  /** Cells after the first that one text spans ("no record"). */
  spanned?: string;
}

export interface TableSpec {
  caption: string;
  columns: readonly Column[];
  rows: readonly Row[];
  foot?: Row;
  /** Thin rule under every third row. */
  thirds?: boolean;
  /** Narrow columns: less room between them. */
  snug?: boolean;
  /** Tall ruled cells to write in by hand. */
  pen?: boolean;
}

const cellClass = (column: Column | undefined): string =>
  [column?.left === true ? 'l' : '', column?.middle === true ? 'm' : '', column?.key === true ? 'key' : '', column?.whole === true ? 'nowrap' : '']
    .filter((c) => c !== '')
    .join(' ');

const Cells = ({ row, columns }: { row: Row; columns: readonly Column[] }): VNode => {
  const [first, ...rest] = row.cells;
  if (row.group === true) {
    return (
      <th scope="rowgroup" colSpan={columns.length}>
        {first}
      </th>
    );
  }
  return (
    <>
      <th scope="row">{first}</th>
      {row.spanned === undefined ? (
        rest.map((cell, i) => (
          <td class={cellClass(columns[i + 1])} key={i}>
            {cell}
          </td>
        ))
      ) : (
        <td class="l" colSpan={columns.length - 1}>
          {row.spanned}
        </td>
      )}
    </>
  );
};

export interface TableProps {
  spec: TableSpec;
  /** Rows to set; a table that runs over several pages is set in slices. */
  from?: number;
  to?: number;
  captionText?: string;
  withFoot?: boolean;
  /** Name under which the rows' heights are asked for in the measuring pass. */
  measure?: string;
}

/** No boxes: a rule under the head, a hairline at the foot. Title in the caption, scope on every head. */
export const Table = ({ spec, from = 0, to = spec.rows.length, captionText = spec.caption, withFoot = true, measure }: TableProps): VNode => (
  <table class={spec.pen === true ? 'cols log' : spec.snug === true ? 'cols snug' : 'cols'}>
    <caption>
      <h3>{captionText}</h3>
    </caption>
    <colgroup>
      {spec.columns.map((column, i) => (
        <col key={i} style={column.widthMm === null ? '' : `width:${column.widthMm}mm`} />
      ))}
    </colgroup>
    <thead>
      <tr>
        {spec.columns.map((column, i) => (
          <th scope="col" key={i} class={column.left === true ? 'l' : column.middle === true ? 'm' : ''}>
            {column.head}
          </th>
        ))}
      </tr>
    </thead>
    <tbody>
      {spec.rows.slice(from, to).map((row, i) => (
        <tr
          key={from + i}
          class={row.group === true ? 'grp' : spec.thirds === true && (from + i + 1) % 3 === 0 ? 'third' : ''}
          {...(measure === undefined ? {} : { 'data-measure': `${measure}/r${from + i}` })}
        >
          <Cells row={row} columns={spec.columns} />
        </tr>
      ))}
    </tbody>
    {spec.foot !== undefined && withFoot ? (
      <tfoot>
        <tr {...(measure === undefined ? {} : { 'data-measure': `${measure}/foot` })}>
          <Cells row={spec.foot} columns={spec.columns} />
        </tr>
      </tfoot>
    ) : null}
  </table>
);
