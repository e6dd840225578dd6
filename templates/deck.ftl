<#import "marks.ftl" as marks>
<#import "signs.ftl" as signs>
<#import "card-face.ftl" as faces>
<#import "deck-making.ftl" as making>
<#assign g = grid>
<#assign primary = look.primary>
<#assign h = face.head>
<#assign foot = face.foot>
<#assign child = form.large?then(18, primary?then(16, 13))>
<#assign folded = form.way == "fold-sheet">
<#assign pitch = (form.way == "fold-card")?then(2, 1)>
<#assign right = folded?then(g.fold, g.left + g.columns * pitch * g.cardWidth)>
<#assign usual = form.usual && (form.format == "standard" || form.format == "primary")>
<#assign near = usual?then(4.6, 6.6)>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} flashcards</title>
<style>
@page { size: ${width}mm ${height}mm; margin: 0; }
* { box-sizing: border-box; }
body { font-family: Lato, 'DejaVu Sans'${form.large?then(' !important', '')}; font-size: 10pt; line-height: 1.25; color: black; margin: 0; }
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
.code { position: absolute; left: ${face.inset}mm; top: ${h.codeTop}mm; font-size: ${h.code}pt; font-weight: bold; line-height: 1.1; }
.topic { position: absolute; left: ${h.topicLeft}mm; top: ${h.topicTop}mm; width: ${h.topicWidth}mm; font-size: ${h.topic}pt; line-height: 1.1; white-space: nowrap; }
.mark { position: absolute; left: ${g.cardWidth - face.inset - 2 * h.half}mm; top: ${h.markTop}mm; }
.rule { position: absolute; left: ${face.inset}mm; top: ${h.rule}mm; width: ${face.width}mm; border-top: 1.1pt solid black; } .rule.answer { border-top-width: 2.2pt; }
.hold { position: absolute; left: ${face.inset}mm; width: ${face.width}mm; border-collapse: collapse; } .hold td { padding: 0; vertical-align: middle; }
.question { font-weight: bold; } .fit { width: ${face.width}mm; line-height: 1.28; } .fit.half { width: ${face.beside.wordsWidth}mm; }
.s18 { font-size: 18pt; } .s17 { font-size: 17pt; } .s16 { font-size: 16pt; } .s15 { font-size: 15pt; } .s14 { font-size: 14pt; } .s125 { font-size: 12.5pt; } .s11 { font-size: 11pt; } .s10 { font-size: 10pt; }
.picture { position: absolute; text-align: center; }
.foot { position: absolute; left: ${face.inset}mm; width: ${face.width}mm; height: 5mm; font-size: ${foot.size}pt; line-height: 1; } .foot span { position: absolute; top: 0; } .foot .mid { left: ${foot.mid}mm; } .foot .right { right: 0; text-align: right; } .foot .initials { border-bottom: 0.9pt solid black; width: ${foot.lineWidth}mm; height: 4mm; left: ${foot.line}mm; }
.blank { display: inline-block; border-bottom: 0.9pt solid black; padding: 0 0.5mm 0 5mm; font-size: 9.5pt; line-height: 1.2; }
.make { position: absolute; left: 16mm; width: ${width - 32}mm; }
.step { position: absolute; width: ${(width - 32 - 24) / 4}mm; top: 62mm; } .step .pic { height: 44mm; } .step p { font-size: ${child}pt; line-height: 1.35; } .step .n { font-size: 24pt; font-weight: bold; line-height: 1.2; }
h1 { font-size: 27pt; line-height: 1.15; }
<#if !usual>
.s32 { font-size: 32pt; } .s28 { font-size: 28pt; } .s26 { font-size: 26pt; } .s24 { font-size: 24pt; } .s22 { font-size: 22pt; } .s20 { font-size: 20pt; } .s12 { font-size: 12pt; }
.backof { position: absolute; left: ${g.left}mm; font-size: ${form.large?then(18, 9.5)}pt; line-height: 1; white-space: nowrap; }
.face.turned { transform: rotate(180deg); }
.check { position: absolute; left: ${width / 2 - 85}mm; top: ${height * 0.28}mm; width: 170mm; font-size: ${child}pt; line-height: 1.4; } .check p { margin-top: 4mm; }
<#if form.format == "small">
.rule.answer { border-top-width: 1.8pt; }
</#if>
<#if form.large>
.rule { border-top-width: 1.5pt; } .rule.answer { border-top-width: 3pt; } .foot { height: 8mm; } .foot .initials { height: 6.4mm; } .blank { font-size: 18pt; padding-left: 9mm; }
.sign p { top: 1.6mm; font-size: 18pt; white-space: nowrap; } .deckname { top: 6.8mm; width: 90mm; font-size: 18pt; line-height: 1.05; } .word { font-size: 18pt; }
.step .pic { height: 36mm; } .step { top: 56mm; } .step p { font-size: 18pt; line-height: 1.25; }
</#if>
</#if>
</style>
</head>
<body>

<#if part.tells>
<div class="sheet">
  <div class="make" style="top:18mm"><table style="width:${width - 32}mm;border-collapse:collapse"><tr><td><h1>${look.level} flashcards</h1></td><td style="text-align:right;width:60mm"><div style="margin-left:${60 - 22}mm"><@marks.toes n=look.toes half=11/></div></td></tr></table>
  <p style="font-size:${child}pt;line-height:1.4;margin-top:3mm">${cards} card<#if cards != 1>s</#if> on ${sheets?size} sheet<#if sheets?size != 1>s</#if>. <#if core gt 0 && core lt cards>Learn the ${core} with <strong>core</strong> on the answer side first. </#if><#if primary>A grown-up cuts with you.<#else>One side is the question, the other the answer: <#if form.twoSided>for a printer that prints both sides<#else>any printer will do</#if>.</#if></p></div>
  <#list [1, 2, 3, 4] as n>
  <div class="step" style="left:${16 + (n - 1) * ((width - 32 - 24) / 4 + 8)}mm">
    <div class="pic"><@signs.named key=making.steps[n - 1].sign w=form.large?then(44, 50)/></div>
    <p class="n">${n}</p>
    <p>${making.steps[n - 1].full}</p>
  </div>
  </#list>
  <div class="make" style="top:${height - form.twoSided?then(50, 40)}mm"><p style="font-size:${child}pt;line-height:1.4"><#if form.up && !form.twoSided>Flip a card up, bottom edge first, to see its answer. </#if><#if foot.size gt 0>Write your initials on the line, so that your cards come home. </#if>Right? Put the card back for later. Wrong? Try it again tomorrow. A few cards every day beat many cards in one day.</p></div>
  <#if form.twoSided><@making.targets ring=true/></#if>
</div>
<#if form.twoSided>
<div class="sheet">
  <div class="check"><h1>Hold this sheet to the light</h1>
  <p>Does each cross stand inside its ring? Then fronts and backs meet. Print all the other sheets in the same way.</p>
  <p>Are the crosses at the other end of the sheet? In the print window, choose “flip on the ${making.edge}” and print this sheet again.</p>
  <p>Is a cross outside its ring? Choose full size (100 %) and straighten the paper in the tray. The ring is as wide as the space we leave beside each cut.</p></div>
  <@making.targets ring=false/>
</div>
</#if>
</#if>

<#macro dashed x from to><path d="M${x} ${from}L${x} ${to}" fill="none" stroke="black" stroke-width="0.35" stroke-dasharray="4 2.5"/></#macro>
<#macro backface card>
  <div class="face<#if form.turned> turned</#if>" style="left:${card.back.x}mm;top:${card.back.y}mm" data-place="${card.place}">
<@faces.back card=card/>
  </div>
</#macro>

<#list sheets as sheet>
<div class="sheet<#if sheet?is_last && !form.twoSided> end</#if>"<#if !folded> data-trim="${g.left} ${g.top} ${right - g.left} ${g.rows * g.cardHeight}"</#if>>
  <div class="lines"><svg xmlns="http://www.w3.org/2000/svg" aria-hidden="true" viewBox="0 0 ${width} ${height - 1}" width="${width}mm" height="${height - 1}mm"><#rt>
    <#assign bottom = g.top + g.rows * g.cardHeight><#t>
    <#list 0..g.rows as r><path d="M${g.left} ${g.top + r * g.cardHeight}L${right} ${g.top + r * g.cardHeight}" fill="none" stroke="black" stroke-width="0.35" data-save="stroke-width:0.32"/></#list><#t>
    <#list 0..(g.columns - folded?then(1, 0)) as c><path d="M${g.left + c * pitch * g.cardWidth} ${g.top}L${g.left + c * pitch * g.cardWidth} ${bottom}" fill="none" stroke="black" stroke-width="0.35" data-save="stroke-width:0.32"/></#list><#t>
    <#if folded><@dashed x=g.fold from=g.top - form.large?then(2, 6) to=[bottom + 2, height - 7.2]?min/><#elseif pitch == 2><#list 0..(g.columns - 1) as c><@dashed x=g.left + (2 * c + 1) * g.cardWidth from=g.top - 2 to=bottom/></#list></#if></svg></div><#lt>
  <div class="signs">
    <#list making.steps as step>
    <div class="sign" style="left:${8 + step?index * form.large?then(48, 58)}mm"><@signs.named key=step.sign w=13.6/><p><strong>${step?counter}</strong> <#if form.large>${step.name}<#else>${step.brief}</#if></p></div>
    </#list>
  </div>
  <div class="deckname"><strong>${part.name}</strong><br/>sheet ${part.before + sheet.no} of ${part.before + sheets?size + part.after}</div>
  <#if form.large>
  <#elseif usual || folded && g.top gt 24.5>
  <div class="word" style="left:${g.left}mm;top:${g.top - near}mm">fronts</div>
  <div class="word" style="left:${g.fold - 8}mm;top:${g.top - near}mm">fold</div>
  <div class="word" style="left:${g.fold + 2}mm;top:${g.top - near}mm">backs</div>
  <#elseif pitch == 2 && g.top gt 24.5>
  <#list 0..(g.columns - 1) as c>
  <#assign x = g.left + 2 * c * g.cardWidth>
  <div class="word" style="left:${x}mm;top:${g.top - near}mm">front</div>
  <div class="word" style="left:${x + g.cardWidth - 8}mm;top:${g.top - near}mm">fold</div>
  <div class="word" style="left:${x + g.cardWidth + 2}mm;top:${g.top - near}mm">back</div>
  </#list>
  </#if>
  <#list sheet.cards as card>
  <div class="face" style="left:${card.front.x}mm;top:${card.front.y}mm" data-place="${card.place}">
<@faces.front card=card/>
  </div>
  <#if !form.twoSided>
<@backface card=card/>
  </#if>
  </#list>
</div>
<#if form.twoSided>
<div class="sheet<#if sheet?is_last> end</#if>" data-trim="${g.left} ${g.backTop} ${right - g.left} ${g.rows * g.cardHeight}">
  <div class="backof" style="top:${form.levelTurn?then(height - g.top + 3.2, g.top - 10)}mm">backs of <strong>${part.name}</strong>, sheet ${part.before + sheet.no}</div>
  <#list sheet.cards as card>
<@backface card=card/>
  </#list>
</div>
</#if>
</#list>
</body>
</html>
