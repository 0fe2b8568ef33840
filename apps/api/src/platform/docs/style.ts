/** The one style sheet of the pages for people. It names no other file: the pages may load nothing. */
export const STYLE = `
:root{color-scheme:light dark;--ink:#1f2421;--soft:#59635c;--paper:#fdfdfb;--line:#d5d9d2;--wash:#f2f4ef;--leaf:#2b6a3f;--link:#1d5f8a;
--get:#1d5f8a;--post:#2b6a3f;--patch:#8a5a00;--delete:#a1341f}
@media(prefers-color-scheme:dark){:root{--ink:#e6e9e4;--soft:#a5afa8;--paper:#161a18;--line:#39413c;--wash:#1f2522;--leaf:#8ccf9f;--link:#8cc4ea;
--get:#8cc4ea;--post:#8ccf9f;--patch:#e6bb6a;--delete:#f0a08e}}
*{box-sizing:border-box}
html{scroll-padding-top:1rem}
body{margin:0;font:16px/1.55 system-ui,sans-serif;color:var(--ink);background:var(--paper);overflow-wrap:break-word}
a{color:var(--link);text-underline-offset:.15em}
a:focus-visible,summary:focus-visible{outline:2px solid var(--link);outline-offset:2px}
.skip{position:absolute;left:-99rem}.skip:focus{left:1rem;top:1rem;background:var(--paper);padding:.5rem}
.page{display:grid;grid-template-columns:16rem minmax(0,1fr);max-width:82rem;margin:0 auto}
.side{position:sticky;top:0;align-self:start;max-height:100vh;overflow:auto;padding:1.5rem 1rem 2rem 1.25rem;border-right:1px solid var(--line);font-size:.92rem}
.side p{margin:1.1rem 0 .25rem;font-weight:600}.side ul{list-style:none;margin:0;padding:0}.side li{padding:.1rem 0}
.side a{text-decoration:none}.side a:hover{text-decoration:underline}.side a[aria-current]{font-weight:600;color:var(--ink)}
.side .name{font-weight:700;color:var(--ink);font-size:1.05rem}
main{padding:1.5rem 2rem 5rem;min-width:0}
h1,h2,h3,h4{line-height:1.25;margin:2rem 0 .5rem}h1{margin-top:0;font-size:1.9rem}
h2{font-size:1.4rem;border-top:1px solid var(--line);padding-top:1.75rem;margin-top:2.75rem}h3{font-size:1.08rem}
h4{font-size:.95rem;margin:1.25rem 0 .35rem}
.lead{font-size:1.08rem;color:var(--soft);max-width:46rem}
p,li{max-width:48rem}.side p,.side li{max-width:none}
code{font:.9em ui-monospace,SFMono-Regular,Menlo,monospace;background:var(--wash);border-radius:3px;padding:.05em .25em}
pre{background:var(--wash);border:1px solid var(--line);border-radius:6px;padding:.75rem .9rem;overflow:auto;font-size:.85rem;line-height:1.45;max-height:32rem}
a code{background:none;padding:0}code.one{white-space:nowrap}td code,p code{overflow-wrap:anywhere}
pre code{background:none;padding:0;font-size:1em}
.call{display:flex;flex-wrap:wrap;gap:.3rem .6rem;align-items:baseline;font-size:1rem;margin:.25rem 0 .5rem}
.call code{background:none;padding:0;font-size:1rem;overflow-wrap:anywhere}
.m{font:700 .78rem ui-monospace,Menlo,monospace;letter-spacing:.03em;min-width:4.4em;display:inline-block}
.get{color:var(--get)}.post{color:var(--post)}.patch{color:var(--patch)}.delete{color:var(--delete)}
.who{color:var(--soft);font-size:.93rem}
.warn{border-left:4px solid var(--patch);padding:.25rem .75rem;background:var(--wash)}
table{border-collapse:collapse;width:100%;margin:.4rem 0 1rem;font-size:.92rem}
th,td{text-align:left;vertical-align:top;padding:.35rem .6rem .35rem 0;border-bottom:1px solid var(--line)}
th{font-weight:600;color:var(--soft);font-size:.85rem}
td:first-child code{background:none;padding:0}
.need{color:var(--delete);font-weight:700}
details{margin:.5rem 0}summary{cursor:pointer;font-weight:600;font-size:.95rem;padding:.2rem 0}
summary span{font-weight:400;color:var(--soft)}
.index td:first-child{width:27rem}.index a{text-decoration:none}.index a:hover code{text-decoration:underline}
.status{font:600 .9rem ui-monospace,Menlo,monospace}
.jump{display:none}
@media(max-width:52rem){
.jump{display:flex;justify-content:space-between;margin:0;padding:.6rem 1rem;border-bottom:1px solid var(--line);font-weight:600}.jump a{text-decoration:none}
.page{display:flex;flex-direction:column-reverse}.side{position:static;align-self:stretch;max-height:none;border-right:0;border-top:1px solid var(--line);padding:1rem}
.side .name{display:none}.side li{padding:.3rem 0}
main{padding:1rem 1rem 4rem}h1{font-size:1.5rem}
.fields thead{position:absolute;left:-99rem}.fields tr{display:block;border-bottom:1px solid var(--line);padding:.45rem 0}
.fields td{display:block;border:0;padding:.05rem 0}.fields td:nth-child(n+2){padding-left:1rem}.fields td:empty{display:none}
.index td{display:block;border:0;padding:.05rem 0}.index td:first-child{width:auto}.index tr{display:block;border-bottom:1px solid var(--line);padding:.4rem 0}
}
@media print{.side,.jump{display:none}.page{display:block}details{break-inside:avoid}}
`;
