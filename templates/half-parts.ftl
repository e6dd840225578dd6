<#-- The parts of a text on pages of half a sheet, with headings above. Included where look, t, f and u are set. -->
<#macro table data>
<table class="data">
  <thead><tr><#list data.head as cell><th scope="col">${cell}</th></#list></tr></thead>
  <tbody><#list data.rows as row><tr><#list row as cell><td<#if cell?index == data.strong> class="strong"</#if>>${cell}</td></#list></tr></#list></tbody>
</table>
</#macro>

<#macro speech text intro="">
<div class="speech"><#if !intro?has_content><div class="tail"><svg xmlns="http://www.w3.org/2000/svg" aria-hidden="true" viewBox="0 0 6 4" width="6mm" height="4mm"><path d="M0.4 3.6L1.6 0.4L5.6 3.6" fill="white" stroke="black" stroke-width="0.42" data-save="stroke-width:0.32"/><path d="M0.7 3.6L5.3 3.6" stroke="white" stroke-width="0.9"/></svg></div></#if><#if intro?has_content><strong>${intro}</strong> </#if>&#8220;${text}&#8221;</div>
</#macro>

<#macro caution text>
<div class="caution"><div class="label"><@marks.warning size=5/>Caution</div><div class="words">${text}</div></div>
</#macro>

<#macro sec heading><div class="sec"><h3>${heading}</h3><#nested/></div></#macro>

<#macro figure picture>
<div class="frame" style="width:${picture.width}mm"><img class="h${picture.size.most}f${picture.size.floor}" src="hutch:${picture.file}" alt="${picture.alt}"/></div>
</#macro>

<#macro block b>
<#if b.kind == "paragraph"><p>${b.text}</p>
<#elseif b.kind == "bullets"><ul><#list b.items as item><li><span class="dot">&#8226;</span>${item}</li></#list></ul>
<#elseif b.kind == "numbered"><ol><#list b.items as item><li><span class="num">${item?counter}</span>${item}</li></#list></ol>
<#elseif b.kind == "table"><@table data=b.table/>
<#else><@figure picture=b.picture/><div class="cap">${b.picture.caption}</div></#if>
</#macro>
