<#import "marks.ftl" as marks>
<#assign t = look.type>
<#assign f = look.frame>
<#assign u = t.body * t.line>
<#assign sizes = []>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} figures to label</title>
<style>
<#include "page-style.ftl">
h1 { margin: 0; padding: 0; font-size: 27pt; line-height: 1.15; } h2 { margin-bottom: 2mm; }
.disc { position: absolute; width: 7mm; text-align: center; font-size: 11pt; font-weight: bold; line-height: 1; }
.write { width: ${f.live}mm; border-collapse: collapse; table-layout: fixed; margin-top: 3mm; } .write td { vertical-align: bottom; padding: 0 6mm 0 0; } .write td:last-child { padding-right: 0; }
.write .no { display: inline-block; width: 9mm; font-weight: bold; font-size: ${[t.body, 11]?max}pt; line-height: 1; } .write .rule { display: inline-block; width: 68mm; border-bottom: 0.9pt solid black; height: 6mm; }
.bank { border: 1.2pt solid black; padding: 2mm 3mm; margin-top: 4mm; width: ${f.live}mm; line-height: 1.35; font-size: ${[t.body, 13]?min}pt; }
.answer { position: relative; page-break-inside: avoid; border-top: 0.9pt solid black; padding-top: 2mm; margin-top: 4mm; } .answer ol li { padding-left: 8mm; margin: 0; line-height: 1.3; font-size: ${[t.body, 12]?min}pt; } .answer .n { position: absolute; left: 0; top: 0; font-weight: bold; width: 7mm; }
.keytable { width: ${f.live}mm; border-collapse: collapse; table-layout: fixed; } .keytable td { vertical-align: top; padding: 0; } .keytable td.fig { width: 108mm; }
</style>
<bookmarks>
  <#list sheets as s><bookmark name="${s.title}" href="#${s.anchor}"/></#list>
  <bookmark name="Answers" href="#answers"/>
</bookmarks>
</head>
<body>
<div class="foot"><table class="footline"><tr>
  <td class="footmark"><@marks.toes n=look.toes half=5/></td>
  <td class="footname">${look.level} figures to label</td>
  <td class="footpage"><span class="pageno">&#160;</span></td>
</tr></table></div>

<#macro numbered x alt>
<div class="labelled" style="width:${x.figure.boxWidth}mm;height:${x.figure.boxHeight}mm">
  <img src="hutch:${x.figure.file}" alt="${alt}" style="left:${x.figure.left}mm;top:${x.figure.top}mm;width:${x.figure.width}mm;height:${x.figure.height}mm"/>
  <@marks.lines l=x.figure discs=x.discs/>
  <#list x.discs as d><div class="disc" style="left:${d.x - 3.5}mm;top:${d.y - 1.95}mm">${d.number}</div></#list>
</div>
</#macro>

<#list sheets as s>
<div class="<#if !s?is_first>page</#if>" id="${s.anchor}" data-fit="roomy snug" data-fit-height="${f.liveHeight}mm" data-what="the page of '${s.title}' for ${look.word}">
  <#if s?is_first><h1>${look.level} figures to label</h1></#if>
  <h2>${s.title}</h2>
  <p>Look, and say each word aloud. Then turn the page<#if !look.primary> and write them without looking back</#if>.</p>
  <div style="margin-top:6mm"><@marks.labelled l=s.named alt="${s.title}, with the name of each part beside it: ${s.bank?join(', ')}." size=[t.body, 12]?min/></div>
</div>
<div class="page" data-fit="roomy snug" data-fit-height="${f.liveHeight}mm" data-what="the blank page of '${s.title}' for ${look.word}">
  <h2>${s.title}</h2>
  <@numbered x=s.blank alt=s.alt/>
  <#assign rows = ((s.answers?size + 1) / 2)?floor>
  <table class="write" role="presentation"><#list 0..(rows - 1) as r><tr><#list [r, r + rows] as i><td style="height:${s.lineHeight}mm"><#if i < s.answers?size><span class="no">${i + 1}</span><span class="rule">&#160;</span></#if></td></#list></tr></#list></table>
  <div class="bank"><strong>Words:</strong> ${s.bank?join(", ")}</div>
</div>
</#list>

<div class="page" id="answers">
  <h2>Answers</h2>
  <p>Fold this page away, or keep it with your leader, until you have tried.</p>
  <#list sheets as s>
  <div class="answer"><h3>${s.title}</h3>
    <table class="keytable" role="presentation"><tr><td class="fig"><@numbered x=s.key alt="The same drawing with the numbers of its parts."/></td>
    <td><ol><#list s.answers as word><li><span class="n">${word?counter}</span>${word}</li></#list></ol></td></tr></table>
  </div>
  </#list>
</div>
</body>
</html>
