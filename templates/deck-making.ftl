<#-- How cards are made, step by step. Each step has a sign, a name, words for the head of a sheet and words for the first page. -->
<#import "signs.ftl" as signs>
<#assign edge = (form.way == "short-edge")?then("short edge", "long edge")>

<#assign printOne = {"sign": "print", "name": "Print",
  "brief": "Print one side,<br/>at full size (100 %)"?no_esc,
  "full": "<strong>Print</strong> one side only, at full size (100 %), on the thickest paper your printer likes."?no_esc}>
<#assign foldSheet = {"sign": "fold", "name": "Fold",
  "brief": "Fold on the dashed line,<br/>printing outside"?no_esc,
  "full": "<strong>Fold</strong> each sheet on the dashed line with the printing outside. Press the fold flat."?no_esc}>
<#assign glueSheet = {"sign": "glue", "name": "Glue",
  "brief": "Glue the two halves<br/>inside. Let it dry"?no_esc,
  "full": "<strong>Glue</strong> the two halves together inside, right to the edges. Let it dry under a book."?no_esc}>
<#assign cutSheet = {"sign": "cut", "name": "Cut",
  "brief": "Cut on the solid lines,<br/>through both layers"?no_esc,
  "full": "<strong>Cut</strong> on the solid lines, through both layers. Each question now has its answer behind it."?no_esc}>
<#assign cutCard = {"sign": "cut", "name": "Cut",
  "brief": "Cut on the solid lines:<br/>a front with its back"?no_esc,
  "full": "<strong>Cut</strong> on the solid lines only. Each piece is a question with its answer beside it."?no_esc}>
<#assign foldCard = {"sign": "foldcard", "name": "Fold",
  "brief": "Fold on the dashed line,<br/>printing outside"?no_esc,
  "full": "<strong>Fold</strong> each piece on its dashed line with the printing outside. Press the fold flat."?no_esc}>
<#assign glueCard = {"sign": "glue", "name": "Glue",
  "brief": "Glue the two halves<br/>inside. Let it dry"?no_esc,
  "full": "<strong>Glue</strong> the two halves together inside, right to the edges. Let them dry under a book."?no_esc}>
<#assign printBoth = {"sign": "both", "name": "Print",
  "brief": "Print both sides, flip on<br/>the ${edge}, at 100 %"?no_esc,
  "full": "<strong>Print</strong> this sheet first: both sides, flip on the <strong>${edge}</strong>, at full size (100 %), on thick paper."?no_esc}>
<#assign look = {"sign": "light", "name": "Look",
  "brief": "Hold it to the light: each<br/>front before its back?"?no_esc,
  "full": "<strong>Hold it to the light.</strong> Each cross stands in its ring? Print the other sheets the same way."?no_esc}>
<#assign cutTwo = {"sign": "cut", "name": "Cut",
  "brief": "Cut on the solid lines<br/>of the fronts"?no_esc,
  "full": "<strong>Cut</strong> on the solid lines of the fronts. Each question has its answer on the other side."?no_esc}>
<#assign turn = form.up?then({"sign": "flip", "name": "Flip",
  "brief": "Flip a card up<br/>to see its answer"?no_esc,
  "full": "<strong>Flip</strong> a card up, bottom edge first, to see its answer."?no_esc}, {"sign": "turn", "name": "Turn",
  "brief": "Turn a card like a page<br/>to see its answer"?no_esc,
  "full": "<strong>Turn</strong> a card like the page of a book to see its answer."?no_esc})>

<#assign steps = form.twoSided?then([printBoth, look, cutTwo, turn], (form.way == "fold-card")?then([printOne, cutCard, foldCard, glueCard], [printOne, foldSheet, glueSheet, cutSheet]))>

<#-- A ring on the first page and a cross on its back: they meet where fronts and backs do. -->
<#macro target x y ring>
<svg xmlns="http://www.w3.org/2000/svg" aria-hidden="true" viewBox="-5 -5 10 10" width="10mm" height="10mm" style="position:absolute;left:${x - 5}mm;top:${y - 5}mm"><g fill="none" stroke="black" stroke-width="0.5"><#if ring><circle cx="0" cy="0" r="3"/><#else><path d="M-2.4 0L2.4 0M0 -2.4L0 2.4"/></#if></g></svg>
</#macro>

<#macro targets ring>
<#local y = ring?then(height - 13, form.levelTurn?then(13, height - 13))>
<div><@target x=20 y=y ring=ring/><@target x=width - 20 y=y ring=ring/></div>
</#macro>
