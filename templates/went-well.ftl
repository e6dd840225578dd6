<#import "marks.ftl" as marks>
<#assign f = look.frame>
<#assign half = f.height / 2 left = 14 right = f.width - 14 middle = 118>
<#macro known x w><div class="in" style="left:${x + 0.8}mm;top:28.3mm;width:${w - 1}mm"><div data-fit="f14 f12 f10" data-fit-height="6.2mm" data-fit-else="flow"><#nested/></div></div></#macro>
<#macro line x y w><div class="line" style="left:${x}mm;top:${y}mm;width:${w}mm"></div></#macro>

<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${title}</title>
<style>
@page { size: ${f.width}mm ${f.height}mm; margin: 0; }
* { box-sizing: border-box; }
body { font-family: Lato, 'DejaVu Sans'; font-size: 16pt; line-height: 1.25; color: black; margin: 0; }
h1, h2, p, ul, div { margin: 0; padding: 0; }
svg { display: block; }
ul { list-style: none; }
.page { position: relative; width: ${f.width}mm; height: ${f.height - 1}mm; }
.slip { position: absolute; left: 0; width: ${f.width}mm; height: ${half - 1}mm; }
.at { position: absolute; white-space: nowrap; } .line { position: absolute; height: 0; border-top: 1.1pt solid black; }
.title { font-size: 26pt; line-height: 1.1; font-weight: bold; } .label { font-size: 12pt; line-height: 1.2; }
.ticks { position: absolute; left: ${left}mm; top: 45mm; width: ${middle - left - 3}mm; } .ticks li { position: relative; padding: 0.4mm 0 ${gap}mm 11mm; }
.tick { position: absolute; left: 0; top: 0; width: 7.4mm; height: 7.4mm; border: 1.6pt solid black; }
.later { page-break-before: always; } .in { position: absolute; white-space: normal; } .in div { line-height: 6mm; } .f14 { font-size: 14pt; } .f12 { font-size: 12pt; } .f10 { font-size: 10pt; } .in .flows { font-size: 10pt; height: 6mm; overflow: hidden; white-space: nowrap; }
.upright { position: absolute; width: 0; border-left: 1.1pt solid black; }
</style>
</head>
<body>
<#list sheets as sheet>
<div class="page<#if !sheet?is_first> later</#if>">
<#list [0, half] as top>
<#assign who = (top == 0)?then(sheet.upper, sheet.lower)>
<div class="slip" style="top:${top}mm">
  <div class="at" style="left:${left}mm;top:12mm"><@marks.toes n=look.toes half=11/></div>
  <${(top == 0)?then("h1", "h2")} class="at title" style="left:${left + 27}mm;top:11.6mm">${title}</${(top == 0)?then("h1", "h2")}>
  <p class="at label" style="right:14mm;top:14.5mm">${look.level}<#if club?has_content> &#183; ${club}</#if></p>
  <#if who.number??><p class="at label" style="right:14mm;top:20.5mm"><strong>Number ${who.number}</strong></p></#if>
  <p class="at label" style="left:${left}mm;top:29mm">My name</p><@line x=left + 20 y=34 w=62/>
  <#if who.name??><@known x=left + 20 w=62>${who.name}</@known></#if>
  <p class="at label" style="left:${left + 86}mm;top:29mm">My rabbit</p><@line x=left + 106 y=34 w=right - left - 106 - 48/>
  <#if who.rabbit??><@known x=left + 106 w=right - left - 106 - 48>${who.rabbit}</@known></#if>
  <p class="at label" style="left:${right - 45}mm;top:29mm">Date</p><@line x=right - 34 y=34 w=34/>
  <#if head??><@known x=right - 34 w=34>${head.date}</@known></#if>
  <div class="line" style="left:${left}mm;top:40mm;width:${right - left}mm;border-top-width:1.8pt"></div>
  <ul class="ticks"><#list ticks as tick><li><div class="tick"></div>${tick}</li></#list></ul>
  <div class="upright" style="left:${middle}mm;top:44mm;height:84mm"></div>
  <p class="at" style="left:${middle + 6}mm;top:44.6mm;font-weight:bold">The judge liked</p>
  <#list 1..3 as no><@line x=middle + 6 y=53 + no * 11 w=right - middle - 6/></#list>
  <div class="at" style="left:${middle + 16}mm;top:93mm"><@marks.rabbit width=50/></div>
</div>
</#list>
<div class="line" style="left:7mm;top:${half}mm;width:${f.width - 14}mm"></div>
<p class="at" style="left:14mm;top:${half - 5}mm;font-size:10pt;line-height:1.2">cut here</p>
</div>
</#list>
</body>
</html>
