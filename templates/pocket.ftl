<#-- The routine in key words, to fold for the pocket: two columns of four panels. Included where look, t, f and name are set. -->
<#macro pocketsheet routine no class start="">
<div class="${class}" id="pocket-${no}"<#if start?has_content> data-start="${start}"</#if>>
  <#local heading = (class == "only")?then("h1", "h2")>
  <${heading} style="margin:0;padding:0;line-height:1.12;font-size:${[t.body * 1.3, 16]?min}pt">Pocket sheet</${heading}>
  <p class="note" style="max-width:none"><strong>1</strong> Fold on the long dashed line, printing outside. <strong>2</strong> Fold on the short dashed lines, to and fro like a fan.</p>
  <#assign side = (f.live - 0.4) / 2 high = ((f.liveHeight - 20) / 4)?floor>
  <div style="position:relative;width:${f.live}mm;height:${high * 4}mm;margin-top:2mm">
    <div style="position:absolute;left:0;top:0"><svg xmlns="http://www.w3.org/2000/svg" aria-hidden="true" viewBox="0 0 ${f.live} ${high * 4}" width="${f.live}mm" height="${high * 4}mm"><path d="M${f.live / 2} 0L${f.live / 2} ${high * 4}" fill="none" stroke="black" stroke-width="0.35" stroke-dasharray="4 2.5"/><#list 1..3 as n><path d="M0 ${high * n}L${f.live} ${high * n}" fill="none" stroke="black" stroke-width="0.35" stroke-dasharray="2 2"/></#list></svg></div>
    <#list routine.pocket as half>
    <#list half.panels as panel>
    <div style="position:absolute;left:${half?index * f.live / 2 + (half?index == 0)?then(0, 5)}mm;top:${panel?index * high + 3}mm;width:${f.live / 2 - 6}mm;font-size:${[[t.body, 12]?max, 14]?min}pt;line-height:1.25">
      <#if panel.kind == "cover">
      <p>My routine</p><p style="font-size:19pt;font-weight:bold;line-height:1.15">${name?has_content?then(name, '')}</p><@marks.rabbit width=26/><p style="margin-top:1mm"><strong>${routine.rabbit}</strong></p>
      <#elseif panel.kind == "stuck">
      <p style="font-size:14pt;font-weight:bold">If you get stuck</p><p>Breathe. Put a hand on the rabbit. Say: &#8220;May I go back to that stop?&#8221;</p><p>Did not hear? &#8220;Could you ask that again, please?&#8221;</p><p style="border:1.6pt solid black;padding:1mm 2mm;margin-top:1.5mm"><strong>Kicks, pants, shakes?</strong> <#if look.primary>Stop. Let it rest.<#else>Turn it back at once. Tell the rest.</#if></p>
      <#else>
      <#list panel.stops as stop><p style="margin-bottom:2mm"><strong><span style="font-size:16pt">${stop.no}</span>&#160; ${stop.name}</strong><br/>${stop.words}</p></#list>
      </#if>
    </div>
    </#list>
    </#list>
  </div>
</div>
</#macro>
