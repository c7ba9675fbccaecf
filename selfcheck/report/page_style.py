"""How the household's page looks: earth and water, light and dark, on a telephone, on a desk, and on paper."""

STYLE = """
:root { --paper: #fbf8f1; --ink: #2a251d; --quiet: #5f5646; --line: #d8cfbd; --card: #fffdf8; --mark: #9c2f14;
  --own: #efe6d2; --link: #22596a }
@media (prefers-color-scheme: dark) { :root { --paper: #1d1a15; --ink: #efe8da; --quiet: #b9ae9b; --line: #453e32;
  --card: #26221b; --mark: #f0a07f; --own: #3a3325; --link: #8fc4d2 } }
* { box-sizing: border-box }
html { background: var(--paper); color: var(--ink); font: 17px/1.5 system-ui, 'Segoe UI', Roboto, 'Liberation Sans',
  Arial, sans-serif; -webkit-text-size-adjust: 100% }
body { margin: 0 auto; max-width: 62rem; padding: 1.2rem 1rem 3rem; overflow-wrap: break-word }
header p { margin: 0; color: var(--quiet) }
h1, h2, h3 { line-height: 1.2; text-wrap: balance }
h1 { font-size: 1.25rem; margin: 0 }
h2 { font-size: 1.2rem; margin: 2rem 0 .5rem }
h3 { font-size: 1rem; margin: 1.2rem 0 .3rem }
p { margin: .4rem 0 }
ul { margin: .3rem 0; padding-left: 1.2rem }
a { color: var(--link) }
.verdict { border: 2px solid var(--ink); border-radius: .4rem; background: var(--card); padding: 1rem 1.2rem;
  margin: 1rem 0 }
.verdict.danger, .verdict.call_now { border-color: var(--mark); border-width: 4px }
.verdict .said { font-size: clamp(1.6rem, 5vw, 2.4rem); font-weight: 700; line-height: 1.15; margin: 0 0 .5rem;
  text-wrap: balance }
.verdict .do { font-size: 1.15rem }
.quiet { color: var(--quiet) }
.always { border-left: 4px solid var(--line); padding-left: .8rem }
.two { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 20rem), 1fr)); gap: 0 2rem }
.pictures { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 19rem), 1fr)); gap: 1rem;
  align-items: start }
.pictures svg { width: 100%; height: auto; max-width: 30rem; border: 1px solid var(--line); border-radius: .4rem }
table { border-collapse: collapse; width: 100% }
caption { text-align: left; color: var(--quiet); padding-bottom: .4rem; font-size: .9rem }
th, td { text-align: left; vertical-align: top; padding: .35rem .6rem .35rem 0; border-bottom: 1px solid var(--line) }
th { font-weight: 600 }
td:last-child, th:last-child { padding-right: 0 }
tbody th { font-weight: 400 }
.rules td { min-width: 6rem } .rules .limits { min-width: 12rem }
.own th, .own td { background: var(--own); font-weight: 600 }
.own th { padding-left: .5rem }
small { display: block; color: var(--quiet); font-size: .82rem; font-weight: 400 }
td { font-variant-numeric: tabular-nums }
dl { display: grid; grid-template-columns: max-content 1fr; gap: .2rem 1rem; margin: .3rem 0 }
dt { color: var(--quiet) } dd { margin: 0 }
.sources { font-size: .85rem; list-style: none; padding: 0 }
@media screen and (max-width: 46rem) {
  .rules table, .rules caption, .rules tbody, .rules tr, .rules th, .rules td { display: block }
  .rules thead { display: none }
  .rules tr { border: 1px solid var(--line); border-radius: .4rem; padding: .5rem .7rem; margin: .6rem 0 }
  .rules th, .rules td { border: 0; padding: .15rem 0 } .rules th { font-weight: 600 }
  .rules tr.own { background: var(--own) } .own th { padding-left: 0 }
  .rules td::before { content: attr(data-name) ": "; color: var(--quiet); font-weight: 400 } }
@media (max-width: 30rem) { html { font-size: 16px } th, td { padding-right: .4rem } table { font-size: .9rem }
  dl { grid-template-columns: 1fr; gap: 0 } dd { margin-bottom: .3rem } }
@media print {
  @page { margin: 9mm 11mm }
  :root { --paper: #fff; --ink: #000; --quiet: #444; --line: #bbb; --card: #fff; --mark: #000; --own: #eee;
    --link: #000 }
  html { font-size: 8.2pt; line-height: 1.24; -webkit-print-color-adjust: exact; print-color-adjust: exact }
  body { max-width: none; padding: 0 }
  header { display: flex; flex-wrap: wrap; gap: 0 4mm; align-items: baseline }
  h1 { font-size: 11pt } h2 { font-size: 10pt; margin: 1.6mm 0 .4mm; break-after: avoid }
  h3 { font-size: 8.6pt; margin: 1mm 0 .3mm; break-after: avoid }
  p, ul { margin: .4mm 0 } dl { margin: .4mm 0; gap: 0 3mm; grid-template-columns: max-content 1fr }
  .verdict { padding: 1.4mm 3mm; margin: 1.4mm 0 } .verdict .said { font-size: 16pt; margin: 0 }
  .verdict .do { font-size: 9.6pt }
  .two { display: block; columns: 2; column-gap: 6mm; margin-top: 1.6mm }
  dl + p { break-before: avoid } .two h2:first-child { margin-top: 0 }
  .pictures { grid-template-columns: repeat(3, 1fr); gap: 2mm 3mm } .pictures.by-two { grid-template-columns: 1fr 1fr }
  .pictures svg { width: auto; max-width: 100%; max-height: 48mm; justify-self: center; break-inside: avoid }
  .pictures.by-two svg { max-height: 60mm }
  th, td { padding: .25mm 2mm .25mm 0; line-height: 1.16; font-size: 8pt } thead { break-after: avoid }
  td small, th small { display: inline; margin-left: 1.5mm }
  td.limits small { display: block; margin: 0; font-size: 6.2pt; line-height: 1.05 } .rules td { min-width: 0 }
  .rules td:not(.limits) { white-space: nowrap }
  .rules td:not(.limits) small { display: block; margin: 0 } .rules .limits { width: 40% }
  h2 + table, caption { break-before: avoid }
  .sources { columns: 3; column-gap: 5mm; font-size: 6pt; line-height: 1.1 }
  small { font-size: 6.8pt } caption { font-size: 7pt; padding: 0 }
  .always { margin-top: 1mm } tr, li, .verdict { break-inside: avoid }
}
"""
