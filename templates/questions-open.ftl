<#-- Question sets in large print or easy read. -->
<#import "marks.ftl" as marks>
<#assign t = look.type>
<#assign f = look.frame>
<#assign u = t.body * t.line>
<#assign sizes = []>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} questions for the judge${look.set.title}</title>
<style>
<#include "form-style.ftl">
.block h2 { padding-left: 14mm; position: relative; } .block h2 .qno { position: absolute; left: 0; top: 0; }
</style>
</head>
<body>
<#list sets as set>
<div class="foot"><table class="footline"><tr><td class="footmark"><@marks.toes n=look.toes half=5/></td><td class="footname">Set ${set.letter}<#if set.grid??>, for ${set.grid}</#if></td><td class="footpage"><span class="pageno">&#160;</span></td></tr></table></div>
<div<#if !set?is_first> class="later"</#if>>
  <div class="formhead"><h1>${look.primary?then("Talk with the judge", "Questions for the judge")}</h1><p>${look.level}. Set ${set.letter}<#if sets?size gt 1> of ${count}</#if><#if set.grid??>, for ${set.grid}</#if>.<#if scoring??> Keep sealed until the class is called.</#if></p><div class="right"><@marks.toes n=look.toes half=13/></div></div>
  <#if scoring??>
  <p>${scoring.ask} ${scoring.scale} Any true words will do. Ask again once if the member did not hear.</p>
  <#else>
  <p>Ask two or three, kindly. There are no points. Any true words will do, and a hint helps. Tick what the child knew.</p>
  </#if>
  <#list set.questions as question>
  <div class="block">
    <h2><span class="qno">${question.no}</span>${question.question}<#if question.need?has_content> (${question.need})</#if></h2>
    <#if question.stop?? || question.page??><p><#if question.stop??>stop ${question.stop}<#if question.page??>, </#if></#if><#if question.page??>guide page ${question.page}</#if></p></#if>
    <#list question.points as point><div class="tickline"><@marks.tick size=7/>${point}</div></#list>
    <#if scoring??>
    <p style="margin-top:2mm">Points, in the order of showing</p>
    <table class="ten" role="presentation"><#list 0..1 as row><tr><#list 1..5 as no><td>&#160;</td><#if no lt 5><td class="gap">&#160;</td></#if></#list></tr><#if row == 0><tr class="air"><td colspan="9">&#160;</td></tr></#if></#list></table>
    </#if>
  </div>
  </#list>
</div>
</#list>
</body>
</html>
