/** Sizes and the one accent. Page rules come in whole CSS pixels, as the browser cuts borders to them; drawings use SVG strokes instead. */
export const tokensCss = `:root{--accent:#9b2c10;--r1:1px;--r2:2px;--r3:3px;--unit:5mm;--body:11.5pt;--table:11pt;--label:10pt;--small:9pt;--lead:13pt;--title:24pt}`;
