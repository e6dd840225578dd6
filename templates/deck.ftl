<#import "marks.ftl" as marks>
<#import "signs.ftl" as signs>
<#assign g = grid>
<#assign primary = look.primary>
<#assign sizes = primary?then("s18 s17 s16 s15 s14", "s18 s16 s14 s125 s11 s10")>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} flashcards</title>
<style>
@page { size: ${width}mm ${height}mm; margin: 0; }
* { box-sizing: border-box; }
body { font-family: Lato, 'DejaVu Sans'; font-size: 10pt; line-height: 1.25; color: black; margin: 0; }
h1, h2, p, ol, li, table, div { margin: 0; padding: 0; }
svg { display: block; }
.sheet { position: relative; width: ${width}mm; height: ${height - 0.4}mm; page-break-after: always; overflow: hidden; }
.sheet.end { page-break-after: auto; }
.lines { position: absolute; left: 0; top: 0; width: ${width}mm; height: ${height - 1}mm; }
.signs { position: absolute; left: 0; top: 7.5mm; width: ${width}mm; }
.sign { position: absolute; top: 0; width: 56mm; height: 10mm; } .sign svg { position: absolute; left: 0; top: 0; } .sign p { position: absolute; left: 15mm; top: 0.6mm; width: 41mm; font-size: 9.5pt; line-height: 1.2; }
.deckname { position: absolute; right: 8mm; top: 8mm; text-align: right; width: 40mm; line-height: 1.2; }
.word { position: absolute; font-size: 9.5pt; line-height: 1; white-space: nowrap; }
.face { position: absolute; width: ${g.cardWidth}mm; height: ${g.cardHeight}mm; }
.code { position: absolute; left: 4mm; top: 3.6mm; font-size: 14pt; font-weight: bold; line-height: 1.1; }
.topic { position: absolute; left: 18mm; top: 4.5mm; width: 30mm; font-size: 10.5pt; line-height: 1.1; white-space: nowrap; }
.mark { position: absolute; left: ${g.cardWidth - 4 - 12.8}mm; top: 3.4mm; }
.rule { position: absolute; left: 4mm; top: 11.6mm; width: 58mm; border-top: 1.1pt solid black; } .rule.answer { border-top-width: 2.2pt; }
.hold { position: absolute; left: 4mm; width: 58mm; border-collapse: collapse; } .hold td { padding: 0; vertical-align: middle; }
.question { font-weight: bold; } .fit { width: 58mm; line-height: 1.28; } .fit.half { width: 29mm; }
.s18 { font-size: 18pt; } .s17 { font-size: 17pt; } .s16 { font-size: 16pt; } .s15 { font-size: 15pt; } .s14 { font-size: 14pt; } .s125 { font-size: 12.5pt; } .s11 { font-size: 11pt; } .s10 { font-size: 10pt; }
.picture { position: absolute; text-align: center; }
.foot { position: absolute; left: 4mm; width: 58mm; height: 5mm; font-size: ${primary?then(12, 10)}pt; line-height: 1; } .foot span { position: absolute; top: 0; } .foot .mid { left: ${primary?then(19, 14.6)}mm; } .foot .right { right: 0; text-align: right; } .foot .initials { border-bottom: 0.9pt solid black; width: ${primary?then(8, 6)}mm; height: 4mm; left: ${primary?then(32, 26)}mm; }
.blank { display: inline-block; border-bottom: 0.9pt solid black; padding: 0 0.5mm 0 5mm; font-size: 9.5pt; line-height: 1.2; }
.make { position: absolute; left: 16mm; width: ${width - 32}mm; }
.step { position: absolute; width: ${(width - 32 - 24) / 4}mm; top: 62mm; } .step .pic { height: 44mm; } .step p { font-size: ${primary?then(16, 13)}pt; line-height: 1.35; } .step .n { font-size: 24pt; font-weight: bold; line-height: 1.2; }
h1 { font-size: 27pt; line-height: 1.15; }
</style>
</head>
<body>

<#if part.tells>
<div class="sheet">
  <div class="make" style="top:18mm"><table style="width:${width - 32}mm;border-collapse:collapse"><tr><td><h1>${look.level} flashcards</h1></td><td style="text-align:right;width:60mm"><div style="margin-left:${60 - 22}mm"><@marks.toes n=look.toes half=11/></div></td></tr></table>
  <p style="font-size:${primary?then(16, 13)}pt;line-height:1.4;margin-top:3mm">${cards} cards on ${sheets?size} sheets. Learn the ${core} with <strong>core</strong> on the answer side first. <#if primary>A grown-up cuts with you.<#else>One side is the question, the other the answer: any printer will do.</#if></p></div>
  <#list [1, 2, 3, 4] as n>
  <div class="step" style="left:${16 + (n - 1) * ((width - 32 - 24) / 4 + 8)}mm">
    <div class="pic"><#if n == 1><@signs.print w=50/><#elseif n == 2><@signs.fold w=50/><#elseif n == 3><@signs.glue w=50/><#else><@signs.cut w=50/></#if></div>
    <p class="n">${n}</p>
    <p><#if n == 1><strong>Print</strong> one side only, at full size (100 %), on the thickest paper your printer likes.<#elseif n == 2><strong>Fold</strong> each sheet on the dashed line with the printing outside. Press the fold flat.<#elseif n == 3><strong>Glue</strong> the two halves together inside, right to the edges. Let it dry under a book.<#else><strong>Cut</strong> on the solid lines, through both layers. Each question now has its answer behind it.</#if></p>
  </div>
  </#list>
  <div class="make" style="top:${height - 40}mm"><p style="font-size:${primary?then(16, 13)}pt;line-height:1.4">Write your initials on the line, so that your cards come home. Right? Put the card back for later. Wrong? Try it again tomorrow. A few cards every day beat many cards in one day.</p></div>
</div>
</#if>

<#macro head card answer>
<div class="code">${card.code}</div><div class="topic"<#if card.code?length gt 5> style="left:21.5mm;width:27mm"</#if>>${card.topic}</div><div class="mark"><@marks.toes n=card.toes half=6.4/></div><div class="rule<#if answer> answer</#if>">&#160;</div>
</#macro>

<#list sheets as sheet>
<div class="sheet<#if sheet?is_last> end</#if>">
  <div class="lines"><svg xmlns="http://www.w3.org/2000/svg" aria-hidden="true" viewBox="0 0 ${width} ${height - 1}" width="${width}mm" height="${height - 1}mm"><#rt>
    <#assign bottom = g.top + g.rows * g.cardHeight><#t>
    <#list 0..g.rows as r><path d="M${g.left} ${g.top + r * g.cardHeight}L${g.fold} ${g.top + r * g.cardHeight}" fill="none" stroke="black" stroke-width="0.35"/></#list><#t>
    <#list 0..(g.columns - 1) as c><path d="M${g.left + c * g.cardWidth} ${g.top}L${g.left + c * g.cardWidth} ${bottom}" fill="none" stroke="black" stroke-width="0.35"/></#list><#t>
    <path d="M${g.fold} ${g.top - 6}L${g.fold} ${[bottom + 2, height - 7.2]?min}" fill="none" stroke="black" stroke-width="0.35" stroke-dasharray="4 2.5"/></svg></div><#lt>
  <div class="signs">
    <div class="sign" style="left:8mm"><@signs.print w=13.6/><p><strong>1</strong> Print one side,<br/>at full size (100 %)</p></div>
    <div class="sign" style="left:66mm"><@signs.fold w=13.6/><p><strong>2</strong> Fold on the dashed line,<br/>printing outside</p></div>
    <div class="sign" style="left:124mm"><@signs.glue w=13.6/><p><strong>3</strong> Glue the two halves<br/>inside. Let it dry</p></div>
    <div class="sign" style="left:182mm"><@signs.cut w=13.6/><p><strong>4</strong> Cut on the solid lines,<br/>through both layers</p></div>
  </div>
  <div class="deckname"><strong>${part.name}</strong><br/>sheet ${part.before + sheet.no} of ${part.before + sheets?size + part.after}</div>
  <div class="word" style="left:${g.left}mm;top:${g.top - 4.6}mm">fronts</div>
  <div class="word" style="left:${g.fold - 8}mm;top:${g.top - 4.6}mm">fold</div>
  <div class="word" style="left:${g.fold + 2}mm;top:${g.top - 4.6}mm">backs</div>
  <#list sheet.cards as card>
  <div class="face" style="left:${card.front.x}mm;top:${card.front.y}mm" data-place="${card.place}">
    <@head card=card answer=false/>
    <#if primary>
      <#if card.picture??>
      <div class="picture" style="left:4mm;top:14mm;width:58mm;height:43mm"><img src="hutch:${card.picture.file}" alt="${card.picture.alt}" style="height:${card.picture.height}mm"/></div>
      <table class="hold" style="top:57.5mm"><tr><td style="height:23mm"><div class="fit question" data-fit="${sizes}" data-fit-height="23mm" data-what="the question of card ${card.code}">${card.question}</div></td></tr></table>
      <#else>
      <table class="hold" style="top:14mm"><tr><td style="height:64mm"><div class="fit question" data-fit="${sizes}" data-fit-height="64mm" data-what="the question of card ${card.code}">${card.question}</div></td></tr></table>
      </#if>
    <#elseif card.picture??>
      <#assign high = card.picture.height>
      <#if card.picture.beside>
      <div class="picture" style="left:4mm;top:${12.6 + (38 - high) / 2}mm;width:28mm;height:38mm"><img src="hutch:${card.picture.file}" alt="${card.picture.alt}" style="height:${high}mm"/></div>
      <table class="hold" style="top:12.5mm;left:33mm;width:29mm"><tr><td style="height:39mm"><div class="fit half question" data-fit="${sizes}" data-fit-height="39mm" data-what="the question of card ${card.code}">${card.question}</div></td></tr></table>
      <#else>
      <#assign under = 51.5 - 13.2 - high - 0.6>
      <div class="picture" style="left:4mm;top:12.8mm;width:58mm;height:${high}mm"><img src="hutch:${card.picture.file}" alt="${card.picture.alt}" style="height:${high}mm"/></div>
      <table class="hold" style="top:${13.4 + high}mm"><tr><td style="height:${under}mm"><div class="fit question" data-fit="${sizes}" data-fit-height="${under}mm" data-what="the question of card ${card.code}">${card.question}</div></td></tr></table>
      </#if>
    <#else>
      <table class="hold" style="top:12.5mm"><tr><td style="height:39mm"><div class="fit question" data-fit="${sizes}" data-fit-height="39mm" data-what="the question of card ${card.code}">${card.question}</div></td></tr></table>
    </#if>
    <div class="foot" style="top:${primary?then(81.6, 52.2)}mm"><span>question</span><span class="mid">initials</span><span class="initials">&#160;</span><span class="right">${card.levels}</span></div>
  </div>
  <div class="face" style="left:${card.back.x}mm;top:${card.back.y}mm" data-place="${card.place}">
    <@head card=card answer=true/>
    <table class="hold" style="top:${primary?then(14, 12.5)}mm"><tr><td style="height:${primary?then(64, 39)}mm"><div class="fit" data-fit="${sizes}" data-fit-height="${primary?then(64, 39)}mm" data-what="the answer of card ${card.code}">${card.answer}</div></td></tr></table>
    <div class="foot" style="top:${primary?then(81.6, 52.2)}mm"><span>answer</span><#if card.core><span class="mid"><strong>core</strong></span></#if><span class="right">${card.levels}</span></div>
  </div>
  </#list>
</div>
</#list>
</body>
</html>
