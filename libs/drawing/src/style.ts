/**
 * The only place where a line width of a drawing is set: 0.18, 0.35 and 0.70 mm (ISO 128 steps of 1 : 2 : 4), all black.
 * `let` is the lettering of drawings, capitals 2.5 mm high; `small` is 9 pt, the floor.
 */
export const LINE_MM = { fine: 0.18, normal: 0.35, thick: 0.7 } as const;

/** Letter sizes in mm: lettering, chart labels, small, heading. Source Sans 3 capitals are 0.66 em high. */
export const TEXT_MM = { let: 3.788, label: 3.528, small: 3.175, head: 4.586 } as const;

export const DRAWING_CSS = `
svg.lw{display:block;overflow:hidden}
svg.lw *{fill:none;stroke:none}
svg.lw .vis,svg.lw .tick,svg.lw .face,svg.lw .tag{stroke:#000;stroke-width:${LINE_MM.normal}}
svg.lw .thin,svg.lw .box,svg.lw .facethin{stroke:#000;stroke-width:${LINE_MM.fine}}
svg.lw .cut,svg.lw .facecut{stroke:#000;stroke-width:${LINE_MM.thick}}
svg.lw .hid{stroke:#000;stroke-width:${LINE_MM.normal};stroke-dasharray:2.8 .9}
svg.lw .over{stroke:#000;stroke-width:${LINE_MM.fine};stroke-dasharray:2.2 .8}
svg.lw .axis{stroke:#000;stroke-width:${LINE_MM.fine};stroke-dasharray:6 .9 .5 .9}
svg.lw .temp{stroke:#000;stroke-width:${LINE_MM.normal};stroke-dasharray:1 1}
svg.lw .grid{stroke:#000;stroke-width:${LINE_MM.fine};stroke-dasharray:.4 1.2}
svg.lw .face,svg.lw .facethin,svg.lw .facecut,svg.lw .tag,svg.lw .blank{fill:#fff}
svg.lw .poche,svg.lw .dot,svg.lw .solid{fill:#000}
svg.lw path,svg.lw circle{stroke-linejoin:round}
svg.lw text{fill:#000;font:500 ${TEXT_MM.label}px "Source Sans 3";font-variant-numeric:tabular-nums}
svg.lw text.let{font:500 ${TEXT_MM.let}px "Source Sans 3"}
svg.lw text.b{font-weight:700}
svg.lw text.small{font-size:${TEXT_MM.small}px}
svg.lw text.head{font:700 ${TEXT_MM.head}px "Source Sans 3"}
`;
