<#import "marks.ftl" as marks>
<#import "judge-open.ftl" as l>
<#assign t = look.type>
<#assign f = look.frame>
<#assign u = t.body * t.line>
<#assign sizes = []>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} sealed questions${look.set.title}</title>
<style>
<#include "form-style.ftl">
<@l.rules f=f/>
</style>
<bookmarks><bookmark name="Sealed questions" href="#seal"/></bookmarks>
</head>
<body>
<@l.foot what="Sealed" look=look head=head/>
<div id="seal">
  <@l.head title="Sealed" head=head look=look/>
  <p style="margin-top:4mm"><strong>Put the question pages behind this one in an envelope, close it, and fix this page on it.</strong></p><p>Open it when the class is called. Nobody who shows may see it before.</p>
  <table class="rows">
    <thead><tr><th scope="col" class="no">Set</th><th scope="col">For</th><th scope="col" style="width:70mm">Opened by, at what time</th></tr></thead>
    <tbody><#list seals as s><tr><td class="no">${s.letter}</td><td>${s.use}</td><td>&#160;</td></tr></#list></tbody>
  </table>
</div>
</body>
</html>
