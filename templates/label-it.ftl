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
<#include "label-style.ftl">
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

<#include "label-parts.ftl">

<#list sheets as s>
<div class="<#if !s?is_first>page</#if>" id="${s.anchor}" data-fit="roomy snug"<#if look.set.open> data-fit-else="flow"</#if> data-fit-height="${f.liveHeight}mm" data-what="the page of '${s.title}' for ${look.word}">
  <#if s?is_first><h1>${look.level} figures to label</h1></#if>
  <h2>${s.title}</h2>
  <p>Look, and say each word aloud. Then turn the page<#if !look.primary> and write them without looking back</#if>.</p>
  <div style="margin-top:6mm"><@marks.labelled l=s.named alt="${s.title}, with the name of each part beside it: ${s.bank?join(', ')}." size=word/></div>
</div>
<div class="page" data-fit="roomy snug"<#if look.set.open> data-fit-else="flow"</#if> data-fit-height="${f.liveHeight}mm" data-what="the blank page of '${s.title}' for ${look.word}">
  <@blanksheet s=s/>
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
