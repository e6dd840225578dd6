<#-- A sheet to measure a printer with. Its lines come as boxes; the words stand in the four quarters between them. -->
<#assign midX = width / 2 midY = height / 2>
<#assign left = 49 right = width - 27>
<#macro side s>
  <div class="lines"><svg xmlns="http://www.w3.org/2000/svg" aria-hidden="true" viewBox="0 0 ${width} ${height}" width="${width}mm" height="${height}mm"><g fill="black"><#rt>
    <#list s.lines as l><rect x="${l.x}" y="${l.y}" width="${l.width}" height="${l.height}"/></#list></g></svg></div><#lt>
  <#list s.labels as l><div class="label" style="left:${l.x - 10}mm;top:${l.y - 2.03}mm">${l.text}</div></#list>
</#macro>
<#macro part x y w><div class="part" style="left:${x}mm;top:${y}mm;width:${w}mm"><#nested/></div></#macro>
<#macro blank name><span class="name">${name}</span><span class="blank">&#160;</span></#macro>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>Printer ruler</title>
<style>
@page { size: ${width}mm ${height}mm; margin: 0; }
* { box-sizing: border-box; }
body { font-family: Lato, 'DejaVu Sans'; font-size: 11pt; line-height: 1.3; color: black; margin: 0; }
h1, h2, p, table, div { margin: 0; padding: 0; }
svg { display: block; }
strong { font-weight: bold; }
.side { position: relative; width: ${width}mm; height: ${height - 0.4}mm; } .second { page-break-before: always; }
.lines { position: absolute; left: 0; top: 0; }
.label { position: absolute; width: 20mm; text-align: center; font-size: 10pt; line-height: 1.15; white-space: nowrap; }
.part { position: absolute; } .part p { margin-top: 1.2mm; }
h1 { font-size: 23pt; line-height: 1.1; } h2 { font-size: 12pt; line-height: 1.2; font-weight: bold; }
.first { font-size: 12pt; line-height: 1.25; font-weight: bold; }
.name { padding-right: 1mm; } .blank { display: inline-block; width: 15mm; line-height: 1; border-bottom: 0.9pt solid black; margin-right: 3mm; } .part p.write { line-height: 8.5mm; margin-top: 0; }
.table { border-collapse: collapse; } .table th { text-align: left; font-weight: bold; border-bottom: 1.6pt solid black; padding: 0 4mm 0.8mm 0; vertical-align: bottom; line-height: 1.15; } .table td { border-bottom: 0.9pt solid black; padding: 0.5mm 4mm 0.5mm 0; line-height: 1.15; } .table tr.true td { font-weight: bold; }
.table .gap { padding-left: 3mm; }
.key { font-weight: bold; white-space: nowrap; }
</style>
<bookmarks><bookmark name="Side 1, the front" href="#front"/><bookmark name="Side 2, the back" href="#back"/></bookmarks>
</head>
<body>
<div class="side" id="front">
<@side s=front/>
<@part x=8 y=8 w=midX - 56><h1>Printer ruler</h1></@part>
<@part x=midX + 48 y=8.6 w=midX - 56><p class="first" style="margin-top:0">Side 1, the front. Print both sides at full size (100&#160;%, “actual size”).</p></@part>

<@part x=left y=25 w=midX - 18 - left>
  <h2>1 Print</h2>
  <p>Never “fit to page”: that changes what you measure. Choose the paper, the tray and the way to flip that you will use for cards or booklets.</p>
  <p>One-sided printer: print side 1, put the sheet back as you do for booklets, print side 2.</p>
  <h2 style="margin-top:4.5mm">2 Blank edges</h2>
  <p>On each side of the sheet, find the lowest number whose bar is all there.</p>
</@part>
<@part x=left y=midY - 15 w=midX - 18 - left>
  <p class="write"><@blank name="top"/><@blank name="right"/></p>
  <p class="write"><@blank name="bottom"/><@blank name="left"/></p>
  <p>7 or less on all sides: all that we print will fit.</p>
</@part>

<@part x=left y=midY + 20 w=midX - 14 - left>
  <h2>3 True size</h2>
  <p>Lay a ruler along each long line. Measure from the middle of one end mark to the middle of the other, to half a millimetre.</p>
  <p class="write"><@blank name="level line"/>mm</p>
  <p class="write"><@blank name="upright line"/>mm</p>
</@part>

<@part x=midX + 18 y=25 w=right - midX - 18>
  <h2>4 Front to back</h2>
  <p>Hold the sheet to the light, this side towards you. The two long lines of side 2 show through. Flipped on the long edge or on the short one, you read them in the same way.</p>
  <p>Look at the short marks beside <strong>+4</strong> to <strong>−4</strong>, left of these words. Which of them lies on the upright line of side 2? Between two numbers it is a half.</p>
  <p class="write"><@blank name="right (+) or left (−)"/>mm</p>
</@part>
<@part x=midX + 14 y=midY + 13 w=right - midX - 14>
  <p>Now the short marks in the row above these words. Which of them lies on the level line of side 2?</p>
  <p class="write"><@blank name="down (+) or up (−)"/>mm</p>
  <p><strong>Too thick to see through?</strong> Prick a pin through the middle of side 2, where its lines cross. Here, see where the hole lies in the cross of millimetres: right and down are plus, left and up are minus.</p>
</@part>
</div>

<div class="side second" id="back">
<@side s=back/>
<@part x=27 y=8 w=midX - 18><h1>Printer ruler</h1><p class="first">Side 2, the back</p></@part>

<@part x=27 y=27 w=midX - 18 - 27>
  <h2>5 From your ruler to per cent</h2>
  <table class="table" style="margin-top:2mm">
  <thead><tr><th>level line measures</th><th>write</th><th class="gap">upright line measures</th><th>write</th></tr></thead>
  <tbody><#list table as row><tr<#if row.scaleX == "100"> class="true"</#if>><td>${row.level} mm</td><td>${row.scaleX}</td><td class="gap">${row.upright} mm</td><td>${row.scaleY}</td></tr></#list></tbody>
  </table>
</@part>
<@part x=27 y=midY + 8 w=midX - 18 - 27>
  <p>Another length? Level: millimetres divided by 2. Upright: millimetres divided by 1.5.</p>
  <p>Ruler in inches? Measure the lines of 8 and 6 inches. Level: inches times 12.5. Upright: inches times 16.67.</p>
  <p>Less than 95 or more than 105? The page was fitted to the paper: print again at 100&#160;%.</p>
</@part>

<@part x=midX + 18 y=27 w=right - midX - 18>
  <h2>6 Write one line into club.md</h2>
  <p>Four numbers with commas between: the two per cents, then right or left, then down or up. Left and up get a minus.</p>
  <p class="write" style="margin-top:2mm"><span class="key">printer:</span> <span class="blank" style="width:16mm;margin-right:0.5mm">&#160;</span>, <span class="blank" style="width:16mm;margin-right:0.5mm">&#160;</span>, <span class="blank" style="width:13mm;margin-right:0.5mm">&#160;</span>, <span class="blank" style="width:13mm;margin-right:0">&#160;</span></p>
  <p style="margin-top:4mm"><strong>An example.</strong> The level line measures ${example.level} mm and the upright one ${example.upright} mm. Seen from the front, the back lies half a millimetre to the right and a millimetre too high:</p>
  <p class="key">printer: ${example.line}</p>
</@part>
<@part x=midX + 18 y=midY + 8 w=right - midX - 18>
  <h2>7 Print</h2>
  <p>Cards and booklets are now drawn a little larger or smaller, and their backs moved, so that they leave your printer as they should. Go on printing at 100&#160;%.</p>
  <p>Without a club: <span class="key">hutchleaf cards --printer ${example.line?replace(" ", "")}</span></p>
  <p>Measure again for another printer, paper or tray. This sheet itself is never corrected.</p>
</@part>
</div>
</body>
</html>
