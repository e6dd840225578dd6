<#import "marks.ftl" as marks>
<#import "signs.ftl" as signs>
<#assign t = look.type>
<#assign f = look.frame>
<#assign u = t.body * t.line>
<#assign sizes = []>
<#-- A column of so many mm; its cells' padding is not counted in the width that the engine takes. -->
<#assign air = {"": 2, "n": 3, "tickcell": 2, "mark": 0, "end": 0}>
<#macro th w class=""><th scope="col"<#if class?has_content> class="${class}"</#if> style="width:${w - air[class]}mm"><#nested/></th></#macro>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>Print plan</title>
<style>
<#include "page-style.ftl">
h1 { font-size: 27pt; line-height: 1.15; }
.free { max-width: none; } h2.part { font-size: 16pt; line-height: 1.2; }
.head { width: ${f.live}mm; border-collapse: collapse; } .head p { max-width: none; } .head td { vertical-align: top; padding: 0; } .head .sum { text-align: right; width: 62mm; } .head .sheets { font-size: 27pt; line-height: 1.15; font-weight: bold; }
.grid { width: ${f.live}mm; border-collapse: collapse; table-layout: fixed; font-size: ${t.table}pt; line-height: 1.2; -fs-table-paginate: paginate; margin-top: 2.5mm; }
.grid th { text-align: left; font-weight: bold; vertical-align: bottom; border-bottom: 1.6pt solid black; padding: 0 2mm 1mm 0; } .grid td { vertical-align: middle; border-bottom: 0.9pt solid black; padding: 1mm 2mm 1mm 0; }
.grid thead { -fs-page-break-min-height: 30mm; } .grid tr { page-break-inside: avoid; }
.grid th.n, .grid td.n { text-align: right; padding-right: 3mm; } .grid th.end, .grid td.end { text-align: right; padding-right: 0; } .grid td.sum { font-weight: bold; }
.grid tr.last td { border-bottom: 1.6pt solid black; } .grid tr.sumline td { border-bottom: none; padding-top: 0.7mm; padding-bottom: 0.7mm; } .grid tr.all td { border-bottom: 2pt solid black; font-size: 13pt; font-weight: bold; padding-bottom: 1.6mm; }
.path { font-size: 9.5pt; line-height: 1.15; } .big { font-size: 13pt; font-weight: bold; }
.box { width: 5mm; height: 5mm; border: 1.2pt solid black; }
.grid th.mark, .grid td.mark { text-align: center; padding-right: 0; } .mark .box { margin: 0 auto; }
.then { position: relative; padding-left: 10mm; } .then .sign { position: absolute; left: 0; top: -1mm; }
.block { margin-top: 7mm; } .whole { page-break-inside: avoid; } .points { margin-top: 2.5mm; }
.step { position: relative; padding-left: 12mm; min-height: 8mm; margin-bottom: 1.6mm; page-break-inside: avoid; } .step .sign { position: absolute; left: 0; top: 0.2mm; }
.check { position: relative; padding-left: 8mm; margin-bottom: 2mm; page-break-inside: avoid; max-width: ${f.live}mm; } .check .box { position: absolute; left: 0; top: 0.1mm; } .check p { max-width: none; }
.whole .grid { -fs-table-paginate: auto; } .whole .grid thead { -fs-page-break-min-height: 0; }
.class { margin-top: 6mm; } .class h3 { font-size: 13pt; page-break-after: avoid; line-height: 1.2; } .class h3 svg { display: inline-block; vertical-align: -0.4mm; margin-left: 3mm; margin-right: 2mm; } .class h3 span { font-weight: normal; font-size: ${t.body}pt; }
.class .grid { margin-top: 1.5mm; } .class .grid thead { -fs-page-break-min-height: 26mm; } .write { border-bottom: 0.9pt solid black; height: 5mm; width: 24mm; }
.labels { width: ${f.live}mm; border-collapse: separate; border-spacing: 0; table-layout: fixed; margin-top: 2mm; } .labels td { border-right: 0.9pt solid black; border-bottom: 0.9pt solid black; padding: 0; vertical-align: top; } .labels td.first { border-left: 0.9pt solid black; } .labels tr.top td { border-top: 0.9pt solid black; } .labels tr td.none { border: none; }
.label { position: relative; height: 31.6mm; } .label .no { position: absolute; left: 4mm; top: 4mm; width: 20mm; font-size: 32pt; line-height: 1; font-weight: bold; } .label .who { position: absolute; left: 28mm; top: 4mm; width: ${f.live / 2 - 32}mm; font-size: 14pt; line-height: 1.15; font-weight: bold; } .label .fit { width: ${f.live / 2 - 32}mm; } .fit14 { font-size: 14pt; } .fit12 { font-size: 12pt; } .fit10 { font-size: 10pt; }
.label .what { font-weight: normal; font-size: 11pt; line-height: 1.25; } .label .level { position: absolute; right: 4mm; top: 14.5mm; }
.label .in { position: absolute; left: 4mm; bottom: 3.5mm; width: ${f.live / 2 - 8}mm; height: 5mm; font-size: 11pt; line-height: 5mm; } .label .in span { position: absolute; top: 0; white-space: nowrap; } .label .in .box { position: absolute; top: 0; }
</style>
<bookmarks>
  <bookmark name="What to print" href="#files"/>
  <#if (checks + warnings)?has_content><bookmark name="Before you print" href="#before"/></#if>
  <#if papers?has_content><bookmark name="Paper" href="#paper"/></#if>
  <#if steps?has_content><bookmark name="After printing" href="#after"/></#if>
  <#if members?has_content>
  <bookmark name="For each member" href="#members"/>
  <bookmark name="Order of showing" href="#order"/>
  <bookmark name="Labels" href="#labels"/>
  </#if>
</bookmarks>
</head>
<body>
<div class="foot"><table class="footline"><tr>
  <td class="footname">Print plan, ${head.club}</td>
  <td class="footpage"><span class="pageno">&#160;</span></td>
</tr></table></div>

<div id="files">
<table class="head" role="presentation"><tr>
  <td><h1>Print plan</h1><p><strong>${head.club}</strong></p><p>${head.line}</p></td>
  <td class="sum"><p class="sheets">${head.sheets} sheet<#if head.sheets != 1>s</#if></p><p>${head.cost}; ${head.time} of printing</p></td>
</tr></table>
<p class="free">${head.uses}</p>
<#if warnings?has_content><p class="free"><strong>Settle first: ${warnings?size} point<#if warnings?size != 1>s</#if> under “Before you print”, page <a class="pageof" href="#before">&#160;</a></strong></p></#if>

<table class="grid">
  <thead><tr><@th w=7 class="tickcell">&#160;</@th><@th w=f.live - 130>Print</@th><@th w=12 class="n">Pages</@th><@th w=21>On</@th><@th w=13 class="n">Copies</@th><@th w=13 class="n">Sheets</@th><@th w=34>Then</@th><@th w=16 class="n">Black</@th><@th w=14 class="end">Cost<#if sums.currency?has_content> ${sums.currency}</#if></@th></tr></thead>
  <tbody>
  <#list groups as g>
  <#list g.rows as r>
  <tr<#if r?is_last> class="last"</#if>>
    <td class="tickcell"><div class="box"></div></td>
    <td><strong>${r.title}</strong><br/><span class="path">${r.path}</span></td>
    <td class="n">${r.pages}</td><td>${r.sides}<br/><span class="path">${r.paper}</span></td><td class="n">${r.copies}</td><td class="n sum">${r.sheets}</td>
    <td><div class="then"><div class="sign"><@signs.after key=r.after w=8.5/></div>${r.words}</div></td>
    <td class="n"><#if r.black??>${r.black.mean} %<br/><span class="path">to ${r.black.most} %</span><#else>&#8211;</#if></td>
    <td class="end">${r.cost}</td>
  </tr>
  </#list>
  </#list>
  <tr class="sumline"><td>&#160;</td><td>All the rows above</td><td>&#160;</td><td>&#160;</td><td>&#160;</td><td class="n">${sums.sheets}</td><td>&#160;</td><td>&#160;</td><td class="end">${sums.cost}</td></tr>
  <#list sums.spare as s><tr class="sumline"><td>&#160;</td><td>${s.words}</td><td>&#160;</td><td>&#160;</td><td>&#160;</td><td class="n">${s.sheets}</td><td>&#160;</td><td>&#160;</td><td class="end">${s.cost}</td></tr></#list>
  <tr class="sumline all"><td>&#160;</td><td>All of it</td><td>&#160;</td><td>&#160;</td><td>&#160;</td><td class="n">${sums.all}</td><td>&#160;</td><td>&#160;</td><td class="end">${sums.allCost}</td></tr>
  </tbody>
</table>
</div>

<#if (checks + warnings)?has_content>
<div id="before" class="block">
<h2 class="part">Before you print</h2>
<div class="points"><#list warnings as w><div class="check"><div class="box"></div><p>${w}</p></div></#list><#list checks as c><div class="check"><div class="box"></div><p>${c}</p></div></#list></div>
</div>
</#if>

<#if papers?has_content>
<div id="paper" class="block whole">
<h2 class="part">Paper</h2>
<table class="grid">
  <thead><tr><@th w=f.live - 135>To lay ready</@th><@th w=16 class="n">Printed</@th><@th w=15 class="n">Spare</@th><@th w=15 class="n">Sheets</@th><@th w=21 class="n">Packs</@th><@th w=18 class="n">A sheet</@th><@th w=20 class="n">Cost</@th><@th w=30 class="end">Weight</@th></tr></thead>
  <tbody>
  <#list papers as p><tr<#if p?is_last> class="last"</#if>><td><strong>${p.name}</strong></td><td class="n">${p.sheets}</td><td class="n">${p.spare}</td><td class="n sum">${p.all}</td><td class="n">${p.packs}</td><td class="n">${p.price}</td><td class="n">${p.cost}</td><td class="end">${p.weight}</td></tr></#list>
  </tbody>
</table>
<p class="free" style="margin-top:1.5mm">${time}<#if toner??> ${toner}</#if> Cost is counted by the sheet; ink is not in it.</p>
</div>
</#if>

<#if steps?has_content>
<div id="after" class="block whole">
<h2 class="part">After printing</h2>
<div class="points"><#list steps as s><div class="step"><div class="sign"><@signs.after key=s.after w=9/></div><p class="free"><strong>${s.words?cap_first}.</strong> ${s.how}</p></div></#list></div>
</div>
</#if>

<#if members?has_content>
<div class="page" id="members">
<h2 class="part">For each member</h2>
<table class="grid">
  <thead><tr><@th w=12 class="n">No.</@th><@th w=f.live - 93>Member, and what is printed</@th><@th w=14 class="n">Sheets</@th><@th w=14 class="n">Cards</@th><@th w=14 class="mark">Printed</@th><@th w=14 class="mark">Folded</@th><@th w=9 class="mark">Cut</@th><@th w=16 class="mark">Handed<br/>out</@th></tr></thead>
  <tbody>
  <#list members as m>
  <tr<#if m?is_last> class="last"</#if>><td class="n">${m.number}</td><td><strong>${m.name}</strong>, ${m.division}<br/><span class="path">${m.files}</span></td><td class="n sum">${m.sheets}</td><td class="n">${m.cards}</td><td class="mark"><div class="box"></div></td><td class="mark"><#if m.folds><div class="box"></div><#else>&#8211;</#if></td><td class="mark"><#if m.cuts><div class="box"></div><#else>&#8211;</#if></td><td class="mark"><div class="box"></div></td></tr>
  </#list>
  <tr class="sumline all"><td>&#160;</td><td>All members</td><td class="n">${memberSums.sheets}</td><td class="n">${memberSums.cards}</td><td>&#160;</td><td>&#160;</td><td>&#160;</td><td>&#160;</td></tr>
  </tbody>
</table>
</div>

<div class="page" id="order">
<h2 class="part">Order of showing</h2>
<#list classes as c>
<div class="class<#if c.entries?size lte 12> whole</#if>">
<h3>${c.division}<@marks.toes n=c.toes half=5/><span>${c.words}</span></h3>
<table class="grid">
  <thead><tr><@th w=15 class="n">No.</@th><@th w=50>Member</@th><@th w=(f.live - 105) / 2>Rabbit</@th><@th w=(f.live - 105) / 2>Breed</@th><@th w=28>Ear number</@th><@th w=12 class="mark">Here</@th></tr></thead>
  <tbody>
  <#list c.entries as e><tr<#if e?is_last> class="last"</#if>><td class="n big">${e.number}</td><td><strong>${e.member}</strong></td><td>${e.rabbit}</td><td>${e.breed}</td><td><#if e.ear??>${e.ear}<#else><div class="write">&#160;</div></#if></td><td class="mark"><div class="box"></div></td></tr></#list>
  </tbody>
</table>
</div>
</#list>
</div>

<#list labels as page>
<div class="page"<#if page?is_first> id="labels"</#if>>
<#if page?is_first><h2 class="part">Labels</h2><p class="free">Cut on the lines and stick one on each envelope. Tick what is in: 1 to read, 2 the cards, 3 the sheets.</p></#if>
<table class="labels" role="presentation">
<#list page.rows as row><tr<#if row?is_first> class="top"</#if>><#list row.labels as l><td<#if l?is_first> class="first"</#if>><div class="label"><p class="no">${l.number}</p><div class="level"><@marks.toes n=l.toes half=7/></div><div class="who"><div class="fit" data-fit="fit14 fit12 fit10" data-fit-height="12mm" data-what="the label of ${l.name}">${l.name}</div><p class="what">with ${l.rabbit}<br/>${l.division}</p></div>
<div class="in"><div class="box" style="left:0"></div><span style="left:7mm">1 read</span><div class="box" style="left:27mm"></div><span style="left:34mm">2 cards</span><div class="box" style="left:55mm"></div><span style="left:62mm">3 sheets</span></div></div></td></#list><#if row.labels?size lt 2><td class="none">&#160;</td></#if></tr></#list>
</table>
</div>
</#list>
</#if>

</body>
</html>
