/** Layout of the pages of this one document; type, tables and boxes are in theme/base.css.ts. */
export const planBookCss = `
.page{row-gap:2.5mm}
.page.flow,.page.landscape{row-gap:0}
.page.landscape{align-content:start}
.cover-a{display:grid;grid-template-columns:minmax(0,1fr) 62mm;gap:7mm}
.facts{display:grid;grid-template-columns:auto minmax(0,1fr);column-gap:3mm;row-gap:1.2mm;align-content:start}
.facts dt{font-weight:700}
.toc{columns:2;column-gap:10mm;border-top:var(--r2) solid;border-bottom:var(--r1) solid;padding:1mm 0}
.toc li{display:flex;justify-content:space-between;column-gap:3mm;break-inside:avoid;line-height:6mm}
.look-a{display:grid;grid-template-columns:minmax(0,1fr) 72mm;gap:6mm;align-items:center}
.look-b{display:grid;grid-template-columns:104mm minmax(0,1fr);gap:7mm}
.stackgap{display:grid;align-content:space-between;row-gap:3mm}
.expect td.pic{padding:0 0 0 3mm;border-bottom:var(--r1) solid}
.expect tbody tr{height:5.8mm}
.expect tbody tr>*{padding-top:0;padding-bottom:0;vertical-align:middle}
.expect td.unit{padding-left:3mm}
.risks{display:grid;grid-template-columns:repeat(3,minmax(0,1fr));gap:5mm}
.risks>div{border-top:var(--r2) solid;padding-top:1.2mm}
.site-a{display:grid;grid-template-columns:70mm minmax(0,1fr);gap:7mm}
.twocol{display:grid;grid-template-columns:repeat(2,minmax(0,1fr));gap:7mm}
.stagehead{display:grid;grid-template-columns:auto minmax(0,1fr) auto;gap:4mm;align-items:center;padding-top:1mm}
.stagehead .status{margin:0}
.num{border:var(--r3) solid;font:700 28pt/12mm "Source Sans 3";width:14mm;text-align:center}
.strip4{display:grid;grid-template-columns:1fr 1.2fr 1fr 1.15fr;border-top:var(--r2) solid;border-bottom:var(--r2) solid}
.strip4>div{padding:1mm 2mm 1mm 3mm}
.strip4>div+div{border-left:var(--r1) solid}
.strip4>div:first-child{padding-left:0}
.strip4 strong{display:block;font-size:var(--lead)}
.strip4 span{display:block;font-size:var(--label);font-weight:500;line-height:4.2mm}
.card{display:grid;grid-template-columns:minmax(0,1fr) 68mm;gap:6mm;align-items:start}
.card>.side{grid-column:2;grid-row:1}
.card>.main{grid-column:1;grid-row:1}
.cares{display:grid;grid-template-columns:repeat(auto-fit,minmax(72mm,1fr));gap:1.6mm 4mm;align-items:stretch}
.main.wide{row-gap:1.4mm}
.main,.side{display:grid;align-content:start}
.side{row-gap:1.4mm}
.side h3:not(:first-child){margin-top:1.6mm}
.steps{padding-top:1.5mm}
.parts{display:grid;grid-template-columns:16mm minmax(0,1fr);row-gap:.6mm;align-items:center}
.sign{display:grid;grid-template-columns:repeat(6,1fr);border:var(--r2) solid;overflow:hidden}
.sign>div{padding:.8mm 2mm;height:13mm;font-size:var(--label);font-weight:500;line-height:4.2mm;border-left:var(--r1) solid;border-top:var(--r1) solid;margin:-1px 0 0 -1px}
.sign .w2{grid-column:span 2}
.sign .w3{grid-column:span 3}
.sign i{font-style:normal;margin-left:3mm;padding-left:5mm;position:relative}
.sign i::before{content:"";position:absolute;left:0;top:.3mm;width:3.4mm;height:3.4mm;border:var(--r1) solid}
.log td,.log th{height:9mm;vertical-align:middle;border-bottom:var(--r1) solid}
.log td{border-left:var(--r1) solid}
.board{display:grid;grid-template-columns:26mm minmax(0,1fr);gap:3mm;align-items:center}
.words{display:grid;grid-template-columns:34mm minmax(0,1fr);column-gap:4mm;row-gap:1mm}
.words dt{font-weight:700}
.topped{display:grid;row-gap:4mm;align-content:start}
.snug td:not(.l){padding-left:.6mm}
.cols .m{text-align:center;padding-left:0;padding-right:0}
`;
