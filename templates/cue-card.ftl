<#import "marks.ftl" as marks>
<#import "cue-signs.ftl" as cue>
<#assign f = look.frame>
<#-- Margins of 12 mm; a fold in the middle makes two sides of one column each. Everything is 18 pt or more: American Printing House (Kitchel). -->
<#assign edge = 12 wide = f.width / 2 - 6 - edge top = 44>
<#assign rows = ((stops?size + 1) / 2)?floor high = [(f.height - edge - 4 - top) / rows, 60]?min>
<#assign big = stops?size lte 8>
<#assign sign = big?then(26, 17) size = big?then(24, 19)>
<#assign number = big?then(20, 16)>
<#assign text = wide - number - 1 - sign>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} cue card</title>
<style>
@page { size: ${f.width}mm ${f.height}mm; margin: 0; }
* { box-sizing: border-box; }
body { font-family: Lato, 'DejaVu Sans' !important; font-size: ${size}pt; line-height: 1.14; color: black; margin: 0; }
h1, h2, p, div { margin: 0; padding: 0; } svg { display: block; }
.page { position: relative; width: ${f.width}mm; height: ${f.height - 1}mm; } .at { position: absolute; }
h1 { font-size: 24pt; line-height: 1.1; } h2 { font-size: ${size}pt; line-height: 1.14; }
.no { font-size: ${big?then(40, 30)}pt; line-height: 1; font-weight: bold; text-align: left; }
.always { border: 2.4pt solid black; padding: 1.6mm 3mm; font-size: 18pt; line-height: 1.2; } .always strong { font-size: 22pt; }
.rule { position: absolute; height: 0; border-top: 1.2pt solid black; } .name { font-size: 18pt; line-height: 1.2; } .write { border-bottom: 1.2pt solid black; height: 9mm; }
<#if look.set.easy>body * { letter-spacing: 0.06em; word-spacing: 0.14em; line-height: 1.2; } .no { letter-spacing: 0; }</#if>
</style>
</head>
<body>
<div class="page">
  <div class="at" style="left:0;top:0"><svg xmlns="http://www.w3.org/2000/svg" aria-hidden="true" viewBox="0 0 ${f.width} ${f.height - 1}" width="${f.width}mm" height="${f.height - 1}mm"><path d="M${f.width / 2} 8L${f.width / 2} ${f.height - 9}" fill="none" stroke="black" stroke-width="0.4" stroke-dasharray="4 2.5"/></svg></div>
  <div class="at" style="left:${edge}mm;top:${edge}mm;width:${wide}mm">
    <h1>Cue card</h1>
    <#if name?has_content><p class="name" style="margin-top:1.5mm">${name}</p><#else><p class="write">&#160;</p></#if>
  </div>
  <div class="at" style="left:${edge + wide - 22}mm;top:${edge}mm"><@marks.toes n=look.toes half=11/></div>
  <#list stops as stop>
  <#assign right = stop?index gte rows>
  <#if stop?index == rows>
  <div class="at always" style="left:${f.width / 2 + 6}mm;top:${edge}mm;width:${wide}mm"><p>I may always say:</p><p><strong>Feet down, please.</strong></p></div>
  </#if>
  <#assign x = right?then(f.width / 2 + 6, edge) y = top + (stop?index % rows) * high>
  <div class="rule" style="left:${x}mm;top:${y}mm;width:${wide}mm"></div>
  <div class="at no" style="left:${x}mm;top:${y + 3}mm;width:${number}mm">${stop.no}</div>
  <div class="at" style="left:${x + number}mm;top:${y + 3}mm"><@cue.of no=stop.no mm=sign/></div>
  <div class="at" style="left:${x + number + 2 + sign}mm;top:${y + 3}mm;width:${text - 1}mm"><h2>${stop.shortName}</h2><p>${stop.key}</p></div>
  </#list>
</div>
</body>
</html>
