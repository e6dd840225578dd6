<#import "judge-list.ftl" as l>
<#import "judge-marks.ftl" as j>
<#assign right = at.right wide = right - 9>

<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} sealed questions</title>
<style>
<@l.style width=at.width height=at.height/>
.rows { top: 96mm; }
.rows td { height: 18mm; font-size: 14pt; } .rows .set { font-size: 26pt; font-weight: bold; }
.say { position: absolute; left: 9mm; top: 42mm; width: ${wide - 20}mm; font-size: 18pt; line-height: 1.35; }
</style>
<bookmarks><bookmark name="Sealed questions" href="#seal"/></bookmarks>
</head>
<body>
<div class="page" id="seal">
  <@l.head title="Sealed" head=head look=look right=right/>
  <div class="say"><p><strong>Put the question pages behind this one in an envelope, close it, and fix this page on it.</strong></p><p style="margin-top:4mm">Open it when the class is called. Nobody who shows may see it before.</p></div>
  <table class="rows">
    <thead><tr><th scope="col" style="width:18mm">Set</th><th scope="col" style="width:18mm">Pages</th><th scope="col" style="width:${wide - 40 - 62}mm">For</th><th scope="col" style="width:58mm">Opened by, at what time</th></tr></thead>
    <tbody>
    <#list seals as s><tr><td class="set">${s.letter}</td><td>${s.pages}</td><td>${s.use}</td><td>&#160;</td></tr></#list>
    </tbody>
  </table>
  <#if seals?has_content && seals[0].pages gt 1><div class="foot" style="top:${106 + 18 * seals?size + 10}mm">Set ${seals[0].letter} is there once for each grid of ten: everyone is asked the same.</div></#if>
</div>
</body>
</html>
