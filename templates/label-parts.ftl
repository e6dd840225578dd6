<#-- A figure with numbered lines, and the page on which a member writes the words. -->
<#macro numbered x alt>
<div class="labelled" style="width:${x.figure.boxWidth}mm;height:${x.figure.boxHeight}mm">
  <img src="hutch:${x.figure.file}" alt="${alt}" style="left:${x.figure.left}mm;top:${x.figure.top}mm;width:${x.figure.width}mm;height:${x.figure.height}mm"/>
  <@marks.lines l=x.figure discs=x.discs r=x.radius/>
  <#list x.discs as d><div class="disc" style="left:${d.x - 5}mm;top:${d.y - look.set.large?then(3.18, 1.95)}mm">${d.number}</div></#list>
</div>
</#macro>

<#macro blanksheet s>
  <h2>${s.title}</h2>
  <@numbered x=s.blank alt=s.alt/>
  <#assign rows = ((s.answers?size + 1) / 2)?floor>
  <table class="write" role="presentation"><#list 0..(rows - 1) as r><tr><#list [r, r + rows] as i><td style="height:${s.lineHeight}mm"><#if i < s.answers?size><span class="no">${i + 1}</span><span class="rule">&#160;</span></#if></td></#list></tr></#list></table>
  <div class="bank"><strong>Words:</strong> ${s.bank?join(", ")}</div>
</#macro>
