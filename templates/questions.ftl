<#import "marks.ftl" as marks>
<#assign f = look.frame>
<#assign live = f.width - 30 page = f.height - 26>
<#-- Ten boxes in the order of the grid; a narrower page takes its millimetres from the air between them. -->
<#assign pitch = [(live - 43) / 10, 14.3]?min first = live - 10 * pitch>

<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} questions for the judge</title>
<style>
@page { size: ${f.width}mm ${f.height}mm; margin: 12mm 15mm 10mm 15mm; }
* { box-sizing: border-box; }
body { font-family: Lato, 'DejaVu Sans'; font-size: ${look.primary?then(13, 11)}pt; line-height: 1.3; color: black; margin: 0; }
h1, h2, p, ul, table, div { margin: 0; padding: 0; }
svg { display: block; }
ul { list-style: none; }
.set { position: relative; height: ${f.height - 23}mm; } .later { page-break-before: always; }
h1 { font-size: 23pt; line-height: 1.15; } .intro { width: ${live - 42}mm; margin-top: 0.6mm; }
.who { position: absolute; right: 0; top: 1.2mm; width: 60mm; text-align: right; font-weight: bold; font-size: 13pt; line-height: 1.2; } .who svg { display: inline-block; vertical-align: -0.9mm; margin-right: 2.5mm; }
.q { position: relative; border-top: 1.1pt solid black; padding-left: 11mm; page-break-inside: avoid; }
.q .no { position: absolute; left: 0; font-size: 18pt; line-height: 1; font-weight: bold; }
.q h2 { font-size: ${look.primary?then(14, 11.5)}pt; line-height: 1.25; width: ${live - 11 - 30}mm; }
.q .where { position: absolute; right: 0; width: 29mm; text-align: right; font-size: 10pt; line-height: 1.25; }
.q .need { font-weight: normal; font-size: 10pt; }
.q li { position: relative; padding-left: 6.4mm; width: ${live - 11 - 30}mm; line-height: 1.25; }
.tick { position: absolute; left: 0; top: 0.4mm; width: 4mm; height: 4mm; border: 1.2pt solid black; }
.boxes { position: relative; height: 8.4mm; } .boxes p { position: absolute; left: 0; top: 0.1mm; width: ${first - 13}mm; font-size: 10pt; line-height: 4mm; }
.pt { position: absolute; top: 0; width: 13mm; height: 8.2mm; border: 1.2pt solid black; }
.roomy .q { padding-top: 2mm; padding-bottom: 2.2mm; margin-top: 0; } .roomy .no, .roomy .where { top: 2mm; } .roomy li { margin-top: 1.1mm; } .roomy .boxes { margin-top: 1.5mm; } .roomy .intro { margin-bottom: 3mm; }
.snug .q { padding-top: 1.3mm; padding-bottom: 1.4mm; } .snug .no, .snug .where { top: 1.3mm; } .snug li { margin-top: 0.5mm; } .snug .boxes { margin-top: 1.1mm; } .snug .intro { margin-bottom: 2mm; }
.neat .q { padding-top: 1mm; padding-bottom: 1.1mm; } .neat .no, .neat .where { top: 1mm; } .neat li { margin-top: 0.3mm; line-height: 1.2; } .neat .boxes { margin-top: 0.9mm; } .neat .intro { margin-bottom: 1.5mm; }
.close .q { padding-top: 0.8mm; padding-bottom: 0.9mm; } .close .no, .close .where { top: 0.8mm; } .close li { margin-top: 0.2mm; line-height: 1.15; } .close .boxes { margin-top: 0.7mm; } .close .intro { margin-bottom: 1mm; }
.tight .q { padding-top: 0.5mm; padding-bottom: 0.6mm; } .tight .no, .tight .where { top: 0.5mm; } .tight ul { font-size: 10pt; } .tight li { line-height: 1.15; display: inline-block; width: ${(live - 13) / 2}mm; vertical-align: top; } .tight h2 { line-height: 1.1; } .tight .boxes { margin-top: 0.5mm; } .tight .intro { margin-bottom: 0.5mm; font-size: 10pt; line-height: 1.2; }
.foot { position: absolute; left: 0; bottom: 0; width: ${live}mm; height: 7mm; border-top: 1.8pt solid black; } .foot p { position: absolute; left: 0; top: 1mm; font-size: 10pt; line-height: 1.2; } .foot .no { left: auto; right: 0; }
</style>
</head>
<body>
<#list sets as set>
<div class="set<#if !set?is_first> later</#if>">
<div class="flow" data-fit="roomy snug neat close tight" data-fit-height="${f.height - 31}mm" data-place="content/contest/questions.md" data-what="question set ${set.letter} for ${look.word}">
  <h1>${look.primary?then("Talk with the judge", "Questions for the judge")}</h1>
  <#if scoring??>
  <p class="intro">${scoring.ask} ${scoring.scale} Any true words will do. Ask again once if the member did not hear.</p>
  <#else>
  <p class="intro">Ask two or three, kindly. There are no points. Any true words will do, and a hint helps. Tick what the child knew.</p>
  </#if>
  <#list set.questions as question>
  <div class="q">
    <div class="no">${question.no}</div>
    <h2>${question.question}<#if question.need?has_content> <span class="need">(${question.need})</span></#if></h2>
    <div class="where"><#if question.stop??>stop ${question.stop}<#if question.page??><br/></#if></#if><#if question.page??>guide page ${question.page}</#if></div>
    <ul><#list question.points as point><li><span class="tick">&#160;</span>${point}</li></#list></ul>
    <#if scoring??>
    <div class="boxes"><p>Points, in the<br/>order of the grid</p><#list 0..9 as no><div class="pt" style="left:${first - 11 + no * pitch + pitch - 13}mm"></div></#list></div>
    </#if>
  </div>
  </#list>
</div>
<div class="who"><@marks.toes n=look.toes half=7/><span>${look.level}</span></div>
<div class="foot"><p>Set ${set.letter}<#if sets?size gt 1> of ${count}</#if><#if set.grid??>, for ${set.grid}</#if><#if scoring??> &#183; keep sealed until the class is called</#if></p><p class="no">${set?counter}</p></div>
</div>
</#list>
</body>
</html>
