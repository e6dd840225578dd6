<#-- Primary's slip without points in large print or easy read: a page for each. -->
<#import "marks.ftl" as marks>
<#assign t = look.type>
<#assign f = look.frame>
<#assign u = t.body * t.line>
<#assign sizes = []>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${title}${look.set.title}</title>
<style>
<#include "form-style.ftl">
</style>
</head>
<body>
<div class="foot"><table class="footline"><tr><td class="footmark"><@marks.toes n=look.toes half=5/></td><td class="footname">${title}</td><td class="footpage"><span class="pageno">&#160;</span></td></tr></table></div>
<#macro field label value=""><tr><td class="label">${label}</td><td class="line"><#if value?has_content>${value}<#else>&#160;</#if></td></tr></#macro>
<#macro slip who class=""><div class="${class}">
  <div class="formhead"><h1>${title}</h1><p>${look.level}<#if club?has_content>. ${club}</#if></p><div class="right"><#if who.number??><div class="numbox">${who.number}</div><#else><@marks.toes n=look.toes half=13/></#if></div></div>
  <table class="fields" role="presentation"><@field label="My name" value=who.name!""/><@field label="My rabbit" value=who.rabbit!""/><@field label="Date" value=(head.date)!""/></table>
  <div style="margin-top:5mm"><#list ticks as tick><div class="tickline"><@marks.tick size=8/>${tick}</div></#list></div>
  <div class="block"><h2>The judge liked</h2><#list 1..3 as no><div class="writeline">&#160;</div></#list></div>
  <div style="margin-top:5mm;page-break-inside:avoid"><@marks.rabbit width=50/></div>
</div></#macro>
<#list sheets as sheet>
<@slip who=sheet.upper class=sheet?is_first?then("", "later")/>
<#if head??><@slip who=sheet.lower class="later"/></#if>
</#list>
</body>
</html>
