<#import "marks.ftl" as marks>
<#assign t = look.type>
<#assign f = look.frame>
<#assign u = t.body * t.line>
<#assign sizes = []>
<#-- In one column the headings of the rail stand in the order of the text. -->
<#assign h = look.set.open?then("h2", "h3")>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} practice sheets</title>
<style>
<#include "page-style.ftl">
h1 { margin: 0; padding: 0; font-size: ${[t.body * 2.05, 27]?min}pt; line-height: 1.12; } h2 { margin-bottom: 2mm; }
<#include "label-style.ftl">
.pageno:before { content: "page " counter(page) " of <#if total gt 0>${total}<#else>" counter(pages) "</#if>"; }
.ask { margin-bottom: 2.6mm; page-break-inside: avoid; } .rule { border-bottom: 0.9pt solid black; height: ${look.primary?then(12, 9)}mm; }
.kind { border: 2pt solid black; padding: 2mm 3mm; margin-top: 4mm; width: ${f.live}mm; } .kind p { max-width: none; }
.ask { margin-top: 2mm; } .ask p { line-height: 1.25; } .snug .rule, .tight .rule { height: 8.5mm; } .snug .ask { margin-bottom: 1mm; } .tight .ask { margin: 1mm 0 0 0; } .tight .body { line-height: 1.25; } .tight .kind { margin-top: 2mm; padding: 1mm 3mm; }
</style>
<bookmarks>
  <bookmark name="For whoever watches" href="#watch"/>
  <bookmark name="What I learned" href="#learned"/>
  <#list sheets as s><bookmark name="${s.title}" href="#${s.anchor}"/></#list>
</bookmarks>
</head>
<body>
<div class="foot"><table class="footline"><tr>
  <td class="footmark"><@marks.toes n=look.toes half=5/></td>
  <td class="footname">${look.level} practice sheets</td>
  <td class="footpage"><span class="pageno">&#160;</span></td>
</tr></table></div>
<#include "label-parts.ftl">

<div id="watch" data-fit="roomy snug tight"<#if look.set.open> data-fit-else="flow"</#if> data-fit-height="${f.liveHeight}mm" data-what="the page of what to watch for and what was learned">
  <h1>For whoever watches</h1>
  <p class="lead">A parent, a friend or a leader plays the judge. <#if look.primary>Then fill in the slip together: only what went well.<#else>Watch first, then fill in the score sheet. Be fair, and say the best thing first.</#if></p>
  <div class="sec"><div class="rail"><${h}>What to watch for</${h}></div><div class="body tall"><ul><#list watch as item><li><span class="dot">&#8226;</span>${item}</li></#list></ul></div></div>
  <div class="kind"><p><strong>Stop the practice</strong> if the rabbit kicks, pants or shakes. Feet down, let it rest. Stopping costs nothing.</p></div>
  <div class="sec" id="learned"><div class="rail"><${h}>What I learned</${h}><p class="note">Name and date</p></div><div class="body tall"><div class="rule">&#160;</div></div></div>
  <#list learned as ask><div class="ask"><p>${ask}</p><div class="rule">&#160;</div></div></#list>
</div>

<#list sheets as s>
<div class="page" id="${s.anchor}" data-fit="roomy snug"<#if look.set.open> data-fit-else="flow"</#if> data-fit-height="${f.liveHeight}mm" data-what="the page of '${s.title}' for ${look.word}">
  <@blanksheet s=s/>
</div>
</#list>
</body>
</html>
