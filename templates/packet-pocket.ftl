<#import "marks.ftl" as marks>
<#assign t = look.type>
<#assign f = look.frame>
<#assign u = t.body * t.line>
<#assign cover = {"routine": []}>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${name?has_content?then("Pocket sheet for " + name, "Pocket sheet for any rabbit")}</title>
<style>
<#include "guide-style.ftl">
@page :first { @bottom-center { content: element(foot); vertical-align: top; padding-top: 4mm; } }
</style>
</head>
<body>
<div class="foot"><table class="footline"><tr>
  <td class="footmark"><@marks.toes n=look.toes half=5/></td>
  <td class="footname">${foot}</td>
  <td class="footpage"><span class="pageno">&#160;</span></td>
</tr></table></div>
<#include "pocket.ftl">
<#list routines as routine>
<@pocketsheet routine=routine no=routine?counter class=routine?is_first?then("only", "page")/>
</#list>
</body>
</html>
