/** Type, tables and note boxes of every document. Black on white; nothing depends on colour. */
export const baseCss = `
*{box-sizing:border-box;margin:0;padding:0}
html{font:400 var(--body)/var(--unit) "Source Sans 3";color:#000;background:#fff;font-variant-numeric:tabular-nums lining-nums}
.page{position:relative;break-after:page;display:grid;align-content:space-between;grid-template-columns:minmax(0,1fr)}
.page:last-child{break-after:auto}
.page.flow{align-content:start}
.measure{position:relative}
svg{display:block;overflow:visible}
ul,ol{list-style:none}
p,li,dd,td,th{text-wrap:pretty;overflow-wrap:anywhere}
h1,h2,h3{text-wrap:balance;overflow-wrap:anywhere}
a{color:#000;text-decoration:none}
strong{font-weight:700}
h1{font:700 var(--title)/10mm "Source Sans 3";letter-spacing:-.1mm}
h2.title{font:700 var(--title)/10mm "Source Sans 3";letter-spacing:-.1mm}
h3,caption,.word{font:700 var(--lead)/var(--unit) "Source Sans 3"}
h3.gap{margin-bottom:1.5mm}
h3 span{font-weight:400}
.over{font:400 var(--lead)/var(--unit) "Source Sans 3"}
.top{display:grid;grid-template-columns:minmax(0,1fr) auto;column-gap:5mm;align-items:end;padding-top:1.5mm}
.status{border:var(--r1) solid;padding:1.2mm 3mm;font-weight:700;margin-bottom:1.2mm;max-width:78mm}
.status span{font-weight:400}
.small{font-size:var(--label);font-weight:500;line-height:4.2mm}
.lead{font-size:var(--lead)}
.block{padding-bottom:4mm}
.block.tight{padding-bottom:2mm}

table{border-collapse:collapse;width:100%;font-size:var(--table);line-height:5mm}
table.cols{table-layout:fixed}
caption{text-align:left;padding-bottom:1mm}
th,td{text-align:right;padding:.25mm 0 .25mm 3mm;font-weight:400;vertical-align:top}
th:first-child,td:first-child,.l{text-align:left}
th:first-child,td:first-child{padding-left:0}
thead th,thead td{border-bottom:var(--r2) solid;font-size:var(--label);font-weight:500;line-height:4.2mm;padding-bottom:.8mm;vertical-align:bottom}
tbody tr:last-child>*{border-bottom:var(--r1) solid}
tbody tr.third>*{border-bottom:var(--r1) solid}
tfoot th,tfoot td{font-weight:700;border-bottom:var(--r2) solid;padding-top:.8mm;padding-bottom:.8mm}
.key{font-weight:700}
td.unit{text-align:left}
td.m{padding-top:0;padding-bottom:0}
tr.grp th{font-weight:700;padding-top:2mm}
tr{break-inside:avoid}
.nowrap{white-space:nowrap;text-wrap:nowrap;overflow-wrap:normal}

.box-stop,.box-care,.box-ask{display:grid}
.word{display:block}
.box-stop{grid-template-columns:18mm minmax(0,1fr);gap:4mm;align-items:center;border:var(--r3) solid;padding:2mm 3mm 2mm 8mm;position:relative}
.box-stop::before{content:"";position:absolute;inset:0 auto 0 0;width:4mm;background:var(--accent);border-right:var(--r1) solid}
.box-care{grid-template-columns:10mm minmax(0,1fr);gap:3mm;align-items:center;border:var(--r1) solid;padding:1.6mm 2mm}
.box-ask{border:var(--r2) dashed;padding:1.6mm 2.5mm}
.box-note{font-size:var(--label);font-weight:500;line-height:4.2mm}
ul.dash li,ul.tick li,.steps li{position:relative}
.dash li{padding-left:3.6mm}
.dash li::before{content:"\\2013";position:absolute;left:0}
.tick li{padding-left:6.5mm;margin-bottom:.6mm}
.tick li::before{content:"";position:absolute;left:0;top:.7mm;width:3.6mm;height:3.6mm;border:var(--r1) solid}
.two{columns:2;column-gap:6mm}
.two li{break-inside:avoid;padding-bottom:.6mm}
.steps{counter-reset:s}
.steps li{counter-increment:s;padding-left:7mm;margin-bottom:1.2mm}
.steps li::before{content:counter(s);position:absolute;left:0;font-weight:700;font-size:var(--lead)}

.strip{position:absolute;left:0;bottom:.4mm;width:100%;display:grid}
.strip>svg{margin:1.4mm 3mm 0}
.tblock{display:grid;grid-template-columns:repeat(6,minmax(0,1fr));grid-auto-rows:1fr}
.tblock>div{padding:.9mm 1mm 0 1.5mm;white-space:nowrap;overflow:hidden;text-overflow:ellipsis}
.tblock dt{font-size:var(--small);font-weight:500;line-height:3mm}
.tblock dd{font-size:10.75pt;font-weight:500;line-height:3.8mm}
.tblock dd{text-wrap:nowrap;overflow:hidden;text-overflow:ellipsis}
.tblock .big dd,.tblock h2{font-size:var(--lead);font-weight:700;line-height:3.9mm}
.sheet{position:relative}
`;
