<#-- Large print and easy read: one column without a rail, over the ordinary style, so every rule here is important. Pages flow. -->
<#-- Who asks for large print or easy read keeps sturdy letters where ink is saved. -->
body, .foot, .footstop, .footalways { font-family: Lato, 'DejaVu Sans' !important; }
.footstop { position: running(footstop); font-family: Lato, 'DejaVu Sans'; } .footstop p { border-top: 2pt solid black; padding-top: 1mm; margin-bottom: 1mm; max-width: none; }
@page { margin-bottom: 24mm; }
@page turned { size: ${f.width}mm ${f.height}mm; margin: 15mm ${f.right}mm ${look.set.large?then(46, 40)}mm 20mm; @bottom-center { content: element(footstop); vertical-align: top; padding-top: 4mm; } }
.turned { page: turned; }
body * { font-style: normal !important; line-height: ${t.line} !important; }
.rail { position: static !important; width: auto !important; margin-bottom: ${u * 0.2}pt; } .rail .note { margin-top: 0 !important; }
.rail h3, .rail .note { page-break-after: avoid; }
.body { margin-left: 0 !important; min-height: 0 !important; } .bare { display: none; }
.sec { border-top-width: 1.6pt !important; min-height: 0 !important; }
.sec.last { border-top-width: 2pt !important; }
body h1, body h2, body h2 *, .saytitle { line-height: 1.12 !important; }
p, ul li { max-width: ${f.live}mm !important; } ul li { padding-left: 7mm !important; }
.num { top: 0 !important; }
.hopline .here { display: none; }
.stoptitle { padding-left: 30mm !important; } .numeral { line-height: 1 !important; font-size: 62pt !important; }
.saytitle, .topichead { padding-left: 0 !important; } .topicmark { position: static !important; width: auto !important; margin-bottom: 2mm; }
.speech .tail { display: none; } .blank { white-space: nowrap; }
.word, .glossary .word { padding-left: 0 !important; min-height: 0 !important; margin-bottom: 2mm !important; } .word strong, .glossary .word strong { display: block; position: static !important; width: auto !important; }
table.routinetable td { height: auto !important; padding-top: 1.5mm !important; padding-bottom: 1.5mm !important; } table.routinetable tr.first td { border-top: none !important; } table.routinetable tr.side th { border-bottom: 1.6pt solid black; padding-top: 3mm; }
.levels td { width: ${f.live / 4}mm !important; } .legend .sign { width: 48mm !important; }
table.figs, .figs tr, .frame, .ticks, .legend tr, .levels { page-break-inside: avoid !important; } .toc td { border-bottom: 0.9pt solid black; }
.coverhops { display: none; } .belongs { top: 190mm !important; } .belongs.second { top: 204mm !important; }
.toc { width: ${f.live}mm !important; } .tocpage { width: 16mm !important; } .tocno { width: 12mm !important; }
.choices { width: ${f.live - 10}mm !important; }
<#if look.set.large>
<#-- 18 pt on everything: American Printing House (Kitchel). Subheads 20: American Council of the Blind, Board of Publications, 2022. -->
body * { font-size: 18pt !important; } .pageno:before { font-size: 18pt !important; }
body h2, body h2 *, body .saytitle { font-size: 34pt !important; } body h3, body h3 * { font-size: 20pt !important; } body h1, body h1 * { font-size: 52pt !important; }
.coversub, .coversub * { font-size: 27pt !important; line-height: 1.25 !important; } .numeral { font-size: 62pt !important; }
.footmark { width: 20mm !important; } .footpage { width: 56mm !important; } .footline * { line-height: 1.2 !important; }
.labelled .name { line-height: 1.15 !important; }
.caution .words { margin-left: 46mm !important; } .caution .label { width: 40mm !important; left: 3mm !important; } .caution .label span { line-height: 1.2 !important; }
.routinetable .no { width: 12mm !important; } .routinetable .stop { width: 42mm !important; } .routinetable .do { width: 66mm !important; }
.key th:first-child, .key td:first-child { width: 14mm !important; } .key th:last-child, .key td:last-child { width: 20mm !important; }
.coverlead { width: 134mm !important; line-height: 1.3 !important; } .coverends { height: 9mm !important; } .belongs .line { left: 66mm !important; width: ${f.live - 66}mm !important; } .belongs .label { top: 1mm !important; }
.coverfoot { top: ${f.liveHeight - 18}mm !important; height: 17mm !important; } .coverfoot .ages { right: auto !important; left: 0; top: 8mm !important; }
<#else>
<#-- A table whose section stays on one page has no head to repeat; the engine stops at some that would. -->
table.data { -fs-table-paginate: auto !important; } .sec.long table.data { -fs-table-paginate: paginate !important; }
<#-- Wider letters and words, headings a fifth larger: British Dyslexia Association style guide, from memory. It asks for a third of a
     letter between letters; with more than half a space there, programs that read aloud or search take each letter for a word. -->
body * { letter-spacing: 0.085em; word-spacing: 0.19em; } body h2, body h2 *, .saytitle, .numeral { letter-spacing: 0.04em; } .cover, .cover * { letter-spacing: 0; word-spacing: 0; }
body h3, body h3 * { font-size: ${t.body * 1.2}pt !important; }
.footline * { line-height: 1.2 !important; } .footpage { width: 60mm !important; }
.caution .words { margin-left: 46mm !important; } .caution .label { width: 40mm !important; left: 3mm !important; }
.coverlead { width: 134mm !important; } .belongs .line { left: 66mm !important; width: ${f.live - 66}mm !important; }
.coverfoot { top: ${f.liveHeight - 18}mm !important; height: 17mm !important; } .coverfoot .ages { right: auto !important; left: 0; top: 8mm !important; }
.routinetable .stop { width: 36mm !important; } .toc, .toc * { font-size: ${t.body}pt !important; }
</#if>
